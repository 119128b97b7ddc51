package org.bonewright.measures.nail;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The line runs from 179 to 181 mm; the bolts lie at 40, 60, 310 and 330 mm. */
class BoltNumberTest {

  private static final String ASK = "unknown, ask op-1/fixation/nail-1/bolts";

  private static CaseText bolts(String bolts) {
    return CaseText.nailed().at("/operations/0/fixation/0", "{bolts: " + bolts + "}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          [{end: 'near'}, {end: 'near'}, {end: 'far'}, {end: 'far'}]   | 2 fact
          [{end: 'near'}, {end: 'near'}, {end: 'far'}]                 | 1 fact
          [{end: 'near'}, {end: 'near'}]                               | 0 fact
          []                                                           | 0 fact
          null                                                         | unknown, ask op-1/fixation/nail-1/bolts
          """)
  void the_end_with_fewer_bolts_counts(String bolts, String reads) {
    assertThat(Taken.of("bolts-fewer-end", bolts(bolts))).isEqualTo(reads);
  }

  @Test
  void the_number_of_the_record_counts_where_it_names_no_bolt() {
    CaseText numbered =
        CaseText.nailed()
            .at(
                "/operations/0/fixation/0",
                "{bolts: null, locking: null, fewestBolts: {min: 0, max: 1}}");
    assertThat(Taken.of("bolts-fewer-end", numbered)).startsWith("0–1 fact");
    assertThat(Taken.of("nail-locked", numbered)).isEqualTo("yes fact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # 179 - 60 = 119; 310 - 181 = 129
          [{end: 'near', atMm: 60}, {end: 'far', atMm: 310}]              | 119 fact
          [{end: 'near', atMm: 40}, {end: 'far', atMm: 310}]              | 129 fact
          [{end: 'near', atMm: 180}]                                      | 0 fact
          [{end: 'near', atMm: {min: 100, max: 110}}]                     | 69–79 fact, ask op-1/fixation/nail-1/bolts and injury/zone
          [{end: 'near', atMm: 60}, {end: 'far'}]                         | unknown, ask op-1/fixation/nail-1/bolts
          []                                                              | none: no bolt
          null                                                            | unknown, ask op-1/fixation/nail-1/bolts
          """)
  void the_bolt_nearest_the_edge_of_the_zone_counts(String bolts, String reads) {
    assertThat(Taken.of("bolt-to-fracture", bolts(bolts))).isEqualTo(reads);
  }

  @Test
  void the_distance_needs_the_level_of_the_zone() {
    assertThat(Taken.of("bolt-to-fracture", CaseText.nailed().at("/injury", "{zone: null}")))
        .isEqualTo("unknown, ask injury/zone");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          [{end: 'near', diameterMm: 5}, {end: 'far', diameterMm: 4}]                      | 4 fact
          [{end: 'near', diameterMm: 5}, {end: 'far', diameterMm: {min: 4, max: 5}}]       | 4–5 fact, ask op-1/fixation/nail-1/bolts
          [{end: 'near', diameterMm: 5}, {end: 'far'}]                                     | unknown, ask op-1/fixation/nail-1/bolts
          []                                                                               | none: no bolt
          """)
  void the_thinnest_bolt_counts(String bolts, String reads) {
    assertThat(Taken.of("bolt-diameter", bolts(bolts))).isEqualTo(reads);
  }

  @ParameterizedTest
  @ValueSource(strings = {"bolts-fewer-end", "bolt-to-fracture", "bolt-diameter"})
  void a_plate_has_none_and_an_unknown_implant_may_have_them(String measure) {
    assertThat(Taken.of(measure, CaseText.plated())).isEqualTo("none: no nail in place");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of(measure, bolts("null"))).isEqualTo(ASK);
  }
}
