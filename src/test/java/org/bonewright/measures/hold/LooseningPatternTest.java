package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LooseningPatternTest {

  private static final String PATTERN = "loosening-pattern";

  private static CaseText states(String type, String sound, String loose) {
    return CaseText.plated()
        .at(
            "/operations/0/fixation/0",
            ("{screws: [{at: %2$s, type: '%1$s', state: 'sound'},"
                    + " {at: %3$s, type: '%1$s', state: 'backed-out', stateDay: 150}]}")
                .formatted(type, sound, loose))
        .redone("no-union-metal-intact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "screws-pulled-out-in-sequence, in-turn fact",
    "all-screws-lucent, all fact",
    "plate-broken-at-empty-hole, no fact",
    "plate-broken, no fact",
    "plate-pulled-off-as-block, no fact",
    "screws-pulled-out, 'in-turn or no fact, ask op-1/outcome/mode'"
  })
  void the_mode_tells_it(String mode, String reads) {
    assertThat(Taken.of(PATTERN, CaseText.plated().redone(mode))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}, sound {1}, loose {2}: {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cortical | [1, 3, 5, 6]  | [8, 10]           | in-turn fact
          cortical | [5, 6, 8, 10] | [1, 3]            | in-turn fact
          # the end screw holds, or its neighbour does
          cortical | [1, 3, 5, 10] | [6, 8]            | no fact
          cortical | [3, 5, 6, 8]  | [1, 10]           | no fact
          cortical | []            | [1, 5, 6, 10]     | all fact
          cortical | []            | [1, 10]           | in-turn fact
          locking  | [1, 3, 5, 6]  | [8, 10]           | no fact
          locking  | []            | [1, 5, 6, 10]     | all fact
          # three are enough to be all
          locking  | []            | [1, 5, 10]        | all fact
          locking  | []            | [1, 10]           | no fact
          """)
  void the_states_of_the_screws_tell_it_where_the_mode_does_not(
      String type, String sound, String loose, String reads) {
    assertThat(Taken.of(PATTERN, states(type, sound, loose))).isEqualTo(reads);
  }

  @Test
  void only_the_kind_of_the_screws_at_the_loose_end_counts() {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0/fixation/0",
                "{screws: [{at: [1, 3, 5], type: 'locking', state: 'sound'},"
                    + " {at: [6, 8, 10], type: 'cortical', state: 'loose'}]}")
            .redone("no-union-metal-intact");
    assertThat(Taken.of(PATTERN, text)).isEqualTo("in-turn fact");
  }

  @Test
  void what_was_seen_only_after_the_next_operation_does_not_count_at_it() {
    String second = "},{\"id\":\"op-2\",\"day\":%d,\"fixation\":[]}],\"plans\"";
    String text = states("cortical", "[1, 3, 5, 6]", "[8, 10]").toString();
    CaseText earlier = CaseText.of(text.replace("}],\"plans\"", second.formatted(149)));
    CaseText later = CaseText.of(text.replace("}],\"plans\"", second.formatted(150)));
    assertThat(Taken.of(PATTERN, earlier, "op-2")).isEqualTo("no fact");
    assertThat(Taken.of(PATTERN, later, "op-2")).isEqualTo("in-turn fact");
  }

  @Test
  void an_operation_that_did_not_fail_left_no_pattern() {
    CaseText text = CaseText.plated().redone("plate-bent");
    for (String result : new String[] {"united", "under-way"}) {
      CaseText ended =
          text.at("/operations/0", "{outcome: {result: '" + result + "', mode: null}}");
      assertThat(Taken.of(PATTERN, ended)).isEqualTo("no fact");
    }
    CaseText open = text.at("/operations/0", "{outcome: {result: 'unknown', mode: null}}");
    assertThat(Taken.of(PATTERN, open)).startsWith("all or in-turn or no fact");
    assertThat(Taken.of(PATTERN, text.at("/operations/0", "{outcome: null}")))
        .startsWith("all or in-turn or no fact");
  }

  @Test
  void screws_pulled_out_in_an_order_not_told_did_so_in_turn_where_they_were_seen_so() {
    CaseText text =
        states("cortical", "[1, 3, 5, 6]", "[8, 10]")
            .at("/operations/0/outcome", "{mode: 'screws-pulled-out'}");
    assertThat(Taken.of(PATTERN, text)).isEqualTo("in-turn fact");
  }

  @Test
  void films_count_too() {
    CaseText text =
        CaseText.plated()
            .redone("no-union-metal-intact")
            .with(
                "{findings: [{day: 190, films: [{view: 'ap',"
                    + " lucentScrews: ['op-1/plate-1 hole 8', 'op-1/plate-1 hole 10']}]}]}");
    assertThat(Taken.of(PATTERN, text)).isEqualTo("in-turn fact");
  }

  @Test
  void a_plate_that_broke_explains_loose_screws() {
    CaseText text =
        states("cortical", "[1, 3, 5, 6]", "[8, 10]")
            .at("/operations/0/outcome", "{mode: 'plate-broken-at-filled-hole'}");
    assertThat(Taken.of(PATTERN, text)).isEqualTo("no fact");
  }

  @Test
  void a_failure_nobody_describes_leaves_it_open() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/operations/0/outcome", "{mode: null}");
    assertThat(Taken.of(PATTERN, text))
        .isEqualTo("all or in-turn or no fact, ask op-1/outcome/mode");
    CaseText nail =
        CaseText.nailed().redone("bolt-broken").at("/operations/0/outcome", "{mode: null}");
    assertThat(Taken.of(PATTERN, nail)).isEqualTo("no fact");
  }

  @Test
  void before_the_first_operation_there_was_none() {
    assertThat(Taken.of(PATTERN, CaseText.plated())).isEqualTo("no fact");
  }
}
