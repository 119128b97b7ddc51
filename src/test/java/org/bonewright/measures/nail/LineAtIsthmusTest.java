package org.bonewright.measures.nail;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineAtIsthmusTest {

  @ParameterizedTest(name = "bone of 360 mm, {0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # the middle third runs from 120 to 240
          fromMm: 179, toMm: 181                                            | yes fact
          fromMm: 120, toMm: 240                                            | yes fact
          fromMm: 119, toMm: 200                                            | no fact
          fromMm: 200, toMm: 241                                            | no fact
          fromMm: 60, toMm: 80                                              | no fact
          fromMm: {min: 110, max: 125}, toMm: {min: 140, max: 150}          | no or yes fact, ask injury/zone
          fromMm: 200, toMm: {min: 235, max: 245}                           | no or yes fact, ask injury/zone
          fromMm: null, toMm: null, lengthMm: 20                            | unknown, ask injury/zone
          fromMm: 179, toMm: null                                           | unknown, ask injury/zone
          """)
  void the_whole_zone_must_lie_in_the_middle_third(String zone, String reads) {
    CaseText text = CaseText.nailed().at("/injury/zone", "{" + zone + "}");
    assertThat(Taken.of("line-at-isthmus", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "bone of 345 to 405 mm, {0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # the middle third begins somewhere from 115 to 135 and ends somewhere from 230 to 270
          fromMm: 179, toMm: 181    | yes fact
          fromMm: 120, toMm: 130    | no or yes assumed, ask bone/lengthMm
          fromMm: 100, toMm: 110    | no fact
          """)
  void the_usual_length_of_the_bone_serves_where_none_is_stated(String zone, String reads) {
    CaseText text =
        CaseText.nailed().at("/bone", "{lengthMm: null}").at("/injury/zone", "{" + zone + "}");
    assertThat(Taken.of("line-at-isthmus", text)).isEqualTo(reads);
  }
}
