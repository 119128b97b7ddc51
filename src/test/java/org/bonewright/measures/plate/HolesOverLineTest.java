package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A plate of ten holes. */
class HolesOverLineTest {

  @ParameterizedTest(
      name = "zone between {0}, screws in {1}, plugs in {2}: free {3}, open {4}, in zone {5}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # zone  | screws                | plugs  | free | open | in zone
          [5, 6]  | [1, 3, 5, 6, 8, 10]   | []     | 0    | 0    | 0
          [5, 6]  | [1, 3, 4, 7, 8, 10]   | []     | 2    | 2    | 0
          [5, 6]  | [1, 3, 4, 7, 8, 10]   | [5]    | 2    | 1    | 0
          [4, 6]  | [1, 4, 6, 10]         | []     | 1    | 1    | 0
          [4, 7]  | [1, 4, 5, 7, 10]      | []     | 1    | 1    | 1
          [3, 8]  | [1, 2, 9, 10]         | [4, 5] | 6    | 4    | 0
          """)
  void are_counted_between_the_innermost_screws(
      String zone, String screws, String plugs, int free, int open, int inside) {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0/fixation/0",
                "{place: {zoneBetweenHoles: %s}, plugged: %s, screws: [{at: %s, type: 'cortical'}]}"
                    .formatted(zone, plugs, screws));
    assertThat(Taken.of("screw-free-holes-over-line", text)).isEqualTo(free + " fact");
    assertThat(Taken.of("open-holes-over-line", text)).isEqualTo(open + " fact");
    assertThat(Taken.of("screw-in-zone", text)).isEqualTo((inside > 0 ? "yes" : "no") + " fact");
  }

  @ParameterizedTest
  @ValueSource(strings = {"screw-free-holes-over-line", "open-holes-over-line"})
  void there_is_no_inside_where_a_side_has_no_screw(String measure) {
    CaseText text =
        CaseText.plated()
            .at("/operations/0/fixation/0", "{screws: [{at: [1, 2], type: 'cortical'}]}");
    assertThat(Taken.of(measure, text)).isEqualTo("none: no plate screw on one side of the zone");
  }

  @ParameterizedTest
  @ValueSource(strings = {"screw-free-holes-over-line", "open-holes-over-line", "screw-in-zone"})
  void what_is_missing_is_asked_for(String measure) {
    String plate = "/operations/0/fixation/0";
    CaseText text = CaseText.plated();
    assertThat(Taken.of(measure, text.at(plate, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of(measure, text.at(plate, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of(measure, CaseText.nailed())).isEqualTo("none: no plate in place");
  }
}
