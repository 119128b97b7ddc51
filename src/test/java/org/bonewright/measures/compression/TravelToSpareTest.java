package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A narrow large-fragment plate: 1 mm for each eccentric screw. */
class TravelToSpareTest {

  private static final String ID = "compression-travel-spare";

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # 2 x 1 - 1
          screws: 2, gapBeforeMm: 1                                  | 1 assumed
          # four screws are the most that count: 4 x 1 - 1
          screws: 6, gapBeforeMm: 1                                  | 3 assumed
          # one to four: 1 - 1 to 4 - 1
          gapBeforeMm: 1                                             | 0–3 assumed, ask op-1/compression/screws
          # 1 - 1 to 2 - 0.5
          screws: {min: 1, max: 2}, gapBeforeMm: {min: 0.5, max: 1}  | 0–1.5 assumed, ask op-1/compression/screws and op-1/compression/gapBeforeMm
          # 20 - 12, 20 - 21
          method: 'tension-device', gapBeforeMm: 12                  | 8 assumed
          method: 'tension-device', gapBeforeMm: 21                  | -1 assumed
          screws: 2                                                  | unknown, ask op-1/compression/gapBeforeMm
          method: 'clamp', gapBeforeMm: 1                            | none: nothing pulls along a plate
          """)
  void is_travel_less_gap(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/compression", "{" + stated + "}");
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # 2 x 0.8 - 1
          family: 'small-fragment-locking'   | 0.6 assumed
          # 2 x 0.8 - 1 to 2 x 1 - 1
          family: null                       | 0.6–1 assumed, ask op-1/fixation/plate-1/family
          """)
  void depends_on_the_size_of_the_plate(String plate, String reads) {
    CaseText text =
        CaseText.plated()
            .at("/operations/0/compression", "{screws: 2, gapBeforeMm: 1}")
            .at("/operations/0/fixation/0", "{" + plate + "}");
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void asks_for_the_method_where_it_may_be_screws_or_another() {
    assertThat(Taken.of(ID, CaseText.plated().at("/operations/0", "{compression: null}")))
        .isEqualTo("unknown, ask op-1/compression/method");
  }
}
