package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** A number that the description of the reduction states, taken as it is. */
final class StatedQuantity implements Measure {

  private final Definition definition;
  private final String field;
  private final String question;
  private final Function<Reduction, Optional<Quantity>> value;

  private StatedQuantity(
      String id,
      String title,
      Definition.Domain domain,
      String field,
      String question,
      Function<Reduction, Optional<Quantity>> value) {
    this.definition =
        new Definition(
            id, title, domain, "as stated", List.of("operations/" + field), "the case file");
    this.field = field;
    this.question = question;
    this.value = value;
  }

  /** Return the measure of contact between the bone ends. */
  static Measure contact() {
    return new StatedQuantity(
        "contact-percent",
        "Contact",
        Definition.percent(),
        "reduction/contactPercent",
        "What share of the circumference was in contact at the end?",
        Reduction::contactPercent);
  }

  /** Return the measure of the gap on the cortex opposite the plate. */
  static Measure farGap() {
    return new StatedQuantity(
        "gap-far",
        "Gap on the far cortex",
        Definition.millimetres(),
        "reduction/gapFarMm",
        "How wide was the gap on the far cortex (second view) at the end, in mm?",
        Reduction::gapFarMm);
  }

  /** Return the measure of the step between the bone ends. */
  static Measure step() {
    return new StatedQuantity(
        "step-at-line",
        "Step at the line",
        Definition.millimetres(),
        "reduction/translationMm",
        "How large was the step between the ends, in mm?",
        Reduction::translationMm);
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing = scene.missingOfFixing(field, question);
    return scene
        .reduction()
        .flatMap(value)
        .map(
            q ->
                (Reading)
                    new Reading.Amount(
                        q.min(),
                        q.max(),
                        Kind.FACT,
                        "as stated",
                        q.isExact() ? List.of() : List.of(missing)))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
