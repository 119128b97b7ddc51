package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The zone runs from 179 to 181 mm. */
class ShorteningToCloseTest {

  private static final String ID = "shortening-to-close";

  private static CaseText plan(String defect, String cuts) {
    return CaseText.plated()
        .redone("plate-bent")
        .with("{findings: [{day: 190, defectMm: " + defect + "}]}")
        .at("/plans/0/stages/0", "{resection: [" + cuts + "]}");
  }

  @ParameterizedTest(name = "{0} and {1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          4                 | ""                                                    | 4 fact
          0                 | {fromMm: 170, toMm: 175}                              | 5 fact
          # beside the zone: anything from the larger to the sum, 10 + 4
          4                 | {fromMm: 165, toMm: 175}                              | 10–14 fact, ask findings/zone
          # with the whole zone: what is missing lies within
          4                 | {fromMm: 175, toMm: 185}                              | 10 fact
          {min: 3, max: 6}  | {fromMm: 175, toMm: 185}                              | 10 fact
          {min: 3, max: 6}  | ""                                                    | 3–6 fact, ask findings/defectMm
          # 185 - 176 to 185 - 174
          0                 | {fromMm: {min: 174, max: 176}, toMm: 185}             | 9–11 fact, ask plan-a/stage-1/resection
          # two cuts either side: 5 + 5, and 4 missing between
          4                 | {fromMm: 170, toMm: 175}, {fromMm: 185, toMm: 190}    | 10–14 fact, ask findings/zone
          """)
  void adds_what_is_missing_to_what_is_cut(String defect, String cuts, String reads) {
    assertThat(Taken.of(ID, plan(defect, cuts))).isEqualTo(reads);
  }

  @Test
  void every_stage_of_a_plan_counts() {
    // 5 + 3
    CaseText text =
        plan("0", "")
            .at(
                "/plans/0",
                "{stages: [{id: 'stage-1', resection: [{fromMm: 170, toMm: 175}]},"
                    + " {id: 'stage-2', resection: [{fromMm: 185, toMm: 188}]}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("8 fact");
  }

  @Test
  void what_is_missing_is_asked_for() {
    assertThat(Taken.of(ID, CaseText.plated().redone("plate-bent")))
        .isEqualTo("unknown, ask findings/defectMm");
    assertThat(Taken.of(ID, CaseText.plated().with("{findings: [{day: 1, defectMm: 0}]}")))
        .isEqualTo("unknown, ask op-1/resection");
  }
}
