package org.bonewright.measures.nail;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NailLockedTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          locking: 'static'                                       | yes fact
          locking: 'dynamic'                                      | yes fact
          locking: 'unlocked'                                     | no fact
          locking: null                                           | yes fact
          locking: null, bolts: []                                | no fact
          locking: null, bolts: null                              | unknown, ask op-1/fixation/nail-1/locking
          locking: 'static', bolts: null                          | yes fact
          """)
  void follows_the_mode_of_locking_or_the_bolts(String nail, String reads) {
    CaseText text = CaseText.nailed().at("/operations/0/fixation/0", "{" + nail + "}");
    assertThat(Taken.of("nail-locked", text)).isEqualTo(reads);
  }

  @Test
  void no_nail_is_not_locked_and_an_unknown_implant_may_be() {
    assertThat(Taken.of("nail-locked", CaseText.plated())).isEqualTo("no fact");
    assertThat(Taken.of("nail-locked", CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
