package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;

/** What films show: callus, the line, lucent screws, bridged cortices. */
final class FilmReading {

  private static final int CORTICES = 4;
  private static final int BRIDGED = 3;

  private FilmReading() {}

  /** Return the measure of callus after an operation. */
  static Measure callus() {
    return new CourseMeasure(
        new Definition(
            "callus-after",
            "Callus on the films",
            Definition.words("absent", "present"),
            "present when any film shows callus, however little",
            List.of("findings/films/callus"),
            "the case file"),
        Stretch.AFTER,
        (course, findings) -> callus(course, Course.films(findings)));
  }

  private static Reading callus(Course course, List<Course.DatedFilm> films) {
    List<Film.Callus> seen = films.stream().flatMap(film -> film.film().callus().stream()).toList();
    if (seen.isEmpty()) {
      return Reading.unknown(ask(course, "callus", "Did the films show callus?"));
    }
    boolean some = seen.stream().anyMatch(callus -> callus != Film.Callus.NONE);
    return Reading.word(some ? "present" : "absent", seen.size() + " films");
  }

  /** Return the measure of the line after an operation. */
  static Measure line() {
    return new CourseMeasure(
        new Definition(
            "line-after",
            "The line on the last film",
            Definition.words("visible", "fading", "gone"),
            "as on the last film that tells",
            List.of("findings/films/line"),
            "the case file"),
        Stretch.AFTER,
        (course, findings) ->
            last(findings, Film::line)
                .map(line -> Reading.word(Diagnosis.words(line), "last film"))
                .orElseGet(
                    () ->
                        Reading.unknown(
                            ask(course, "line", "Was the line visible, fading or gone?"))));
  }

  /** Return the measure of screws with a lucent rim after an operation. */
  static Measure lucentScrews() {
    return new CourseMeasure(
        new Definition(
            "lucent-screws-after",
            "Screws with a lucent rim",
            Definition.count(1),
            "the most on any film; a film that names none shows none",
            List.of("findings/films/lucentScrews"),
            "bookkeeping"),
        Stretch.AFTER,
        (course, findings) -> lucent(course, Course.films(findings)));
  }

  private static Reading lucent(Course course, List<Course.DatedFilm> films) {
    if (films.isEmpty()) {
      return Reading.unknown(
          ask(course, "lucentScrews", "Which screws had a lucent rim on the films?"));
    }
    int most = films.stream().mapToInt(film -> film.film().lucentScrews().size()).max().orElse(0);
    return Reading.number(most, films.size() + " films");
  }

  /** Return the measure of how much the line grew wider from film to film. */
  static Measure widening() {
    return new CourseMeasure(
        new Definition(
            "line-widening-after",
            "Line wider than before",
            Definition.signedMillimetres(),
            "width of the line on the last film that gives it, less that on the first; none where"
                + " fewer than two films give it",
            List.of("findings/films/lineMm"),
            "bookkeeping"),
        Stretch.AFTER,
        (course, findings) -> widening(course, Course.films(findings)));
  }

  private static Reading widening(Course course, List<Course.DatedFilm> films) {
    List<Dimension> widths =
        films.stream()
            .flatMap(film -> film.film().lineMm().stream())
            .map(width -> Dimension.stated(width, ""))
            .toList();
    if (widths.size() < 2) {
      return new Reading.None("no two films give the width of the line");
    }
    return Reading.number(
        widths.get(widths.size() - 1).minus(widths.get(0)),
        "last film less the first",
        ask(course, "lineMm", "How wide was the line on each film, in mm?"));
  }

  /** Return the measure of how many cortices are bridged. */
  static Measure bridgedCortices() {
    return new CourseMeasure(
        new Definition(
            "bridged-cortices",
            "Cortices bridged",
            new Definition.Domain.Numbers("1", "", 0, CORTICES, 1),
            "cortices that score 3 on the last film that tells; all four where the line is gone, and"
                + " up to four where it is fading",
            List.of("findings/films/cortices", "findings/films/line"),
            "Whelan et al., J Bone Joint Surg Br 2002, and Corrales et al., JBJS Am 2008, for its"
                + " meaning; reading the line for the cortices is our convention"),
        Stretch.STANDING,
        (course, findings) -> bridged(course, Course.films(findings)));
  }

  private static Reading bridged(Course course, List<Course.DatedFilm> films) {
    MissingFact missing =
        ask(course, "cortices", "How many of the four cortices are bridged on two views?");
    Optional<Course.DatedFilm> last =
        films.stream()
            .filter(film -> FilmScore.scored(film) || film.film().line().isPresent())
            .reduce((one, later) -> later);
    if (last.isEmpty()) {
      return Reading.unknown(missing);
    }
    Optional<Film.Line> line = last.get().film().line();
    String working = "film of " + Diagnosis.day(last.get().day());
    if (line.equals(Optional.of(Film.Line.GONE))) {
      return Reading.number(CORTICES, working + ", line gone");
    }
    if (!FilmScore.scored(last.get())) {
      return Reading.unknown(missing);
    }
    int whole =
        (int) last.get().film().cortices().stream().filter(score -> score == BRIDGED).count();
    boolean fading = line.equals(Optional.of(Film.Line.FADING)) && whole < CORTICES;
    return fading
        ? new Reading.Amount(
            whole, CORTICES, Kind.FACT, working + ", line fading", List.of(missing))
        : Reading.number(whole, working);
  }

  private static <T> Optional<T> last(
      List<Finding> findings, Function<Film, Optional<T>> question) {
    return Course.films(findings).stream()
        .flatMap(film -> question.apply(film.film()).stream())
        .reduce((one, later) -> later);
  }

  private static MissingFact ask(Course course, String field, String question) {
    return CourseMeasure.ask(course, "films/" + field, question);
  }
}
