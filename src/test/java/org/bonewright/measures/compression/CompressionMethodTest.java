package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompressionMethodTest {

  private static final String ID = "compression-method";
  private static final String LAG_SCREW = "{fixation: [{id: 'lag-1', kind: 'lag-screw'}]}";
  private static final String ASK = ", ask op-1/compression/method";

  private static CaseText method(String method) {
    return CaseText.plated().at("/operations/0", "{compression: {method: '" + method + "'}}");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "none",
        "lag-screw",
        "eccentric-screws",
        "tension-device",
        "clamp",
        "nail-backslap",
        "fixator"
      })
  void is_as_stated(String method) {
    assertThat(Taken.of(ID, method(method))).isEqualTo(method + " fact");
  }

  @ParameterizedTest
  @CsvSource({"none, lag-screw", "clamp, lag-screw", "tension-device, tension-device"})
  void a_lag_screw_in_place_presses_where_nothing_lasting_does(String method, String word) {
    assertThat(Taken.of(ID, method(method).at("/operations/0", LAG_SCREW)))
        .isEqualTo(word + " fact");
  }

  @Test
  void is_read_from_the_concept_where_it_is_not_recorded() {
    CaseText text = CaseText.plated().at("/operations/0", "{compression: null, fixation: null}");
    assertThat(Taken.of(ID, text))
        .isEqualTo(
            "eccentric-screws or fixator or lag-screw or nail-backslap or tension-device assumed"
                + ASK);
    assertThat(Taken.of(ID, text.at("/operations/0", "{concept: 'relative'}")))
        .isEqualTo("none assumed");
    assertThat(Taken.of(ID, text.at("/operations/0", "{concept: null}")))
        .isEqualTo("unknown" + ASK);
  }

  @Test
  void is_no_lag_screw_where_what_was_put_in_is_told_without_one() {
    CaseText text = CaseText.plated().at("/operations/0", "{compression: null}");
    assertThat(Taken.of(ID, text))
        .isEqualTo("eccentric-screws or fixator or nail-backslap or tension-device assumed" + ASK);
    assertThat(Taken.of(ID, text.at("/operations/0", "{concept: null}")))
        .isEqualTo(
            "clamp or eccentric-screws or fixator or nail-backslap or none or tension-device fact"
                + ASK);
    assertThat(Taken.of(ID, text.at("/operations/0", LAG_SCREW))).isEqualTo("lag-screw fact");
  }

  @Test
  void what_a_plan_does_not_name_is_not_planned() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/plans/0/stages/0", "{compression: null}");
    assertThat(Taken.of(ID, text)).isEqualTo("none fact");
  }
}
