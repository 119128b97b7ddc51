package org.bonewright.measures.reuse;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.hold.ScrewHold;

/** Whether one side of the zone has no screw, bolt or pin at all. */
final class SideWithoutScrew implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "side-without-screw",
        "A side without any screw",
        Definition.yesOrNo(),
        "yes when one side of the zone holds no plate screw, and no nail or fixator is in place;"
            + " without a plate, yes when there is no lag screw either",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    boolean held =
        !scene.construct().of(Nail.class).isEmpty()
            || !scene.construct().of(ExternalFixator.class).isEmpty();
    if (held) {
      return Reading.word("no", "a nail or fixator holds both sides");
    }
    if (!scene.construct().known()) {
      return Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
    }
    if (scene.plates().isEmpty()) {
      return scene.construct().of(LagScrew.class).isEmpty()
          ? Reading.word("yes", "no screw at all")
          : Reading.word("no", "lag screws");
    }
    Optional<List<ScrewHold>> sides = ScrewHold.bothSides(scene);
    return sides
        .map(
            both ->
                both.stream().anyMatch(side -> !side.conventional() && !side.locking())
                    ? Reading.word("yes", "no plate screw on one side")
                    : Reading.word("no", "plate screws on both sides"))
        .orElseGet(() -> ScrewHold.unknownSides(scene));
  }
}
