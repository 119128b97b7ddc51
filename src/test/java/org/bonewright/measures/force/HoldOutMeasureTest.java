package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.bonewright.measures.force.Sketches.bridged;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.junit.jupiter.api.Test;

class HoldOutMeasureTest {

  private static final String SCREWS = "[1, 3, 5, 6, 8, 10]";

  /** A gap so wide that its ends never meet: everything grows with the load. */
  private static CaseText under(CaseText text, double times) {
    return text.with(
        "{loads: [{activity: 'test', pressN: "
            + 1000 * times
            + ", bendingNm: "
            + 60 * times
            + ", torsionNm: "
            + 3 * times
            + ", source: 'test'}]}");
  }

  private static Reading.Amount share(CaseText text) {
    return (Reading.Amount) Sketches.scene(text).read("hold-out-share");
  }

  private static Reading mode(CaseText text) {
    return Sketches.scene(text).read("hold-out-mode");
  }

  private static CaseText conventional(String screws) {
    return bridged(8, screws)
        .at(
            "/operations/0/fixation/0",
            "{family: 'large-fragment-narrow', screws: [{at: "
                + screws
                + ", type: 'cortical', diameterMm: 4.5, cortices: 2, track: 'fresh'}]}");
  }

  @Test
  void a_fifth_more_load_lets_locked_screws_go_at_a_share_smaller_by_as_much() {
    CaseText wide = bridged(8, SCREWS);
    Reading.Amount once = share(under(wide, 2.5));
    Reading.Amount more = share(under(wide, 3));
    assertThat(once.max()).isLessThan(LetGo.MOST);
    assertThat(more.min() * 1.2).isCloseTo(once.min(), withinPercentage(2));
    assertThat(more.max() * 1.2).isCloseTo(once.max(), withinPercentage(2));
    assertThat(once.kind()).isEqualTo(Kind.MODEL);
  }

  @Test
  void poor_bone_lets_go_earlier() {
    CaseText good = under(bridged(8, SCREWS), 3);
    CaseText poor = good.at("/bone", "{quality: [{method: 'cortical-thickness', value: 2}]}");
    assertThat(share(poor).min()).isLessThan(share(good).min());
    assertThat(share(poor).max()).isLessThan(share(good).max());
  }

  @Test
  void locked_screws_let_go_together() {
    assertThat(mode(under(bridged(8, SCREWS), 3)).shown()).isEqualTo("together");
  }

  @Test
  void a_plate_that_slips_lets_go_at_less_than_the_load() {
    CaseText heavy = under(conventional(SCREWS), 3);
    assertThat(((Reading.Word) mode(heavy)).possible()).contains("slips");
    assertThat(share(heavy).min()).isLessThan(1);
  }

  @Test
  void pressed_screws_never_let_go_together() {
    Reading.Word word = (Reading.Word) mode(under(conventional(SCREWS), 0.03));
    assertThat(word.possible()).doesNotContain("together");
    assertThat(share(under(conventional(SCREWS), 0.03)).min()).isGreaterThanOrEqualTo(1);
  }

  @Test
  void both_kinds_of_screws_on_the_bone_are_not_modelled() {
    CaseText mixed =
        bridged()
            .at(
                "/operations/0/fixation/0",
                "{screws: [{at: [1, 3, 5], type: 'cortical', diameterMm: 4.5, cortices: 2,"
                    + " track: 'fresh'}, {at: [6, 8, 10], type: 'locking', diameterMm: 5,"
                    + " cortices: 2, track: 'fresh'}]}");
    Reading.None none =
        new Reading.None(
            "conventional and locking screws share the load: which give way first is not modelled");
    assertThat(mode(mixed)).isEqualTo(none);
    assertThat(Sketches.scene(mixed).read("hold-out-share")).isEqualTo(none);
  }
}
