package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlansJudgeTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Judge JUDGE = new Judge(RULES);

  private static CaseFile read(String text) {
    return new Intake()
        .read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8))
        .caseFile()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"femur-three-operations", "tibia-minimum-set"})
  void says_of_each_plan_what_a_judge_says_however_often_it_judged_before(String demo)
      throws IOException {
    String text = Files.readString(Path.of("cases/demo", demo, "case.json"));
    PlansJudge judge = new PlansJudge(RULES);
    List<CaseFile> cases =
        Stream.of(text, text.replace("\"deepSamples\": 3", "\"deepSamples\": 5"), text)
            .map(PlansJudgeTest::read)
            .toList();

    for (CaseFile each :
        Stream.concat(cases.stream(), Stream.of(cases.get(0).withoutPlans())).toList()) {
      assertThat(judge.judge(each).judgements()).isEqualTo(JUDGE.judge(each).judgements());
    }
  }
}
