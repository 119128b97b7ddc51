package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.checking.Consistency;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.measures.Subject;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the base cases to be clean files that show sound surgery at their end. */
class BaseCasesTest {

  private static final RuleSet RULES = RuleSet.built();

  @ParameterizedTest
  @MethodSource("bases")
  void reads_without_a_problem(BaseCase base) {
    assertThat(base.read().problems()).extracting(Problem::inWords).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("bases")
  void agrees_with_itself(BaseCase base) {
    assertThat(new Consistency().check(base.caseFile())).extracting(Problem::inWords).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("bases")
  void leaves_nothing_unmet_above_a_note_at_its_end(BaseCase base) {
    assertThat(atTheEnd(base).filter(j -> j.is(VerdictKind.UNMET)))
        .filteredOn(j -> j.severity().orElseThrow() != Severity.NOTE)
        .extracting(BaseCasesTest::shown)
        .isEmpty();
  }

  /** Where only the samples of the model differ, nothing is missing in the file. */
  @ParameterizedTest
  @MethodSource("bases")
  void leaves_nothing_unknown_at_its_end_for_want_of_a_fact(BaseCase base) {
    assertThat(
            atTheEnd(base).filter(j -> j.is(VerdictKind.UNKNOWN)).filter(j -> j.share().isEmpty()))
        .extracting(BaseCasesTest::shown)
        .isEmpty();
  }

  /** Return the judgements on the plan and its stages, or on the last operation. */
  private static Stream<Judgement> atTheEnd(BaseCase base) {
    JudgedCase judged = new Judge(RULES).judge(base.caseFile());
    List<Subject> subjects = judged.subjects();
    Subject last = subjects.get(subjects.size() - 1);
    return subjects.stream()
        .filter(subject -> subject.equals(last) || subject.planned())
        .flatMap(subject -> judged.of(subject).stream());
  }

  private static String shown(Judgement judgement) {
    return judgement.subject()
        + " "
        + judgement.card().id()
        + ": "
        + new Wording(RULES).of(judgement)
        + Shorthand.of(judgement.readings());
  }

  private static Stream<Arguments> bases() {
    return BaseCase.all().stream().map(base -> argumentSet(base.name(), base));
  }
}
