package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The zone lies between holes 5 and 6 of ten. */
class SideHeldByTest {

  @ParameterizedTest(
      name = "conventional in {0}, locking in {1}: conventional side {2}, locked side {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [1, 3, 6, 8]  | []            | yes | no
          []            | [1, 3, 6, 8]  | no  | yes
          [1, 3]        | [6, 8]        | yes | yes
          [1, 6]        | [3, 8]        | yes | no
          # a side without a screw counts as conventional
          []            | [1, 3]        | yes | yes
          [1, 3]        | []            | yes | no
          """)
  void either_side_is_enough(String conventional, String locking, String one, String other) {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0/fixation/0",
                "{screws: [{at: %s, type: 'cortical'}, {at: %s, type: 'locking'}]}"
                    .formatted(conventional, locking));
    assertThat(Taken.of("conventional-side", text)).isEqualTo(one + " fact");
    assertThat(Taken.of("locked-only-side", text)).isEqualTo(other + " fact");
  }

  @Test
  void a_cancellous_screw_is_conventional() {
    CaseText text =
        CaseText.plated()
            .at("/operations/0/fixation/0", "{screws: [{at: [1, 6], type: 'cancellous'}]}");
    assertThat(Taken.of("conventional-side", text)).isEqualTo("yes fact");
  }

  @ParameterizedTest
  @ValueSource(strings = {"conventional-side", "locked-only-side"})
  void what_is_missing_is_asked_for(String measure) {
    String plate = "/operations/0/fixation/0";
    assertThat(Taken.of(measure, CaseText.plated().at(plate, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of(measure, CaseText.plated().at(plate, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of(measure, CaseText.nailed())).isEqualTo("no fact");
  }
}
