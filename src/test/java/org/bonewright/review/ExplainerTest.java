package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.RuleTrace;
import org.bonewright.principles.RuleTrace.Holds;
import org.bonewright.principles.VerdictKind;
import org.bonewright.report.ExplanationJson;
import org.bonewright.report.ExplanationText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExplainerTest {

  private static final Explainer EXPLAINER = new Explainer(RuleSet.built());

  static Stream<Path> demos() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("cases/demo"))) {
      return all
          .map(folder -> folder.resolve("case.json"))
          .filter(Files::exists)
          .sorted()
          .toList()
          .stream();
    }
  }

  private static CaseFile read(Path file) throws IOException {
    return new Intake().read(Files.readAllBytes(file)).caseFile().orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void every_cell_of_the_table_of_a_demo_is_explained(Path demo) throws IOException {
    List<Explanation> all = EXPLAINER.of(read(demo)).all().toList();

    assertThat(all).hasSizeGreaterThan(100);
    assertThat(all)
        .allSatisfy(
            explanation -> {
              assertThat(explanation.rules()).isNotEmpty();
              assertThat(explanation.inputs())
                  .hasSameSizeAs(explanation.line().readings())
                  .allSatisfy(input -> assertThat(input.formula()).isNotBlank());
              assertThat(explanation.limits())
                  .allSatisfy(limit -> assertThat(limit.evidence()).isNotBlank());
            });
    assertThat(ExplanationText.render(all))
        .doesNotContain("{", "}", "null", "Optional", "NaN")
        .contains("WHAT WAS READ", "THE RULES", "Reviewed by");
    assertThat(ExplanationText.render(all).lines()).allMatch(line -> line.length() <= 110);
    assertThat(ExplanationJson.render(all)).doesNotContain("null", "NaN", "Optional[");
  }

  @ParameterizedTest
  @MethodSource("demos")
  void the_rules_that_fire_are_those_that_make_the_verdict(Path demo) throws IOException {
    EXPLAINER
        .of(read(demo))
        .all()
        .forEach(
            explanation -> {
              VerdictKind verdict = explanation.line().verdict();
              Stream<RuleTrace> findings =
                  explanation.rules().stream().filter(rule -> rule.finds().isPresent());
              Stream<RuleTrace> scope =
                  explanation.rules().stream().filter(rule -> rule.finds().isEmpty());
              String where = explanation.line().principle() + " on " + explanation.line().subject();
              switch (verdict) {
                case NOT_APPLICABLE ->
                    assertThat(scope).as(where).allMatch(rule -> rule.fires() == Holds.NEVER);
                case MET ->
                    assertThat(findings).as(where).noneMatch(rule -> rule.fires() == Holds.ALWAYS);
                case UNMET ->
                    assertThat(findings).as(where).anyMatch(rule -> rule.fires() != Holds.NEVER);
                case UNKNOWN ->
                    assertThat(explanation.rules())
                        .as(where)
                        .anyMatch(rule -> rule.fires() == Holds.SOMETIMES);
              }
            });
  }

  @Test
  void a_condition_that_failed_is_named_with_its_limit() {
    Explanation explanation = only(CaseText.plated(), "plate-span-ratio", "op-1");

    assertThat(explanation.rules().stream().flatMap(rule -> rule.conditions().stream()))
        .anySatisfy(
            condition -> {
              assertThat(condition.holds()).isEqualTo(Holds.NEVER);
              assertThat(condition.words()).containsPattern("(below|at least) [0-9.]+");
            });
  }

  @Test
  void a_principle_of_operations_is_explained_on_every_stage_of_a_plan() {
    Explainer.Explained explained =
        EXPLAINER.of(CaseText.plated().redone("screws-pulled-out-in-sequence").file());

    assertThat(explained.on("plate-span-ratio", "plan-a"))
        .extracting(explanation -> explanation.line().subject())
        .containsExactly("plan-a/stage-1");
    assertThat(explained.judgedOn("plate-span-ratio")).containsExactly("op-1", "plan-a/stage-1");
  }

  @Test
  void a_principle_that_is_not_judged_there_has_no_explanation() {
    assertThat(EXPLAINER.of(CaseText.plated().file()).on("plate-span-ratio", "op-7")).isEmpty();
  }

  private static Explanation only(CaseText text, String principle, String subject) {
    List<Explanation> found = EXPLAINER.of(text.file()).on(principle, subject);
    assertThat(found).hasSize(1);
    return found.get(0);
  }
}
