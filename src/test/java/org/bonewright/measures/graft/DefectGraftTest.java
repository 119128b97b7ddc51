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
          # 8 to 9 mL are 74 to 83 %
          [{kind: 'autograft-cancellous', volumeMl: {min: 8, max: 9}}] | autograft or large fact, ask op-1/biology/volumeMl
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
  void a_strut_with_its_own_blood_supply_spans() {
    String strut =
        "{fixation: [{id: 's', kind: 'strut', where: 'onlay', origin: 'autograft-vascularised',"
            + " fromMm: 140, toMm: 220}]}";
    assertThat(graft(gap20(strut))).isEqualTo("spanning fact");
    assertThat(working(gap20(strut))).isEqualTo("vascularised strut");
  }

  private static String working(CaseText text) {
    return Taken.reading("defect-graft", Taken.subject(text.file(), "op-1")).working();
  }

  @Test
  void what_spans_it_is_named() {
    assertThat(working(gap20("{transport: {mmPerDay: 1}}"))).isEqualTo("bone transport");
    assertThat(working(gap20("{biology: [{kind: 'membrane'}]}")))
        .isEqualTo("membrane or living bone");
    // 10.857 mL fill it; 9 mL are 83 %
    assertThat(working(gap20("{biology: [{kind: 'autograft-cancellous', volumeMl: 11}]}")))
        .isEqualTo("cancellous autograft, enough to fill the defect");
    assertThat(working(gap20("{biology: [{kind: 'autograft-cancellous', volumeMl: 9}]}")))
        .isEqualTo("cancellous autograft, 82.9 % of the defect");
  }

  @Test
  void implants_that_are_not_told_may_be_a_strut() {
    assertThat(graft(gap20("{biology: [], fixation: null}")))
        .isEqualTo("unknown, ask op-1/biology");
  }

  @Test
  void autograft_is_large_where_no_defect_is_left() {
    CaseText closed =
        gap20("{biology: [{kind: 'autograft-cancellous', volumeMl: 1}]}")
            .at("/operations/0/reduction", "{gapNearMm: 0, gapFarMm: 0}");
    assertThat(graft(closed)).isEqualTo("large fact");
  }

  @Test
  void an_operation_that_failed_is_no_stage() {
    assertThat(graft(gap20("{outcome: {result: 'failed', day: 20}}"))).isEqualTo("nothing fact");
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
  void a_share_that_reaches_beyond_half_leaves_it_open() {
    CaseText text = CaseText.plated().at("/operations/0", "{resection: []}");
    // 40 to 60 % in contact
    assertThat(
            Taken.of(
                "defect-across",
                text.at("/operations/0/reduction", "{contactPercent: {min: 40, max: 60}}")))
        .startsWith("part or whole fact, ask ");
    CaseText stated =
        text.with("{findings: [{day: 1, circumferenceMissingPercent: {min: 50, max: 60}}]}");
    assertThat(Taken.of("defect-across", stated))
        .isEqualTo("part or whole fact, ask findings/circumferenceMissingPercent");
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
