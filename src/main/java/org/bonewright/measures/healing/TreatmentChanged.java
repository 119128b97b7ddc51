package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;

/** Whether anything was changed after the early films of treatment without an operation. */
final class TreatmentChanged {

  private static final double SOON_DAYS = 56;
  private static final int EARLY_FROM = 5;
  private static final int EARLY_TO = 13;

  private TreatmentChanged() {}

  static Measure measure() {
    return new CourseMeasure(
        new Definition(
            "treatment-changed",
            "Treatment changed after the early films",
            Definition.yesOrNo(),
            "yes when within eight weeks of the first film scored in weeks 5 to 13 an operation was"
                + " done or another treatment without operation began; none without such a film",
            List.of("findings/films/cortices", "operations/day", "nonOperative/fromDay"),
            "our convention"),
        Stretch.WITHOUT_OPERATION,
        TreatmentChanged::read);
  }

  private static Reading read(Course course, List<Finding> findings) {
    Optional<Course.DatedFilm> film =
        Course.films(findings).stream()
            .filter(FilmScore::scored)
            .filter(f -> FilmScore.in(course, f, EARLY_FROM, EARLY_TO))
            .findFirst();
    if (film.isEmpty()) {
      return new Reading.None("no film scored in weeks 5 to 13");
    }
    Quantity seen = film.get().day();
    boolean changed =
        course
                .lastDay()
                .filter(day -> course.endsWithAnOperation())
                .map(day -> soon(seen, day))
                .orElse(false)
            || course.nonOperative().stream().anyMatch(t -> soon(seen, t.fromDay()));
    return Diagnosis.onFile(changed ? "yes" : "no", "after the film of " + Diagnosis.day(seen));
  }

  private static boolean soon(Quantity film, Quantity change) {
    return change.middle() >= film.middle() && change.middle() - film.middle() <= SOON_DAYS;
  }
}
