package org.bonewright.measures.nail;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Nail;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the nail in place is locked. */
final class NailLocked implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nail-locked",
        "A locked nail",
        Definition.yesOrNo(),
        "yes when a nail is in place that is stated as static or dynamic, or has a bolt",
        List.of(
            "operations/fixation/locking",
            "operations/fixation/bolts",
            "operations/fixation/fewestBolts"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Nail> nail = Nails.nail(scene);
    if (nail.isEmpty()) {
      return scene.certainly("nail-used", "no")
          ? Reading.word("no", "no nail in place")
          : new Reading.Unknown(scene.read("nail-used").missing());
    }
    if (nail.get().locking().isPresent()) {
      return nail.get().locking().get() == Nail.Locking.UNLOCKED
          ? Reading.word("no", "nail not locked")
          : Reading.word("yes", Words.of(nail.get().locking().get()) + " locking");
    }
    if (nail.get().fewestBolts().filter(fewest -> fewest.max() > 0).isPresent()) {
      return Reading.word("yes", "bolts told by number");
    }
    return nail.get()
        .bolts()
        .map(
            bolts ->
                bolts.isEmpty()
                    ? Reading.word("no", "no bolt")
                    : Reading.word("yes", bolts.size() + " bolts"))
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missing(
                        "fixation/" + nail.get().id() + "/locking",
                        "Is " + nail.get().id() + " locked: static, dynamic or not at all?")));
  }
}
