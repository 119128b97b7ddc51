package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.bonewright.mechanics.construct.MetalNail;
import org.junit.jupiter.api.Test;

/** A nail as the model takes it, and what it does. */
class NailMakerTest {

  private static final CaseText NAILED = CaseText.nailed();

  private static CaseText nail(String patch) {
    return NAILED.at("/operations/0/fixation/0", patch);
  }

  private static String section(int level, double canal) {
    return "{atMm: " + level + ", outerMm: 27, canalMm: " + canal + "}";
  }

  private static NailSketch sketch(CaseText text) {
    return Sketches.of(text).nail().orElseThrow();
  }

  private static MetalNail built(CaseText text) {
    return new Builder(Sketches.of(text), Draw.MIDDLE).build().nail().orElseThrow();
  }

  private static List<Double> samples(String measure, CaseText text) {
    return ((org.bonewright.measures.Reading.Sampled) Sketches.scene(text).read(measure)).samples();
  }

  @Test
  void its_bolts_lie_as_far_from_the_line_as_the_file_has_them() {
    double centre = Sketches.scene(NAILED).zone().centre().orElseThrow().middle();
    assertThat(sketch(NAILED).bolts())
        .extracting(bolt -> bolt.at().middle() + centre)
        .containsExactly(40.0, 60.0, 310.0, 330.0);
  }

  @Test
  void a_bolt_of_untold_direction_runs_from_side_to_side() {
    assertThat(sketch(NAILED).bolts()).extracting(NailSketch.Bolt::azimuth).containsOnly(90.0);
    CaseText front = NAILED.at("/operations/0/fixation/0/bolts/0", "{plane: 'anterior'}");
    assertThat(sketch(front).bolts().get(0).azimuth()).isZero();
  }

  @Test
  void a_dynamic_nail_slides_at_the_end_at_which_it_was_put_in() {
    CaseText closed =
        nail("{locking: 'dynamic'}").at("/operations/0/reduction", "{gapNearMm: 0, gapFarMm: 0}");
    assertThat(sketch(closed).bolts())
        .extracting(NailSketch.Bolt::slides)
        .containsExactly(true, true, false, false);
    CaseText fromBelow = closed.at("/operations/0/fixation/0", "{entry: 'retrograde'}");
    assertThat(sketch(fromBelow).bolts())
        .extracting(NailSketch.Bolt::slides)
        .containsExactly(false, false, true, true);
  }

  @Test
  void it_has_as_much_slack_as_the_reamer_leaves_all_round() {
    CaseText measured =
        NAILED.at("/bone", "{sections: [" + section(60, 10.5) + ", " + section(320, 10.5) + "]}");
    assertThat(built(measured).rests()).isNotEmpty();
    assertThat(built(measured).rests())
        .allSatisfy(rest -> assertThat(rest.slack()).isCloseTo(0.5, within(1e-9)));
  }

  @Test
  void it_fills_a_canal_that_was_not_reamed_wider() {
    CaseText tight =
        nail("{reamedMm: 0}").at("/bone", "{sections: [{atMm: 180, outerMm: 27, canalMm: 9.5}]}");
    assertThat(built(tight).rests()).extracting(MetalNail.Rest::slack).containsOnly(0.0);
  }

  @Test
  void a_line_near_the_end_of_the_bone_has_no_canal_to_hold_it_there() {
    CaseText low =
        NAILED.at("/injury", "{zone: {fromMm: 300, toMm: 306}}").at("/bone", "{lengthMm: 360}");
    assertThat(sketch(low).rests()).allMatch(rest -> rest.at().middle() < 0);
  }

  @Test
  void what_is_not_told_of_its_bore_matters_little() {
    Dimension bore = sketch(NAILED).bore();
    assertThat(bore.assumed()).isTrue();
    List<Double> solid = samples("nail-stress-range", nail("{boreMm: 0}"));
    List<Double> hollow = samples("nail-stress-range", nail("{boreMm: 5}"));
    for (int i = 0; i < solid.size(); i++) {
      assertThat(hollow.get(i) / solid.get(i)).isBetween(0.9, 1.3);
    }
  }

  @Test
  void a_thicker_nail_is_stressed_less_and_moves_less_under_every_set() {
    CaseText thin = nail("{outerMm: 9, reamedMm: 10}");
    CaseText thick = nail("{outerMm: 11, reamedMm: 12}");
    for (String measure : List.of("nail-stress-range", "gap-movement")) {
      List<Double> more = samples(measure, thin);
      List<Double> less = samples(measure, thick);
      for (int i = 0; i < more.size(); i++) {
        assertThat(less.get(i)).as(measure).isLessThan(more.get(i));
      }
    }
  }

  @Test
  void in_a_wide_canal_one_bolt_at_an_end_lets_the_line_move_more() {
    CaseText wide = nail("{reamedMm: 15}");
    CaseText one = wide.without("/operations/0/fixation/0/bolts/3");
    List<Double> two = samples("gap-movement", wide);
    List<Double> swung = samples("gap-movement", one);
    double middleOfTwo = Middle.of(two);
    assertThat(Middle.of(swung)).isGreaterThan(middleOfTwo);
  }

  @Test
  void a_plate_over_a_nail_spares_both() {
    String plate =
        "{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow-locking', holes: 8,"
            + " lengthMm: 150, surface: 'medial', place: {zoneBetweenHoles: [4, 5]},"
            + " screws: [{at: [1, 3, 6, 8], type: 'locking', cortices: 1}]}";
    String nail = NAILED.tree().at("/operations/0/fixation/0").toString();
    CaseText both = NAILED.at("/operations/0", "{fixation: [" + nail + ", " + plate + "]}");
    assertThat(Middle.of(samples("nail-stress-range", both)))
        .isLessThan(Middle.of(samples("nail-stress-range", NAILED)));
    assertThat(Middle.of(samples("gap-movement", both)))
        .isLessThan(Middle.of(samples("gap-movement", NAILED)));
  }
}
