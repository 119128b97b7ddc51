package org.bonewright.measures.care;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** When the joints beside begin to move. */
final class Motion implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "motion-from-day",
        "Joints move from day",
        new Definition.Domain.Numbers("d", "days", 0, Double.POSITIVE_INFINITY, 0),
        "as stated; none in a plan that does not say",
        List.of("operations/aftercare/motionFromDay"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Quantity> day = scene.operation().aftercare().flatMap(Aftercare::motionFromDay);
    MissingFact missing =
        scene.missing("aftercare/motionFromDay", "From which day do the joints beside move?");
    if (day.isPresent()) {
      return Reading.number(Dimension.stated(day.get(), ""), "as stated", missing);
    }
    return scene.subject().planned()
        ? new Reading.None("no start of motion planned")
        : Reading.unknown(missing);
  }
}
