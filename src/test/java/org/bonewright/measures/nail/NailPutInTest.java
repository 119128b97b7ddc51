package org.bonewright.measures.nail;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NailPutInTest {

  @Test
  void is_yes_for_the_operation_that_puts_it_in_only() {
    assertThat(Taken.of("nail-put-in", CaseText.nailed())).isEqualTo("yes fact");
    assertThat(Taken.of("nail-put-in", CaseText.plated())).isEqualTo("no fact");
    assertThat(Taken.of("nail-put-in", CaseText.bare()))
        .isEqualTo("no or yes fact, ask op-1/fixation");
    CaseText kept =
        CaseText.nailed()
            .redone("bolt-broken")
            .at("/plans/0/stages/0", "{fixation: [], removed: []}");
    assertThat(Taken.of("nail-put-in", kept)).isEqualTo("no fact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          locking: 'dynamic'                               | dynamic fact
          locking: null, bolts: []                         | unlocked fact
          locking: null, bolts: [{end: 'near'}]            | dynamic fact
          locking: null                                    | dynamic or static fact, ask op-1/fixation/nail-1/locking
          locking: null, bolts: null                       | unknown, ask op-1/fixation/nail-1/locking
          """)
  void locking_is_as_stated_or_as_the_bolts_leave_it(String nail, String reads) {
    CaseText text = CaseText.nailed().at("/operations/0/fixation/0", "{" + nail + "}");
    assertThat(Taken.of("nail-locking", text)).isEqualTo(reads);
  }

  @Test
  void a_plate_is_locked_in_no_such_way() {
    assertThat(Taken.of("nail-locking", CaseText.plated())).isEqualTo("none: no nail in place");
    assertThat(Taken.of("nail-locking", CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void a_nail_of_which_bolts_came_out_since_is_no_longer_locked_as_was_stated() {
    assertThat(Taken.of("nail-locking", without("[3, 4]"))).isEqualTo("dynamic fact");
    assertThat(Taken.of("nail-locking", without("[1, 2, 3, 4]"))).isEqualTo("unlocked fact");
    assertThat(Taken.of("nail-locking", without("[4]"))).startsWith("dynamic or static");
    assertThat(Taken.of("nail-locked", without("[1, 2, 3, 4]"))).isEqualTo("no fact");
    assertThat(Taken.of("nail-locking", CaseText.nailed())).isEqualTo("static fact");
  }

  private static CaseText without(String bolts) {
    return CaseText.nailed()
        .with(
            "{plans: [{id: 'plan-a', stages: [{id: 'a-1', fixation: [],"
                + " removed: [{of: 'op-1/nail-1', bolts: "
                + bolts
                + "}]}]}]}");
  }
}
