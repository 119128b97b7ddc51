package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The zone lies between holes 5 and 6 of ten. */
class SingleCortexTest {

  private static final String PLATE = "/operations/0/fixation/0";

  /** Locking screws: in both cortices, in one, and not said. */
  private static CaseText screws(String both, String one, String open) {
    return CaseText.plated()
        .at(
            PLATE,
            ("{screws: [{at: %s, type: 'locking', cortices: 2},"
                    + " {at: %s, type: 'locking', cortices: 1}, {at: %s, type: 'locking'}]}")
                .formatted(both, one, open));
  }

  @ParameterizedTest(name = "both {0}, one {1}, open {2}: {3}, {4}, {5}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [1, 3, 5, 6, 8]  | []      | []    | no fact  | none: no screw holds in a single cortex | 0 fact
          # near 3 of 3, far 1 of 3 in both: two thirds in one
          [1, 3, 5, 6]     | [8, 10] | []    | yes fact | 1 fact | 66.667 fact
          # near 1 of 2, far 1 of 3
          [1, 6]           | [3, 8, 10] | [] | yes fact | 1 fact | 66.667 fact
          # near 2 of 2, far 1 or 2 of 2
          [1, 3, 6]        | []      | [8]   | no or yes fact, ask op-1/fixation/plate-1/screws/cortices | 1–2 fact, ask op-1/fixation/plate-1/screws/cortices | 0–50 fact, ask op-1/fixation/plate-1/screws/cortices
          # far 1 of 2 for certain; near 1 or 2 of 2
          [1, 6]           | [8]     | [3]   | yes fact | 1 fact | 50 fact
          """)
  void counts_each_side_for_itself(
      String both, String one, String open, String relied, String left, String share) {
    CaseText text = screws(both, one, open);
    assertThat(Taken.of("single-cortex-relied", text)).isEqualTo(relied);
    assertThat(Taken.of("both-cortex-screws", text)).isEqualTo(left);
    assertThat(Taken.of("single-cortex-share", text)).isEqualTo(share);
  }

  @Test
  void a_conventional_screw_is_taken_to_cross_both() {
    CaseText text = CaseText.plated().at(PLATE, "{screws: [{at: [1, 6], type: 'cortical'}]}");
    assertThat(Taken.of("single-cortex-relied", text)).isEqualTo("no fact");
  }

  @Test
  void a_plate_beside_a_nail_relies_on_none() {
    CaseText text = BesideNail.of(screws("[1, 6]", "[3, 8]", "[]"));
    assertThat(Taken.of("single-cortex-relied", text)).isEqualTo("no fact");
  }

  @ParameterizedTest
  @ValueSource(strings = {"both-cortex-screws", "single-cortex-share"})
  void what_is_missing_is_asked_for(String measure) {
    assertThat(Taken.of(measure, CaseText.plated().at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(measure, CaseText.nailed())).isEqualTo("none: no plate in place");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void without_a_plate_nothing_is_relied_on_and_unstated_screws_leave_it_open() {
    assertThat(
            Taken.of(
                "single-cortex-relied", CaseText.plated().at("/operations/0", "{fixation: []}")))
        .isEqualTo("no fact");
    assertThat(Taken.of("single-cortex-relied", CaseText.bare()))
        .isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of("single-cortex-relied", CaseText.plated().at(PLATE, "{screws: null}")))
        .isEqualTo("no or yes fact, ask op-1/fixation/plate-1/screws/cortices");
  }
}
