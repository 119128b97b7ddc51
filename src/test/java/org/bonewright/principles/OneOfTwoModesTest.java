package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.FailureMode;
import org.bonewright.measures.Words;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A mode that leaves open which of two it was; to tell it later must move no verdict. */
class OneOfTwoModesTest {

  private static final Judge JUDGE = new Judge(RuleSet.built());

  @TestFactory
  Stream<DynamicTest> what_is_sure_of_either_stays_so_once_it_is_told_which() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of("cases"))) {
      files = all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    List<DynamicTest> tests = new ArrayList<>();
    for (Path file : files) {
      CaseText text = CaseText.of(Files.readString(file));
      lastFailed(text)
          .ifPresent(
              outcome ->
                  tests.add(DynamicTest.dynamicTest(file + outcome, () -> check(text, outcome))));
    }
    return tests.stream();
  }

  /** Return where the outcome of the last operation that failed stands. */
  private static Optional<String> lastFailed(CaseText text) {
    for (int i = text.tree().path("operations").size() - 1; i >= 0; i--) {
      String outcome = "/operations/" + i + "/outcome";
      if (text.tree().at(outcome + "/result").asString("").equals("failed")) {
        return Optional.of(outcome);
      }
    }
    return Optional.empty();
  }

  private static void check(CaseText text, String outcome) {
    for (FailureMode either : FailureMode.values()) {
      if (!either.isExact() && ended(text, outcome, either).read().caseFile().isPresent()) {
        JudgedCase open = JUDGE.judge(ended(text, outcome, either).file());
        for (FailureMode exact : either.possible()) {
          stays(open, JUDGE.judge(ended(text, outcome, exact).file()), exact);
        }
      }
    }
  }

  private static void stays(JudgedCase open, JudgedCase told, FailureMode exact) {
    open.judgements()
        .forEach(
            (subject, judgements) ->
                judgements.stream()
                    .filter(judgement -> !judgement.is(VerdictKind.UNKNOWN))
                    .forEach(
                        judgement ->
                            assertThat(told.judgements().get(subject))
                                .as("%s of %s, told %s", judgement.card().id(), subject, exact)
                                .filteredOn(now -> now.card().equals(judgement.card()))
                                .extracting(now -> now.verdict().kind())
                                .containsExactly(judgement.verdict().kind())));
  }

  private static CaseText ended(CaseText text, String outcome, FailureMode mode) {
    return text.at(outcome, "{mode: '" + Words.written(mode) + "', hole: null}");
  }
}
