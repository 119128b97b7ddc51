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
  void there_is_none_without_a_gap_or_without_graft() {
    assertThat(share(gap20("[]"))).isEqualTo("none: no graft that fills");
    assertThat(
            share(
                gap20("[{kind: 'reamer-graft', volumeMl: 40}]")
                    .at("/operations/0/reduction", "{gapNearMm: 0, gapFarMm: 0}")))
        .isEqualTo("none: no gap left");
  }
}
