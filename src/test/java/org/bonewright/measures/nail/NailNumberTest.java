package org.bonewright.measures.nail;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The nail measures 10 mm, the canal 10 mm, the last reamer 11 mm. */
class NailNumberTest {

  private static CaseText nail(String patch) {
    return CaseText.nailed().at("/operations/0/fixation/0", "{" + patch + "}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          outerMm: 10                  | 10 fact
          outerMm: {min: 9, max: 10}   | 9–10 fact, ask op-1/fixation/nail-1/outerMm
          outerMm: null                | unknown, ask op-1/fixation/nail-1/outerMm
          """)
  void the_diameter_is_as_stated(String nail, String reads) {
    assertThat(Taken.of("nail-diameter", nail(nail))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # 10 / 11: the reamer is wider than the canal
          reamedMm: 11                                    | 0.909 fact
          # 10 / 10: the canal is wider than the reamer, or was not reamed
          reamedMm: 9.5                                   | 1 fact
          reamedMm: 0                                     | 1 fact
          reamedMm: null                                  | 1 fact
          # 9 / 11 to 10 / 11
          outerMm: {min: 9, max: 10}                      | 0.818–0.909 fact, ask op-1/fixation/nail-1/outerMm
          outerMm: null                                   | unknown, ask op-1/fixation/nail-1/outerMm
          """)
  void the_fill_is_nail_over_canal_or_reamer(String nail, String reads) {
    assertThat(Taken.of("nail-fill", nail(nail))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "reamed {0} mm: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # T1, man: canal 10 to 12; 10 / 12 to 10 / 10
          null | 0.833–1 assumed, ask bone/sections
          # the reamer makes it at least 11
          11   | 0.833–0.909 assumed, ask bone/sections
          # and 12.5 whatever it was
          12.5 | 0.8 fact
          """)
  void the_usual_canal_serves_where_none_is_measured(String reamed, String reads) {
    CaseText text = nail("reamedMm: " + reamed).at("/bone", "{sections: null}");
    assertThat(Taken.of("nail-fill", text)).isEqualTo(reads);
  }

  @Test
  void the_fill_of_a_closed_canal_is_unknown_until_it_is_reamed() {
    CaseText closed =
        CaseText.nailed().at("/bone", "{sections: [{atMm: 180, outerMm: 24, canalMm: 0}]}");
    assertThat(Taken.of("nail-fill", closed)).isEqualTo("0.909 fact");
    assertThat(Taken.of("nail-fill", closed.at("/operations/0/fixation/0", "{reamedMm: 0}")))
        .isEqualTo("unknown, ask bone/sections");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          reamedMm: 11.5               | 1.5 fact
          reamedMm: 9.5                | -0.5 fact
          reamedMm: {min: 11, max: 12} | 1–2 fact, ask op-1/fixation/nail-1/reamedMm
          outerMm: {min: 9, max: 10}   | 1–2 fact, ask op-1/fixation/nail-1/outerMm
          reamedMm: null               | unknown, ask op-1/fixation/nail-1/reamedMm
          reamedMm: 0                  | none: not reamed
          """)
  void reamed_over_is_reamer_less_nail(String nail, String reads) {
    assertThat(Taken.of("reamed-over-nail", nail(nail))).isEqualTo(reads);
  }

  @ParameterizedTest
  @ValueSource(strings = {"nail-diameter", "nail-fill", "reamed-over-nail"})
  void a_plate_has_none_and_an_unknown_implant_may_have_one(String measure) {
    assertThat(Taken.of(measure, CaseText.plated())).isEqualTo("none: no nail in place");
    assertThat(Taken.of(measure, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }
}
