package org.bonewright.measures.healing;

import java.util.List;
import java.util.OptionalInt;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;

/** Whether healing went on between two sets of films. */
final class RadiographicProgress {

  private static final double APART_DAYS = 42;

  private RadiographicProgress() {}

  static Measure measure() {
    return new CourseMeasure(
        new Definition(
            "radiographic-progress",
            "Progress between two sets of films",
            Definition.yesOrNo(),
            "the last film against the last one at least six weeks before it: yes when the sum of"
                + " the four cortices rose, there is more callus, or the line went further; no"
                + " when none of these; unknown without two such films",
            List.of(
                "findings/day",
                "findings/films/cortices",
                "findings/films/callus",
                "findings/films/line"),
            "six to eight weeks: common practice, no source"),
        Stretch.STANDING,
        RadiographicProgress::read);
  }

  private static Reading read(Course course, List<Finding> findings) {
    List<Course.DatedFilm> films = Course.films(findings);
    for (int i = films.size() - 1; i >= 0; i--) {
      Course.DatedFilm last = films.get(films.size() - 1);
      Course.DatedFilm earlier = films.get(i);
      if (last.day().min() - earlier.day().max() >= APART_DAYS) {
        OptionalInt most = most(earlier.film(), last.film());
        String days = Diagnosis.day(earlier.day()) + " and " + Diagnosis.day(last.day());
        if (most.isPresent()) {
          return Reading.word(most.getAsInt() > 0 ? "yes" : "no", days);
        }
      }
    }
    return Reading.unknown(
        CourseMeasure.ask(
            course, "films", "What did two sets of films at least six weeks apart show?"));
  }

  /** Return the largest step forward in anything that both films tell. */
  private static OptionalInt most(Film earlier, Film last) {
    OptionalInt cortices =
        earlier.cortices().isEmpty() || last.cortices().isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(FilmScore.sum(last) - FilmScore.sum(earlier));
    OptionalInt callus =
        earlier.callus().isEmpty() || last.callus().isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(rank(last.callus().get()) - rank(earlier.callus().get()));
    OptionalInt line =
        earlier.line().isEmpty() || last.line().isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(last.line().get().compareTo(earlier.line().get()));
    return List.of(cortices, callus, line).stream()
        .filter(OptionalInt::isPresent)
        .mapToInt(OptionalInt::getAsInt)
        .max();
  }

  /** Callus that bridges is further than any that does not, however much. */
  private static int rank(Film.Callus callus) {
    return switch (callus) {
      case NONE -> 0;
      case LITTLE -> 1;
      case ABUNDANT -> 2;
      case BRIDGING -> 3;
    };
  }
}
