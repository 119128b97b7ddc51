package org.bonewright.measures.lag;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The angle between the line and the lag screw that is furthest from a right angle. */
final class LagAngle implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "lag-angle",
        "Lag screw to the line",
        Definition.degrees(),
        "the smallest angle between a lag screw and the fracture line; 90 degrees is a right angle",
        List.of("operations/fixation/angleToLineDeg"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    List<LagScrew> screws = LagScrews.of(scene);
    if (screws.isEmpty()) {
      return LagScrews.none(scene);
    }
    return LagScrews.least(
        scene,
        screws,
        screw -> screw.angleToLineDeg().map(angle -> Dimension.stated(angle, "stated")),
        screw ->
            LagScrews.missing(
                scene,
                screw,
                "angleToLineDeg",
                "At which angle does " + screw.id() + " cross the line, in degrees?"),
        Kind.FACT,
        "the smallest of " + screws.size());
  }
}
