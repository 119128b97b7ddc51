package org.bonewright.measures.plate;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The outer diameter of the bone at the middle of the zone. */
final class OuterAtZone implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "outer-at-zone",
        "Bone width at the zone",
        Definition.millimetres(),
        "outer diameter at the middle of the zone, between measured sections; that of the whole"
            + " shaft where the level is not known",
        List.of("bone/sections", "injury/zone", "findings/zone"),
        "straight between sections is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Dimension outer = scene.bone().outerAt(scene.zone());
    return Reading.number(
        outer,
        outer.basis(),
        PlateQuestions.open(scene.zone().centre())
            ? PlateQuestions.zone(scene)
            : PlateQuestions.width(scene));
  }
}
