package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConventionalStrippedTest {

  private static final String ID = "conventional-screw-stripped";

  private static CaseText screws(String rows) {
    return CaseText.plated().at("/operations/0/fixation/0", "{screws: [" + rows + "]}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {at: [1, 3, 8], type: 'cortical'}, {at: [10], type: 'cortical', state: 'stripped'}   | yes fact
          {at: [1, 3, 8], type: 'cortical'}, {at: [10], type: 'locking', state: 'stripped'}    | no fact
          {at: [1, 3, 8, 10], type: 'cortical', state: 'loose'}                                | no fact
          {at: [1, 3, 8, 10], type: 'cortical'}                                                | no fact
          """)
  void is_as_recorded(String rows, String reads) {
    assertThat(Taken.of(ID, screws(rows))).isEqualTo(reads);
  }

  @Test
  void the_screws_must_be_known() {
    CaseText text = CaseText.plated().at("/operations/0/fixation/0", "{screws: null}");
    assertThat(Taken.of(ID, text)).isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("no fact");
  }
}
