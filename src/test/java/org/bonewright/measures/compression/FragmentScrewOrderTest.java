package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line lies between holes 5 and 6. */
class FragmentScrewOrderTest {

  private static final String ID = "fragment-screw-order";

  private static CaseText screws(String rows) {
    return CaseText.plated().at("/operations/0/fixation/0", "{screws: [" + rows + "]}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # pulled by hole 8, locked at 10
          {at: [8], type: 'cortical', order: 1}, {at: [10], type: 'locking', order: 2} | pulled-first fact
          {at: [8], type: 'cortical', order: 2}, {at: [10], type: 'locking', order: 1} | locked-first fact
          # a locking screw between two conventional ones
          {at: [6], type: 'cortical', order: 1}, {at: [8], type: 'locking', order: 2}, {at: [10], type: 'cortical', order: 3} | locked-first fact
          # the other fragment may be locked earlier
          {at: [1], type: 'locking', order: 1}, {at: [8], type: 'cortical', order: 2}, {at: [10], type: 'locking', order: 3} | pulled-first fact
          {at: [8], type: 'cortical', order: 1}, {at: [10], type: 'locking', order: 1} | unknown, ask op-1/fixation/plate-1/screws/order
          {at: [8], type: 'cortical', order: 1}, {at: [10], type: 'locking'}           | unknown, ask op-1/fixation/plate-1/screws/order
          # one fragment is enough for a fault
          {at: [1], type: 'cortical'}, {at: [3], type: 'locking'}, {at: [8], type: 'cortical', order: 2}, {at: [10], type: 'locking', order: 1} | locked-first fact
          {at: [1, 3], type: 'cortical'}, {at: [8, 10], type: 'locking'}               | none: no fragment holds both kinds of screw
          """)
  void is_read_fragment_by_fragment(String rows, String reads) {
    assertThat(Taken.of(ID, screws(rows))).isEqualTo(reads);
  }

  @Test
  void the_place_of_the_plate_is_asked_for() {
    CaseText both = screws("{at: [1], type: 'locking'}, {at: [10], type: 'cortical'}");
    assertThat(Taken.of(ID, both.at("/operations/0/fixation/0", "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
  }
}
