package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is left of a broken-up zone from 160 to 200 mm once bone is cut out of it. */
class ZoneCutTest {

  private static CaseText cut(int from, int to) {
    return CaseText.plated()
        .at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}}")
        .at(
            "/operations/0",
            "{reduction: {gapNearMm: 0, gapFarMm: 0}, resection: [{fromMm: %d, toMm: %d}]}"
                .formatted(from, to));
  }

  private static String pattern(CaseText text) {
    return Taken.of("pattern-class", text);
  }

  @ParameterizedTest(name = "gap {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0                | simple fact
          5                | simple fact
          5.1              | defect fact
          {min: 4, max: 5} | simple fact
          {min: 5, max: 6} | defect or simple fact, ask op-1/reduction/gapFarMm
          {min: 6, max: 9} | defect fact
          null             | defect or simple fact, ask op-1/reduction/gapFarMm
          """)
  void all_of_it_leaves_two_ends_that_meet_within_five_millimetres_or_a_defect(
      String gap, String reads) {
    CaseText text = cut(150, 210).at("/operations/0/reduction", "{gapFarMm: " + gap + "}");
    assertThat(pattern(text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource({
    "160, 200, simple fact",
    "161, 200, multifragmentary fact",
    "160, 199, multifragmentary fact",
    "170, 180, multifragmentary fact"
  })
  void a_cut_takes_all_of_it_where_it_reaches_both_edges(int from, int to, String reads) {
    assertThat(pattern(cut(from, to))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # the zone begins at 160 to 165 and ends at 195 to 200
          165 | 200 | multifragmentary or simple fact, ask injury/zone
          166 | 200 | multifragmentary fact
          160 | 195 | multifragmentary or simple fact, ask injury/zone
          160 | 194 | multifragmentary fact
          160 | 200 | simple fact
          """)
  void a_cut_may_take_all_of_a_zone_whose_edges_are_ranges(int from, int to, String reads) {
    CaseText text =
        cut(from, to)
            .at("/injury", "{zone: {fromMm: {min: 160, max: 165}, toMm: {min: 195, max: 200}}}");
    assertThat(pattern(text)).isEqualTo(reads);
  }

  @Test
  void a_cut_as_long_as_a_zone_at_no_known_level_leaves_nothing_of_it() {
    String zone = "{pattern: 'wedge', zone: {fromMm: null, toMm: null, lengthMm: %d}}";
    assertThat(pattern(cut(170, 190).at("/injury", zone.formatted(20)))).startsWith("simple");
  }

  @Test
  void a_zone_and_a_pattern_that_are_not_told_are_asked_for() {
    CaseText text = cut(170, 190).at("/injury", "{pattern: null, zone: null}");
    assertThat(pattern(text)).isEqualTo("unknown, ask injury/zone and injury/pattern");
    CaseText told = cut(170, 190).at("/injury", "{zone: null}");
    assertThat(pattern(told)).isEqualTo("multifragmentary or simple fact, ask injury/zone");
  }

  @Test
  void a_resection_of_nothing_leaves_the_pattern_as_it_was() {
    CaseText text = cut(150, 210).at("/operations/0", "{resection: []}");
    assertThat(pattern(text)).isEqualTo("multifragmentary fact");
  }

  @Test
  void the_gap_left_has_to_be_spanned_but_is_no_longer_than_what_was_cut_out() {
    String gap = "/operations/0/reduction";
    assertThat(Taken.of("zone-length", cut(150, 210).at(gap, "{gapNearMm: 40, gapFarMm: 40}")))
        .startsWith("40 ");
    assertThat(Taken.of("zone-length", cut(150, 210).at(gap, "{gapNearMm: 70, gapFarMm: 70}")))
        .startsWith("60 ");
  }

  @Test
  void ends_are_cut_back_where_the_operation_resects_bone() {
    assertThat(Taken.of("ends-resected", cut(150, 210))).isEqualTo("no fact");
    CaseText revised = cut(150, 210).redone("plate-bent");
    assertThat(Taken.of("ends-resected", revised)).isEqualTo("yes fact");
    assertThat(Taken.of("ends-resected", revised.at("/plans/0/stages/0", "{resection: []}")))
        .isEqualTo("no fact");
    assertThat(Taken.of("ends-resected", revised.at("/plans/0/stages/0", "{resection: null}")))
        .isEqualTo("no fact");
  }
}
