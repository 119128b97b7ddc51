package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** A measure of what was found in one stretch of the history. */
final class CourseMeasure implements Measure {

  /** Reads what was found in a course. */
  interface Reader {

    /**
     * Take the measure.
     *
     * @param course the course
     * @param findings what was found in it, in order of day
     */
    Reading read(Course course, List<Finding> findings);
  }

  private final Definition definition;
  private final Stretch stretch;
  private final Reader reader;

  CourseMeasure(Definition definition, Stretch stretch, Reader reader) {
    this.definition =
        new Definition(
            definition.id(),
            definition.title(),
            definition.domain(),
            definition.formula() + "; " + stretch.inWords(),
            definition.inputs(),
            definition.source());
    this.stretch = stretch;
    this.reader = reader;
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Course> course = stretch.of(scene.subject());
    if (course.isEmpty()) {
      return new Reading.None("still to be done");
    }
    Optional<List<Finding>> findings = course.get().findings();
    return findings.isPresent()
        ? reader.read(course.get(), findings.get())
        : Reading.unknown(course.get().missingDay());
  }

  /** Return a question about what was found after the operation that began a course. */
  static MissingFact ask(Course course, String field, String question) {
    String after =
        course.operation().map(operation -> "findings after " + operation.id()).orElse("findings");
    return new MissingFact(after + "/" + field, question);
  }
}
