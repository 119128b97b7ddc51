package org.bonewright.measures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.catalogue.EveryMeasure;

/**
 * A measure taken of a case, as one line for comparison: {@code 160 fact}, {@code 144–176 assumed,
 * ask op-1/fixation/plate-1/lengthMm}, {@code no or yes fact, ask op-1/fixation}, {@code unknown,
 * ask injury/pattern}, {@code none: no plate in place}, {@code 0.4 (likely 0.2–0.9) model, 200
 * samples}.
 */
public final class Taken {

  public static final MeasureCatalogue CATALOGUE = EveryMeasure.catalogue();

  private Taken() {}

  /** Return a measure of the last subject of a case: its plan, else its last operation. */
  public static String of(String measure, CaseText text) {
    List<Subject> subjects = Subject.of(text.file());
    return line(reading(measure, subjects.get(subjects.size() - 1)));
  }

  /** Return a measure of one subject of a case. */
  public static String of(String measure, CaseText text, String subject) {
    return line(reading(measure, subject(text.file(), subject)));
  }

  public static Reading reading(String measure, Subject subject) {
    return new Scene(subject, CATALOGUE).read(measure);
  }

  public static Subject subject(CaseFile file, String id) {
    return Subject.of(file).stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  private static String line(Reading reading) {
    String ask =
        reading.missing().isEmpty()
            ? ""
            : reading.missing().stream()
                .map(MissingFact::field)
                .collect(Collectors.joining(" and ", ", ask ", ""));
    if (reading instanceof Reading.Amount amount) {
      return numbers(amount) + kind(amount.kind()) + ask;
    }
    if (reading instanceof Reading.Word word) {
      return String.join(" or ", word.possible()) + kind(word.kind()) + ask;
    }
    if (reading instanceof Reading.Sampled sampled) {
      return sampled.shown() + " model, " + sampled.samples().size() + " samples" + ask;
    }
    return reading instanceof Reading.None none ? "none: " + none.why() : "unknown" + ask;
  }

  private static String numbers(Reading.Amount amount) {
    return amount.min() == amount.max()
        ? number(amount.min())
        : number(amount.min()) + "–" + number(amount.max());
  }

  private static String number(double value) {
    return Double.isInfinite(value)
        ? "∞"
        : BigDecimal.valueOf(value)
            .setScale(3, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString();
  }

  private static String kind(Kind kind) {
    return " " + kind.name().toLowerCase(Locale.ROOT);
  }
}
