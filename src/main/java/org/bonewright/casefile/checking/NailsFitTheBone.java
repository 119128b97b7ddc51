package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.checking.Procedure.Scene;

/** A nail is wider than its bore, narrower than the bone and the reamed canal, and not too long. */
final class NailsFitTheBone implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Nail> nail : contents.implants(Nail.class)) {
      Scene scene = nail.by().sequence().scene();
      bore(nail, objections);
      reamed(nail, objections);
      length(nail, BoneReach.of(contents.file(), scene), objections);
      if (scene != Scene.COMPANION) {
        outer(nail, contents.file(), objections);
      }
    }
  }

  private static void bore(Fitted<Nail> nail, Objections objections) {
    Optional<Quantity> bore = nail.implant().boreMm();
    Optional<Quantity> outer = nail.implant().outerMm();
    if (bore.isPresent() && outer.isPresent() && Certainly.notAbove(outer.get(), bore.get())) {
      objections.refuse(
          nail.at().field("boreMm"),
          "a bore of " + Wording.mm(bore.get()) + " in a nail of " + Wording.mm(outer.get()),
          "a bore narrower than the nail; 0 for a solid one");
    }
  }

  private static void reamed(Fitted<Nail> nail, Objections objections) {
    Optional<Quantity> outer = nail.implant().outerMm();
    Optional<Quantity> reamed = nail.implant().reamedMm().filter(mm -> mm.min() > 0);
    if (reamed.isPresent() && outer.isPresent() && Certainly.below(reamed.get(), outer.get())) {
      objections.warn(
          nail.at().field("outerMm"),
          "a nail of "
              + Wording.mm(outer.get())
              + " in a canal reamed to "
              + Wording.mm(reamed.get()),
          "a nail no wider than the last reamer; reamedMm 0 when it was not reamed");
    }
  }

  private static void length(Fitted<Nail> nail, BoneReach bone, Objections objections) {
    nail.implant()
        .lengthMm()
        .filter(length -> bone.shorterThan(length.min()).isPresent())
        .ifPresent(
            length ->
                objections.warn(
                    nail.at().field("lengthMm"),
                    "a nail of " + Wording.mm(length) + " in " + bone.inWords(),
                    "a nail no longer than the bone"));
  }

  /**
   * A nail may end before one of the sections: wider than all of them is certain, else unlikely.
   */
  private static void outer(Fitted<Nail> nail, CaseFile file, Objections objections) {
    OuterWidths widths = OuterWidths.of(file.bone());
    Optional<Quantity> outer = nail.implant().outerMm();
    if (outer.isEmpty() || widths.measured().isEmpty()) {
      return;
    }
    At at = nail.at().field("outerMm");
    Quantity widest = widths.widest().orElseThrow();
    Quantity narrowest = widths.narrowest().orElseThrow();
    String found = "a nail of " + Wording.mm(outer.get()) + " in a bone ";
    String allowed = "a nail narrower than the bone";
    if (Certainly.notAbove(widest, outer.get())) {
      objections.refuse(at, found + Wording.mm(widest) + " wide", allowed);
    } else if (Certainly.notAbove(narrowest, outer.get())) {
      objections.warn(at, found + Wording.mm(narrowest) + " wide at one section", allowed);
    }
  }
}
