package org.bonewright.measures.alignment;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** By how many degrees the bone stands off in one plane at the end, whichever way. */
final class Deviation implements Measure {

  private final Plane plane;

  Deviation(Plane plane) {
    this.plane = plane;
  }

  @Override
  public Definition definition() {
    return new Definition(
        plane.id() + "-deviation",
        plane.title(),
        Definition.degrees(),
        "degrees stated at the end of the operation that set the bone, without their sign",
        List.of("operations/reduction/" + plane.field()),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    return Standing.stated(scene, plane)
        .map(
            stated ->
                Reading.number(Plane.off(stated), "as stated", Standing.missing(scene, plane)))
        .orElseGet(() -> Reading.unknown(Standing.missing(scene, plane)));
  }
}
