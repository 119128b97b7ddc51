package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Nail.Locking;
import org.bonewright.casefile.Quantity;

/**
 * Bolts lie within the length of their nail, near ones before far ones, and go with its locking.
 */
final class BoltsFitTheirNail implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Nail> nail : contents.implants(Nail.class)) {
      locking(nail, objections);
      List<Located<Bolt>> bolts =
          Located.each(nail.implant().bolts(), nail.at().field("bolts"))
              .filter(bolt -> bolt.value().atMm().isPresent())
              .toList();
      for (int i = 1; i < bolts.size(); i++) {
        against(bolts.get(i), bolts.subList(0, i), nail.implant(), objections);
      }
    }
  }

  private static void locking(Fitted<Nail> nail, Objections objections) {
    Optional<Locking> locking = nail.implant().locking();
    Optional<List<Bolt>> bolts = nail.implant().bolts();
    if (locking.isPresent() && bolts.isPresent()) {
      boolean unlocked = locking.get() == Locking.UNLOCKED;
      boolean none = bolts.get().isEmpty();
      if (unlocked != none) {
        objections.refuse(
            nail.at().field("locking"),
            "a nail said to be "
                + Wording.words(locking.get())
                + ", with "
                + (none ? "no bolt" : Wording.count(bolts.get().size(), "bolt")),
            none ? "unlocked, or the bolts" : "static or dynamic, or an empty list of bolts");
      }
    }
  }

  private static void against(
      Located<Bolt> bolt, List<Located<Bolt>> earlier, Nail nail, Objections objections) {
    Quantity level = level(bolt);
    At at = bolt.at().field("atMm");
    for (Located<Bolt> other : earlier) {
      Quantity otherLevel = level(other);
      double apart = Math.max(level.min() - otherLevel.max(), otherLevel.min() - level.max());
      if (nail.lengthMm().filter(length -> apart > length.max()).isPresent()) {
        objections.refuse(
            at,
            "bolts at "
                + Wording.mm(otherLevel)
                + " and "
                + Wording.mm(level)
                + " in a nail of "
                + Wording.mm(nail.lengthMm().get()),
            "bolts no farther apart than the nail is long");
        return;
      }
      if (areSwapped(bolt.value(), other.value())) {
        objections.refuse(
            at,
            "the "
                + Wording.words(bolt.value().end())
                + " bolt at "
                + Wording.mm(level)
                + " and the "
                + Wording.words(other.value().end())
                + " one at "
                + Wording.mm(otherLevel),
            "near bolts towards the landmark, far ones away from it");
        return;
      }
    }
  }

  private static boolean areSwapped(Bolt one, Bolt other) {
    if (one.end() == other.end()) {
      return false;
    }
    boolean oneIsNear = one.end() == Bolt.End.NEAR;
    Quantity near = (oneIsNear ? one : other).atMm().orElseThrow();
    Quantity far = (oneIsNear ? other : one).atMm().orElseThrow();
    return Certainly.below(far, near);
  }

  private static Quantity level(Located<Bolt> bolt) {
    return bolt.value().atMm().orElseThrow();
  }
}
