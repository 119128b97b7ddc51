package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.junit.jupiter.api.Test;

/** Sentences that stand beside a verdict, and of which it does not depend. */
class ToldTest {

  private static final String LOAD = "load-limit-stated";

  private static final BaseCase LIMITED = BaseCase.of("femur-plate-revision-plan");

  private static final BaseCase FREE =
      LIMITED.patched("[{\"op\": \"remove\", \"path\": \"/plans/0/stages/0/aftercare/load\"}]");

  private static Judgement judged(CaseFile file) {
    return new Judge(AllCells.RULES)
        .judge(file).judgements().values().stream()
            .flatMap(List::stream)
            .filter(judgement -> judgement.subject().equals("plan-a"))
            .filter(judgement -> judgement.card().id().equals(LOAD))
            .findFirst()
            .orElseThrow();
  }

  private static String words(Judgement judgement) {
    return new Wording(AllCells.RULES).of(judgement);
  }

  @Test
  void are_said_with_what_was_read_beside_the_verdicts_that_they_name() {
    Judgement unmet = judged(FREE.caseFile());
    assertThat(unmet.is(VerdictKind.UNMET)).isTrue();
    assertThat(words(unmet))
        .matches(
            "No load limit is given\\. All forces here then take full use: [0-9.]+–[0-9.]+ N·m of"
                + " bending at the line\\.");
    assertThat(unmet.readings()).containsKey("load-bending");
  }

  @Test
  void are_left_out_where_there_is_nothing_to_tell() {
    assertThat(judged(FREE.caseFile()).readings()).doesNotContainKey("metal-life-over-union");
  }

  @Test
  void are_left_out_beside_other_verdicts() {
    Judgement met = judged(LIMITED.caseFile());
    assertThat(met.is(VerdictKind.MET)).isTrue();
    assertThat(words(met)).isEqualTo("A load limit is given.");
    assertThat(met.readings()).doesNotContainKey("load-bending");
  }
}
