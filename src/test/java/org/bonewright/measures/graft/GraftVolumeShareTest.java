package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** Needed: π/4 · (24 mm)² · 20 mm · 1.2 = 10 857 mm³ = 10.857 mL. */
class GraftVolumeShareTest {

  private static CaseText gap20(String biology) {
    return CaseText.plated()
        .at("/operations/0", "{biology: " + biology + "}")
        .at("/operations/0/reduction", "{gapNearMm: 20, gapFarMm: 20}");
  }

  private static String share(CaseText text) {
    return Taken.of("graft-volume-share", text);
  }

  @Test
  void is_the_stated_volume_over_the_volume_needed() {
    // 10 / 10.857344 = 0.921036
    assertThat(share(gap20("[{kind: 'autograft-cancellous', volumeMl: 10}]")))
        .isEqualTo("92.104 fact");
  }

  @Test
  void volumes_of_several_sources_add_up() {
    // (6 + 4) / 10.857344
    assertThat(
            share(
                gap20(
                    "[{kind: 'autograft-cancellous', volumeMl: 6}, {kind: 'substitute', volumeMl:"
                        + " 4}]")))
        .isEqualTo("92.104 fact");
  }

  @Test
  void a_donor_gives_its_packed_to_its_loose_volume_where_none_is_stated() {
    // 9 / 10.857344 and 18 / 10.857344
    assertThat(share(gap20("[{kind: 'autograft-cancellous', donor: 'proximal-tibia-left'}]")))
        .isEqualTo("82.893–165.786 assumed, ask op-1/biology/volumeMl");
  }

  @Test
  void a_plan_gets_no_more_out_of_a_donor_than_it_usually_gives() {
    CaseText text =
        gap20("[{kind: 'autograft-cancellous', volumeMl: 40, donor: 'iliac-anterior-left'}]")
            .redone("plate-bent");
    // 21 / 10.857344 and 26 / 10.857344
    assertThat(share(text))
        .isEqualTo("193.417–239.469 assumed, ask plan-a/stage-1/biology/volumeMl");
  }

  @Test
  void a_planned_volume_without_a_donor_may_come_from_the_smallest() {
    CaseText text = gap20("[{kind: 'autograft-cancellous', volumeMl: 20}]").redone("plate-bent");
    // 9 / 10.857344 and 20 / 10.857344
    assertThat(share(text))
        .isEqualTo("82.893–184.207 assumed, ask plan-a/stage-1/biology/volumeMl");
  }

  @Test
  void a_planned_volume_up_to_what_the_donor_gives_loose_counts_as_stated() {
    // 26 / 10.857344 and 18 / 10.857344
    CaseText crest =
        gap20("[{kind: 'autograft-cancellous', volumeMl: 26, donor: 'iliac-anterior-left'}]");
    assertThat(share(crest.redone("plate-bent"))).isEqualTo("239.469 fact");
    CaseText anywhere = gap20("[{kind: 'autograft-cancellous', volumeMl: 18}]");
    assertThat(share(anywhere.redone("plate-bent"))).isEqualTo("165.786 fact");
  }

  @Test
  void a_spacer_fills_nothing_with_living_or_dead_bone() {
    assertThat(
            share(
                gap20(
                    "[{kind: 'autograft-cancellous', volumeMl: 10}, {kind: 'spacer', volumeMl:"
                        + " 20}]")))
        .isEqualTo("92.104 fact");
  }

  @Test
  void a_gap_that_is_a_range_is_asked_for_and_a_stated_volume_is_not() {
    CaseText text =
        gap20("[{kind: 'autograft-cancellous', volumeMl: 10}]")
            .at("/operations/0/reduction", "{gapFarMm: {min: 20, max: 25}}");
    // 10 / 13.57168 and 10 / 10.857344
    assertThat(share(text)).isEqualTo("73.683–92.104 fact, ask op-1/reduction/gapFarMm");
    // 13.6 mL at the most
    assertThat(working(text)).isEqualTo("10 mL for 10.9–13.6 mL needed");
  }

  @Test
  void a_volume_that_is_not_told_may_be_any() {
    CaseText text = gap20("[{kind: 'substitute'}]");
    assertThat(share(text)).isEqualTo("0–∞ fact, ask op-1/biology/volumeMl");
    assertThat(working(text)).startsWith("at least 0 mL for ");
  }

  private static String working(CaseText text) {
    return Taken.reading("graft-volume-share", Taken.subject(text.file(), "op-1")).working();
  }

  @Test
  void there_is_none_without_a_gap_or_without_graft() {
    assertThat(share(gap20("[]"))).isEqualTo("none: no graft that fills");
    assertThat(
            share(
                gap20("[{kind: 'reamer-graft', volumeMl: 40}]")
                    .at("/operations/0/reduction", "{gapNearMm: 0, gapFarMm: 0}")))
        .isEqualTo("none: no gap left");
  }
}
