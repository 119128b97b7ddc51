package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Words;

/** What was felt and said of the fracture in a course. */
final class Diagnosis {

  private static final String UNITED = "united";

  private Diagnosis() {}

  /** Return the measure of the last word on union. */
  static Measure label(String id, Stretch stretch) {
    return new CourseMeasure(
        new Definition(
            id,
            "Last word on union",
            Definition.words(UNITED, "healing", "delayed-union", "nonunion"),
            "the last diagnosis; where there is none: united if the operation is recorded so; none"
                + " where it is under way and nothing was found since",
            List.of("findings/diagnosis", "operations/outcome/result"),
            "the case file"),
        stretch,
        Diagnosis::label);
  }

  private static Reading label(Course course, List<Finding> findings) {
    Optional<Finding> told = last(findings, finding -> finding.diagnosis().isPresent());
    if (told.isPresent()) {
      return Reading.word(
          Words.written(told.flatMap(Finding::diagnosis).orElseThrow()),
          "as found on " + day(told.get().day()));
    }
    Optional<Outcome.Result> result =
        course.operation().flatMap(o -> o.outcome()).map(Outcome::result);
    if (result.equals(Optional.of(Outcome.Result.UNITED))) {
      return Reading.word(UNITED, "as recorded of the operation");
    }
    boolean waiting =
        result.equals(Optional.of(Outcome.Result.UNDER_WAY))
            || result.equals(Optional.of(Outcome.Result.STAGE_DONE));
    return waiting && findings.isEmpty()
        ? new Reading.None("nothing was found since")
        : Reading.unknown(
            CourseMeasure.ask(
                course, "diagnosis", "Is it united, healing, a delayed union or a nonunion?"));
  }

  /** Return the measure of whether the kind of nonunion is on file. */
  static Measure vitalityStated(String id, Stretch stretch) {
    return new CourseMeasure(
        new Definition(
            id,
            "Kind of nonunion on file",
            Definition.words("stated", "uncertain", "not-stated"),
            "stated when one of the four kinds is on file, uncertain when that is what the file says",
            List.of("findings/vitality"),
            "Weber and Čech, Pseudarthrosis, 1973 and 1976, from memory"),
        stretch,
        (course, findings) ->
            onFile(
                last(findings, finding -> finding.vitality().isPresent())
                    .flatMap(Finding::vitality)
                    .map(v -> v == Finding.Vitality.UNCERTAIN ? "uncertain" : "stated")
                    .orElse("not-stated"),
                "the findings of that time"));
  }

  /** Return the measure of motion felt at the site. */
  static Measure motionFelt(String id, Stretch stretch) {
    return new CourseMeasure(
        new Definition(
            id,
            "Motion felt at the fracture",
            Definition.yesOrNo(),
            "the last answer to whether motion is felt at the site",
            List.of("findings/motionAtSite"),
            "the case file"),
        stretch,
        (course, findings) ->
            last(findings, finding -> finding.motionAtSite().filter(Diagnosis::answers).isPresent())
                .map(
                    finding ->
                        Reading.word(
                            finding.motionAtSite().equals(Optional.of(Examination.PRESENT))
                                ? "yes"
                                : "no",
                            "as found on " + day(finding.day())))
                .orElseGet(
                    () ->
                        Reading.unknown(
                            CourseMeasure.ask(
                                course, "motionAtSite", "Is motion felt at the fracture?"))));
  }

  /** Return the measure of pain under load. */
  static Measure pain(String id, Stretch stretch) {
    return new CourseMeasure(
        new Definition(
            id,
            "Pain under load",
            new Definition.Domain.Numbers("1", "", 0, 10, 0),
            "the last number given, 0 none to 10 worst",
            List.of("findings/pain"),
            "the case file"),
        stretch,
        (course, findings) ->
            number(
                course,
                last(findings, finding -> finding.pain().isPresent()).flatMap(Finding::pain),
                "pain",
                "How strong is the pain under load, 0 none to 10 worst?"));
  }

  /** Return the measure of bone missing along the axis. */
  static Measure defect(String id, Stretch stretch) {
    return new CourseMeasure(
        new Definition(
            id,
            "Defect found",
            Definition.millimetres(),
            "the last length of bone found missing",
            List.of("findings/defectMm"),
            "the case file"),
        stretch,
        (course, findings) ->
            number(
                course,
                last(findings, finding -> finding.defectMm().isPresent())
                    .flatMap(Finding::defectMm),
                "defectMm",
                "How much bone is missing along the axis, in mm?"));
  }

  private static Reading number(
      Course course, Optional<Quantity> value, String field, String question) {
    return value
        .<Reading>map(
            q ->
                new Reading.Amount(
                    q.min(),
                    q.max(),
                    Kind.FACT,
                    "as last found",
                    q.isExact() ? List.of() : List.of(CourseMeasure.ask(course, field, question))))
        .orElseGet(() -> Reading.unknown(CourseMeasure.ask(course, field, question)));
  }

  static Reading onFile(String word, String working) {
    return Reading.words(java.util.Set.of(word), Kind.RECORD, working);
  }

  /** Return the last finding that answers a question. */
  static Optional<Finding> last(
      List<Finding> findings, java.util.function.Predicate<Finding> answers) {
    return findings.stream().filter(answers).reduce((one, later) -> later);
  }

  private static boolean answers(Examination examination) {
    return examination == Examination.PRESENT || examination == Examination.ABSENT;
  }

  static String day(Quantity day) {
    return "day " + Math.round(day.middle());
  }

  static String words(Enum<?> constant) {
    return Words.of(constant).replace(' ', '-');
  }
}
