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

  private static CaseText twoPlates(String second) {
    return CaseText.plated()
        .at(
            "/operations/0",
            "{fixation: [{kind: 'plate', id: 'plate-1', holes: 10, screws:"
                + " [{at: [1, 3, 8, 10], type: 'cortical'}]},"
                + " {kind: 'plate', id: 'plate-2', holes: 6"
                + second
                + "}]}");
  }

  @Test
  void the_screws_of_every_plate_must_be_known_but_one_that_stripped_is_enough() {
    assertThat(Taken.of(ID, twoPlates(""))).isEqualTo("unknown, ask op-1/fixation/plate-2/screws");
    assertThat(Taken.of(ID, twoPlates(", screws: [{at: [1, 6], type: 'cortical'}]")))
        .isEqualTo("no fact");
    assertThat(
            Taken.of(
                ID, twoPlates(", screws: [{at: [1, 6], type: 'cortical', state: 'stripped'}]")))
        .isEqualTo("yes fact");
  }
}
