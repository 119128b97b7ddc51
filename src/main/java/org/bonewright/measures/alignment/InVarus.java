package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone stands in varus at the end. */
final class InVarus implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "in-varus",
        "In varus",
        Definition.yesOrNo(),
        "yes where the degrees stated for the coronal plane are negative",
        List.of("operations/reduction/coronalDeg"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    return Standing.stated(scene, Plane.CORONAL)
        .map(stated -> of(scene, stated))
        .orElseGet(() -> Reading.unknown(Standing.missing(scene, Plane.CORONAL)));
  }

  private static Reading of(Scene scene, Quantity degrees) {
    boolean may = degrees.min() < 0;
    boolean mayNot = degrees.max() >= 0;
    return Reading.words(
        may && mayNot ? Set.of("yes", "no") : Set.of(may ? "yes" : "no"),
        Kind.FACT,
        "as stated",
        Standing.missing(scene, Plane.CORONAL));
  }
}
