package org.bonewright.measures.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Before: six cortices a side under 160 mm of plate. */
class HoldChangedTest {

  private static final String PLATE = "/plans/0/stages/0/fixation/0";

  private static CaseText plan(String patch) {
    return CaseText.plated()
        .redone("screws-pulled-out-in-sequence")
        .at(
            PLATE,
            "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2, track: 'fresh'}]}")
        .at(PLATE, patch);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {}                                                                                    | no fact
          {lengthMm: 176}                                                                       | yes fact
          {lengthMm: 175}                                                                       | no fact
          {screws: [{at: [1, 2, 3, 5, 6, 7, 8, 10], type: 'cortical', cortices: 2, track: 'fresh'}]} | yes fact
          {screws: [{at: [1, 3, 5, 6, 8, 10], type: 'locking', cortices: 2, track: 'fresh'}]}   | yes fact
          {screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2, track: 'fresh', augmentation: 'cement'}]} | yes fact
          {lengthMm: null, family: null}                                                        | no or yes fact, ask plan-a/stage-1/fixation
          """)
  void more_screws_a_longer_plate_locking_or_cement_change_it(String patch, String reads) {
    assertThat(Taken.of("hold-changed", plan(patch))).isEqualTo(reads);
  }

  @Test
  void there_is_nothing_to_change_before_a_first_operation() {
    assertThat(Taken.of("hold-changed", CaseText.plated())).isEqualTo("none: no operation before");
  }
}
