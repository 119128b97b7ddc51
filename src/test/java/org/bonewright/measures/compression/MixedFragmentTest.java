package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line lies between holes 5 and 6. */
class MixedFragmentTest {

  private static final String ID = "mixed-fragment";
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
          {at: [1], type: 'locking'}, {at: [3], type: 'cortical'}, {at: [8], type: 'locking'} | yes fact
          {at: [1], type: 'cortical'}, {at: [8], type: 'cancellous'}, {at: [10], type: 'locking'} | yes fact
          {at: [1, 3], type: 'cortical'}, {at: [8, 10], type: 'locking'}                   | no fact
          {at: [1, 3, 8, 10], type: 'locking'}                                             | no fact
          """)
  void looks_at_each_fragment(String rows, String reads) {
    assertThat(Taken.of(ID, screws(rows))).isEqualTo(reads);
  }

  @Test
  void the_place_is_asked_for_only_where_there_are_two_kinds() {
    CaseText both = screws("{at: [1], type: 'locking'}, {at: [10], type: 'cortical'}");
    assertThat(Taken.of(ID, both.at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(ID, CaseText.plated().at(PLATE, "{place: null}"))).isEqualTo("no fact");
  }

  @Test
  void what_holds_the_bone_must_be_known() {
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("no fact");
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
