package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DefectGraftTest {

  private static CaseText gap20(String change) {
    return CaseText.plated()
        .at("/operations/0", change)
        .at("/operations/0/reduction", "{gapNearMm: 20, gapFarMm: 20, contactPercent: 0}");
  }

  private static String graft(CaseText text) {
    return Taken.of("defect-graft", text);
  }

  /** 80 % of the 10.857 mL needed for 20 mm of a bone of 24 mm are 8.69 mL. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          []                                                           | nothing fact
          [{kind: 'substitute', volumeMl: 30}]                         | chips fact
          [{kind: 'decortication'}]                                    | chips fact
          [{kind: 'autograft-cancellous', volumeMl: 8}]                | autograft fact
          [{kind: 'autograft-cancellous', volumeMl: 9}]                | large fact
          [{kind: 'autograft-cancellous'}]                             | autograft or large fact, ask op-1/biology/volumeMl
          [{kind: 'autograft-tricortical'}]                            | large fact
          [{kind: 'vascularised-bone'}]                                | spanning fact
          [{kind: 'membrane'}]                                         | spanning fact
          [{kind: 'spacer'}]                                           | later fact
          """)
  void is_classed_by_what_it_can_bridge(String biology, String reads) {
    assertThat(graft(gap20("{biology: " + biology + "}"))).isEqualTo(reads);
  }

  @Test
  void a_strut_spans_with_autograft_and_counts_as_large_alone() {
    String strut =
        "fixation: [{id: 's', kind: 'strut', where: 'onlay', origin: 'allograft', fromMm: 140,"
            + " toMm: 220}]";
    assertThat(graft(gap20("{" + strut + "}"))).isEqualTo("large fact");
    assertThat(graft(gap20("{biology: [{kind: 'reamer-graft'}], " + strut + "}")))
        .isEqualTo("spanning fact");
  }

  @Test
  void transport_spans() {
    assertThat(graft(gap20("{transport: {mmPerDay: 1}}"))).isEqualTo("spanning fact");
  }

  @Test
  void a_spacer_spans_once_graft_follows_in_the_plan() {
    CaseText plan = gap20("{biology: [{kind: 'spacer'}]}").redone("plate-bent");
    assertThat(graft(plan)).isEqualTo("nothing fact");
    String second = "{id: 'stage-2', fixation: [], biology: [{kind: 'reamer-graft'}]}";
    String first = plan.tree().at("/plans/0/stages/0").toString();
    assertThat(graft(plan.at("/plans/0", "{stages: [" + first + ", " + second + "]}")))
        .isEqualTo("spanning fact");
  }

  @Test
  void a_stage_is_left_for_later() {
    assertThat(graft(gap20("{outcome: {result: 'stage-done', day: 20}}"))).isEqualTo("later fact");
  }

  @Test
  void the_defect_is_in_part_where_half_of_the_bone_meets() {
    CaseText text = CaseText.plated();
    String field = "/operations/0/reduction";
    assertThat(Taken.of("defect-across", text.at(field, "{contactPercent: 50}")))
        .isEqualTo("part fact");
    assertThat(Taken.of("defect-across", text.at(field, "{contactPercent: 49}")))
        .isEqualTo("whole fact");
  }

  @Test
  void what_is_missing_at_the_site_counts_until_the_ends_are_cut_back() {
    CaseText text =
        CaseText.plated()
            .with("{findings: [{day: 1, circumferenceMissingPercent: 40}]}")
            .at("/operations/0", "{resection: []}")
            .at("/operations/0/reduction", "{contactPercent: 0}");
    assertThat(Taken.of("defect-across", text)).isEqualTo("part fact");
    assertThat(
            Taken.of(
                "defect-across",
                text.at("/operations/0", "{resection: [{fromMm: 170, toMm: 190}]}")))
        .isEqualTo("whole fact");
  }
}
