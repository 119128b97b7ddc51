package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoosenedBeforeTest {

  private static final String LOOSE = "screws-loosened-before";

  private static CaseText state(String type, String state, String day) {
    return CaseText.plated()
        .at(
            "/operations/0/fixation/0",
            "{screws: [{at: [1, 5, 6, 10], type: '%s', state: '%s', stateDay: %s}]}"
                .formatted(type, state, day))
        .redone("no-union-metal-intact");
  }

  @Test
  void screws_pulled_out_in_sequence_did() {
    CaseText text = CaseText.plated().redone("screws-pulled-out-in-sequence");
    assertThat(Taken.of(LOOSE, text)).isEqualTo("yes fact");
    assertThat(Taken.of(LOOSE, text, "op-1")).isEqualTo("no fact");
  }

  @Test
  void screws_pulled_out_in_an_order_not_told_may_have() {
    CaseText text = CaseText.plated().redone("screws-pulled-out");
    assertThat(Taken.of(LOOSE, text)).isEqualTo("no or yes fact, ask op-1/outcome/mode");
  }

  @ParameterizedTest(name = "{0} screw {1}: {2}")
  @CsvSource({
    "cortical, loose, yes fact",
    "cancellous, backed-out, yes fact",
    "cortical, broken, no fact",
    "locking, loose, no fact"
  })
  void conventional_screws_seen_loose_did(String type, String state, String reads) {
    assertThat(Taken.of(LOOSE, state(type, state, "100"))).isEqualTo(reads);
  }

  @Test
  void an_earlier_plate_that_failed_nobody_says_how_leaves_it_open() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/operations/0/outcome", "{mode: null}");
    assertThat(Taken.of(LOOSE, text)).isEqualTo("no or yes fact, ask op-1/outcome/mode");
    CaseText united =
        CaseText.plated()
            .redone("plate-bent")
            .at("/operations/0", "{outcome: {result: 'united', mode: null}}");
    assertThat(Taken.of(LOOSE, united)).isEqualTo("no fact");
  }

  @Test
  void what_was_seen_after_the_operation_is_not_known_to_it() {
    String second = "},{\"id\":\"op-2\",\"day\":%d,\"fixation\":[]}],\"plans\"";
    String text = state("cortical", "loose", "100").toString();
    CaseText earlier = CaseText.of(text.replace("}],\"plans\"", second.formatted(99)));
    CaseText later = CaseText.of(text.replace("}],\"plans\"", second.formatted(100)));
    assertThat(Taken.of(LOOSE, earlier, "op-2")).isEqualTo("no fact");
    assertThat(Taken.of(LOOSE, later, "op-2")).isEqualTo("yes fact");
  }

  @Test
  void an_earlier_nail_did_not() {
    CaseText text =
        CaseText.nailed().redone("bolt-broken").at("/operations/0/outcome", "{mode: null}");
    assertThat(Taken.of(LOOSE, text)).isEqualTo("no fact");
  }
}
