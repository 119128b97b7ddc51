package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line lies between holes 5 and 6. */
class LockedBothSidesTest {

  private static final String ID = "locked-both-sides";
  private static final String PLATE = "/operations/0/fixation/0";

  private static CaseText screws(String rows) {
    return CaseText.plated().at("/operations/0/fixation/0", "{screws: [" + rows + "]}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {at: [1, 3, 8, 10], type: 'locking'}                                             | yes fact
          {at: [1], type: 'locking'}, {at: [3, 8], type: 'cortical'}, {at: [10], type: 'locking'} | yes fact
          {at: [1, 3], type: 'locking'}, {at: [8, 10], type: 'cortical'}                   | no fact
          {at: [1, 3, 8, 10], type: 'cortical'}                                            | no fact
          """)
  void looks_at_both_fragments(String rows, String reads) {
    assertThat(Taken.of(ID, screws(rows))).isEqualTo(reads);
  }

  @Test
  void what_is_missing_is_asked_for() {
    CaseText locked = screws("{at: [1, 10], type: 'locking'}");
    assertThat(Taken.of(ID, locked.at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(ID, locked.at(PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void conventional_screws_alone_need_no_place_and_a_nail_no_screws() {
    assertThat(Taken.of(ID, CaseText.plated().at(PLATE, "{place: null}"))).isEqualTo("no fact");
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("no fact");
  }
}
