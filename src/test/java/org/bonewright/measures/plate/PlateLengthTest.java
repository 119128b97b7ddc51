package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlateLengthTest {

  private static final String ASK = "ask op-1/fixation/plate-1/lengthMm";

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          lengthMm: 158                                             | 158 fact
          lengthMm: {min: 150, max: 160}                            | 150–160 fact, ask op-1/fixation/plate-1/lengthMm
          # 9 x 16 + 2 x 8 = 160, a tenth either way
          lengthMm: null                                            | 144–176 assumed, ask op-1/fixation/plate-1/lengthMm
          # 7 x 13 + 2 x 7 = 105
          lengthMm: null, family: 'small-fragment-locking', holes: 8 | 94.5–115.5 assumed, ask op-1/fixation/plate-1/lengthMm
          lengthMm: null, family: null                              | unknown, ask op-1/fixation/plate-1/lengthMm
          lengthMm: null, holes: null                               | unknown, ask op-1/fixation/plate-1/lengthMm
          """)
  void is_as_stated_or_from_the_family(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/fixation/0", "{" + stated + "}");
    assertThat(Taken.of("plate-length", text)).isEqualTo(reads);
  }

  @Test
  void of_two_plates_the_longer_counts() {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0",
                "{fixation: [{id: 'a', kind: 'plate', lengthMm: 90},"
                    + " {id: 'b', kind: 'plate', lengthMm: 140}]}");
    assertThat(Taken.of("plate-length", text)).isEqualTo("140 fact");
  }

  @Test
  void a_nail_has_none_and_an_unknown_implant_may_have_one() {
    assertThat(Taken.of("plate-length", CaseText.nailed())).isEqualTo("none: no plate in place");
    assertThat(Taken.of("plate-length", CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void a_plan_asks_in_its_stage() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/plans/0/stages/0/fixation/0", "{lengthMm: null}");
    assertThat(Taken.of("plate-length", text))
        .isEqualTo("144–176 assumed, " + ASK.replace("op-1", "plan-a/stage-1"));
    assertThat(Taken.of("plate-length", text, "op-1")).isEqualTo("160 fact");
  }
}
