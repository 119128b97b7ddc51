package org.bonewright.measures.reuse;

import java.util.List;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.hold.ScrewHold;

/**
 * Whether the plates hold with locking screws on both sides of the zone, with a strut or without.
 */
final class LockedPlate implements Measure {

  private final boolean withStrut;

  private LockedPlate(boolean withStrut) {
    this.withStrut = withStrut;
  }

  static Measure onBothSides() {
    return new LockedPlate(false);
  }

  static Measure withStrut() {
    return new LockedPlate(true);
  }

  @Override
  public Definition definition() {
    return withStrut
        ? new Definition(
            "locked-with-strut",
            "Locked plate with a strut",
            Definition.yesOrNo(),
            "yes when locking-screw-each-side is yes and a strut lies in or on the bone",
            List.of("locking-screw-each-side", "operations/fixation/where"),
            "bookkeeping")
        : new Definition(
            "locking-screw-each-side",
            "Locking screws on both sides",
            Definition.yesOrNo(),
            "yes when each side of the zone holds at least one locking plate screw",
            List.of("operations/fixation/screws", "operations/fixation/place"),
            "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    return withStrut ? strut(scene) : locked(scene);
  }

  private static Reading locked(Scene scene) {
    return ScrewHold.ask(
        scene,
        both -> both.stream().allMatch(ScrewHold::locking),
        "locking screws on both sides",
        "a side without a locking screw");
  }

  private static Reading strut(Scene scene) {
    boolean strut = !scene.construct().of(Strut.class).isEmpty();
    if (!strut && scene.construct().known()) {
      return Reading.word("no", "no strut");
    }
    Reading locked = scene.read("locking-screw-each-side");
    if (strut || !scene.possibly("locking-screw-each-side", "yes")) {
      return locked;
    }
    return Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
  }
}
