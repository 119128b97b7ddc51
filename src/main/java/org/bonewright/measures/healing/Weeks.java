package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much time had passed. */
final class Weeks implements Measure {

  /** Since when. */
  enum Since {
    /** Since the last operation, as a case stands. */
    OPERATION_NOW(
        "weeks-since-operation-now", "Time since the last operation", Stretch.STANDING, false),
    /** Since the last operation before. */
    OPERATION_BEFORE(
        "weeks-since-operation-before", "Time since the last operation", Stretch.BEFORE, false),
    /** Since the injury. */
    INJURY("weeks-since-injury", "Time since the injury", Stretch.BEFORE, true);

    private final String id;
    private final String title;
    private final Stretch stretch;
    private final boolean sinceInjury;

    Since(String id, String title, Stretch stretch, boolean sinceInjury) {
      this.id = id;
      this.title = title;
      this.stretch = stretch;
      this.sinceInjury = sinceInjury;
    }
  }

  private final Since since;

  Weeks(Since since) {
    this.since = since;
  }

  @Override
  public Definition definition() {
    return new Definition(
        since.id,
        since.title,
        new Definition.Domain.Numbers("wk", "weeks", 0, Double.POSITIVE_INFINITY, 0),
        (since.sinceInjury
                ? "from the injury"
                : "from the last operation that put in metal or graft, else from the injury,")
            + " to the operation; to the last finding where nothing was operated on since",
        List.of("operations/day", "findings/day"),
        "bookkeeping; that the last finding stands for today is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Course course = since.stretch.of(scene.subject()).orElseThrow();
    Optional<Quantity> until = course.lastDay();
    Optional<Quantity> from = since.sinceInjury ? Optional.of(Quantity.of(0)) : course.began();
    if (from.isEmpty() || (until.isEmpty() && course.findings().isEmpty())) {
      return Reading.unknown(course.missingDay());
    }
    MissingFact day = CourseMeasure.ask(course, "day", "On which day was the bone last looked at?");
    if (until.isEmpty()) {
      return Reading.unknown(day);
    }
    Dimension weeks = Course.weeks(from.get(), until.get());
    return Reading.number(weeks, "up to " + Diagnosis.day(until.get()), day);
  }
}
