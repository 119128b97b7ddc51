package org.bonewright.measures.healing;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetalHoldsTest {

  @ParameterizedTest
  @CsvSource({
    "plate-bent, no",
    "screws-pulled-out-in-sequence, no",
    "screws-pulled-out, no",
    "plate-broken, no",
    "nail-broken, no",
    "fracture-at-implant-end, no",
    "pins-loose, no",
    "no-union-metal-intact, yes",
    "callus-line-open, yes",
    "infection, yes",
    "deformity, yes"
  })
  void after_a_failure_as_the_mode_says(String mode, String expected) {
    CaseText text = CaseText.plated().redone(mode);
    assertThat(Taken.of("metal-holds-now", text)).isEqualTo(expected + " fact");
    assertThat(Taken.of("metal-holds-after", text, "op-1")).isEqualTo(expected + " fact");
  }

  @Test
  void without_a_failure_it_does() {
    CaseText text = CaseText.plated();
    assertThat(Taken.of("metal-holds-after", outcome(text, "united"))).isEqualTo("yes fact");
    assertThat(Taken.of("metal-holds-after", outcome(text, "under-way"))).isEqualTo("yes fact");
    assertThat(Taken.of("metal-holds-after", outcome(text, "failed")))
        .isEqualTo("unknown, ask op-1/outcome/mode");
    assertThat(Taken.of("metal-holds-after", text)).isEqualTo("unknown, ask op-1/outcome/mode");
  }

  private static CaseText outcome(CaseText text, String result) {
    return text.at("/operations/0", "{outcome: {result: '" + result + "'}}");
  }

  @Test
  void a_fracture_is_still_held_while_metal_stands_and_nothing_moves() {
    String still = "{day: 90, motionAtSite: 'absent'}";
    String moves = "{day: 90, motionAtSite: 'present'}";
    assertThat(firm("callus-line-open", still)).isEqualTo("yes fact");
    assertThat(firm("callus-line-open", moves)).isEqualTo("no fact");
    assertThat(firm("plate-bent", still)).isEqualTo("no fact");
    assertThat(firm("plate-bent", "{day: 90}")).isEqualTo("no fact");
    assertThat(firm("callus-line-open", "{day: 90}"))
        .isEqualTo("no or yes fact, ask findings after op-1/motionAtSite");
  }

  private static String firm(String mode, String finding) {
    return Taken.of("firm-before", Found.planned(mode, finding));
  }

  @Test
  void the_concept_in_force_is_that_of_the_operation_before_a_plan() {
    CaseText text =
        CaseText.plated()
            .redone("deformity")
            .at("/plans/0/stages/0", "{concept: 'relative', compression: null}");
    assertThat(Taken.of("concept-now", text)).isEqualTo("absolute fact");
    assertThat(Taken.of("concept-before", text)).isEqualTo("absolute fact");
    assertThat(Taken.of("concept-now", CaseText.nailed())).isEqualTo("relative fact");
    assertThat(Taken.of("concept-before", CaseText.nailed()))
        .isEqualTo("none: no operation before");
  }
}
