package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;

/** The sum of the scores of four cortices on a film: RUST, and RUSHU where nothing was operated. */
final class FilmScore {

  private static final int CORTICES = 4;
  private static final int BEST = 3;
  private static final String RULE =
      "sum of the scores of four cortices, each 1 no callus, 2 callus and line, 3 callus and no line";
  private static final String RUST = "Kooistra et al., J Orthop Trauma 2010, for the score";
  private static final Definition.Domain SUMS =
      new Definition.Domain.Numbers("1", "", CORTICES, (double) CORTICES * BEST, 1);

  private FilmScore() {}

  /** Return the measure of the last score of a case as it stands. */
  static Measure now() {
    return latest("rust-now", Stretch.STANDING);
  }

  /** Return the measure of the last score before an operation or plan. */
  static Measure before() {
    return latest("rust-before", Stretch.BEFORE);
  }

  private static Measure latest(String id, Stretch stretch) {
    return new CourseMeasure(
        new Definition(
            id,
            "Last score of the films",
            SUMS,
            RULE + ", on the last film scored",
            List.of("findings/films/cortices", "findings/day"),
            RUST),
        stretch,
        (course, findings) ->
            lastScored(Course.films(findings))
                .map(FilmScore::score)
                .orElseGet(() -> Reading.unknown(ask(course))));
  }

  /** Return the measure of the score in some weeks after the last operation. */
  static Measure inWeeks(String id, int from, int to) {
    return new CourseMeasure(
        new Definition(
            id,
            "Score of the films at 12 weeks",
            SUMS,
            RULE
                + ", on the last film scored in weeks "
                + from
                + " to "
                + to
                + "; none without one",
            List.of("findings/films/cortices", "findings/day"),
            RUST),
        Stretch.STANDING,
        (course, findings) -> within(course, findings, from, to));
  }

  /** Return the measure of the score in some weeks of treatment without an operation. */
  static Measure withoutOperation(String id, int from, int to) {
    return new CourseMeasure(
        new Definition(
            id,
            "Score in weeks " + from + " to " + to + " without operation",
            SUMS,
            RULE
                + ", on the last film scored in weeks "
                + from
                + " to "
                + to
                + "; none without one",
            List.of("findings/films/cortices", "findings/day", "operations/day"),
            "Oliver et al., Bone Joint J 2019, for the score"),
        Stretch.WITHOUT_OPERATION,
        (course, findings) -> within(course, findings, from, to));
  }

  private static Reading within(Course course, List<Finding> findings, int from, int to) {
    List<Course.DatedFilm> then =
        Course.films(findings).stream().filter(film -> in(course, film, from, to)).toList();
    return lastScored(then)
        .map(FilmScore::score)
        .orElseGet(() -> new Reading.None("no film scored in weeks " + from + " to " + to));
  }

  static boolean in(Course course, Course.DatedFilm film, int from, int to) {
    Optional<Dimension> weeks = course.weeksAt(film.day());
    return weeks.map(w -> w.min() >= from && w.max() <= to).orElse(false);
  }

  private static Reading score(Course.DatedFilm film) {
    return Reading.number(sum(film.film()), "film of " + Diagnosis.day(film.day()));
  }

  /** Return the sum of a film that is scored. */
  static int sum(Film film) {
    return film.cortices().stream().mapToInt(Integer::intValue).sum();
  }

  /** Return whether all four cortices of a film are scored. */
  static boolean scored(Course.DatedFilm film) {
    return film.film().cortices().size() == CORTICES;
  }

  private static Optional<Course.DatedFilm> lastScored(List<Course.DatedFilm> films) {
    return films.stream().filter(FilmScore::scored).reduce((one, later) -> later);
  }

  private static MissingFact ask(Course course) {
    return CourseMeasure.ask(
        course, "films/cortices", "How does each of the four cortices score on the last films?");
  }
}
