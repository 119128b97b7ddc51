package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineHandlingTest {

  private static final String LAG_SCREW = "{fixation: [{id: 'lag-1', kind: 'lag-screw'}]}";
  private static final String ASK = ", ask op-1/compression/method";

  private static CaseText method(String method) {
    return CaseText.plated().at("/operations/0", "{compression: {method: '" + method + "'}}");
  }

  @ParameterizedTest
  @CsvSource({
    "eccentric-screws, compressed",
    "tension-device, compressed",
    "nail-backslap, compressed",
    "fixator, compressed",
    "lag-screw, neutralised",
    "none, bridged",
    "clamp, bridged"
  })
  void follows_the_method_of_compression(String method, String word) {
    assertThat(Taken.of("line-handling", method(method))).isEqualTo(word + " fact");
  }

  @ParameterizedTest
  @CsvSource({"none, neutralised", "clamp, neutralised", "tension-device, compressed"})
  void a_lag_screw_neutralises_a_line_that_nothing_else_compresses(String method, String word) {
    assertThat(Taken.of("line-handling", method(method).at("/operations/0", LAG_SCREW)))
        .isEqualTo(word + " fact");
  }

  @Nested
  class NotRecorded {

    private static CaseText concept(String concept) {
      return CaseText.plated().at("/operations/0", "{compression: null, concept: " + concept + "}");
    }

    @Test
    void a_lag_screw_tells() {
      assertThat(Taken.of("line-handling", concept("null").at("/operations/0", LAG_SCREW)))
          .isEqualTo("neutralised fact");
    }

    @Test
    void relative_stability_means_bridged() {
      assertThat(Taken.of("line-handling", concept("'relative'"))).isEqualTo("bridged assumed");
    }

    @Test
    void absolute_stability_without_a_lag_screw_means_compressed() {
      assertThat(Taken.of("line-handling", concept("'absolute'"))).isEqualTo("compressed assumed");
    }

    @Test
    void absolute_stability_by_unrecorded_metal_means_either_of_the_others() {
      assertThat(
              Taken.of(
                  "line-handling", concept("'absolute'").at("/operations/0", "{fixation: null}")))
          .isEqualTo("compressed or neutralised assumed" + ASK);
    }

    @Test
    void without_a_concept_the_past_is_unknown_but_for_a_lag_screw_that_is_not_there() {
      assertThat(Taken.of("line-handling", concept("null")))
          .isEqualTo("bridged or compressed fact" + ASK);
      assertThat(Taken.of("line-handling", concept("null").at("/operations/0", "{fixation: null}")))
          .isEqualTo("unknown" + ASK);
    }

    @Test
    void a_plan_is_closed_and_compresses_nothing_that_it_does_not_name() {
      CaseText text =
          CaseText.plated().redone("plate-bent").at("/plans/0/stages/0", "{compression: null}");
      assertThat(Taken.of("line-handling", text)).isEqualTo("bridged fact");
    }
  }
}
