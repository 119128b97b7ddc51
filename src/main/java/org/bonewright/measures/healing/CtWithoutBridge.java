package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;

/** Whether a CT showed that no cortex is bridged. */
final class CtWithoutBridge {

  /** Score of a cortex whose line is gone. */
  private static final int BRIDGED = 3;

  private CtWithoutBridge() {}

  static Measure measure() {
    return new CourseMeasure(
        new Definition(
            "ct-without-bridge",
            "Computed tomogram without a bridge",
            Definition.yesOrNo(),
            "yes when the last computed tomogram shows the line, and callus bridges no cortex; no when it does not,"
                + " or none is on file",
            List.of("findings/films/view", "findings/films/line", "findings/films/cortices"),
            "that one such tomogram stands for two sets of films is our convention"),
        Stretch.STANDING,
        CtWithoutBridge::read);
  }

  private static Reading read(Course course, List<Finding> findings) {
    List<Course.DatedFilm> scans =
        Course.films(findings).stream()
            .filter(dated -> dated.film().view() == Film.View.CT)
            .toList();
    if (scans.isEmpty()) {
      return Reading.word("no", "no computed tomogram on file");
    }
    Course.DatedFilm last = scans.get(scans.size() - 1);
    Film film = last.film();
    String working = "computed tomogram of " + Diagnosis.day(last.day());
    boolean lineGoes = film.line().map(line -> line != Film.Line.VISIBLE).orElse(false);
    if (lineGoes || isBridged(film)) {
      return Reading.word("no", working);
    }
    boolean told = !film.cortices().isEmpty() || film.callus().isPresent();
    return film.line().isPresent() && told
        ? Reading.word("yes", working)
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            working,
            CourseMeasure.ask(
                course,
                "films",
                "Did the computed tomogram show the line, and was a cortex bridged?"));
  }

  private static boolean isBridged(Film film) {
    return film.callus().equals(Optional.of(Film.Callus.BRIDGING))
        || film.cortices().stream().anyMatch(score -> score >= BRIDGED);
  }
}
