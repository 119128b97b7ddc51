package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class PlateSpanRatioTest {

  private static CaseText zone(String zone) {
    return CaseText.plated().at("/injury", "{pattern: 'multifragmentary', zone: " + zone + "}");
  }

  @Test
  void is_plate_over_zone() {
    // 160 / 40
    assertThat(Taken.of("plate-span-ratio", zone("{fromMm: 160, toMm: 200}"))).isEqualTo("4 fact");
  }

  @Test
  void a_simple_line_counts_the_thickness_of_the_bone() {
    // 160 / 24
    assertThat(Taken.of("plate-span-ratio", CaseText.plated())).isEqualTo("6.667 fact");
  }

  @Test
  void ranges_run_from_the_shortest_plate_on_the_longest_zone_to_the_reverse() {
    // 144 / 40 to 176 / 32
    CaseText text =
        zone("{fromMm: 160, toMm: {min: 192, max: 200}}")
            .at("/operations/0/fixation/0", "{lengthMm: null}");
    assertThat(Taken.of("plate-span-ratio", text))
        .isEqualTo("3.6–5.5 assumed, ask op-1/fixation/plate-1/lengthMm and injury/zone");
  }

  @Test
  void a_zone_that_may_have_no_length_leaves_it_without_an_upper_bound() {
    CaseText text =
        zone("null").at("/operations/0/fixation/0", "{place: {zoneBetweenHoles: [5, 6]}}");
    assertThat(Taken.of("plate-span-ratio", text)).isEqualTo("10–∞ assumed, ask injury/zone");
  }

  @Test
  void is_unknown_where_either_is() {
    assertThat(Taken.of("plate-span-ratio", CaseText.bare()))
        .isEqualTo("unknown, ask op-1/fixation and injury/zone");
  }

  @Test
  void a_nail_has_none() {
    assertThat(Taken.of("plate-span-ratio", CaseText.nailed()))
        .isEqualTo("none: no plate in place");
  }
}
