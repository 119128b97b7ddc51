package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is sketched of a case, before any assumption is drawn. */
class MadeByHandTest {

  @Nested
  class A_nail {

    private static NailSketch nail(CaseText text) {
      return Sketches.of(text).nail().orElseThrow();
    }

    @Test
    void rests_in_the_canal_by_the_line_and_half_way_to_its_wide_end_or_the_next_bolt() {
      // the canal widens a quarter of the length from either end: 90 mm from the line at 180
      assertThat(nail(CaseText.nailed()).rests())
          .extracting(rest -> rest.at().middle())
          .containsExactly(-2.0, -45.0, 2.0, 45.0);
      // a line at 200: 110 mm on one side, 70 on the other
      CaseText low = CaseText.nailed().at("/injury", "{zone: {fromMm: 199, toMm: 201}}");
      assertThat(nail(low).rests())
          .extracting(rest -> rest.at().middle())
          .containsExactly(-2.0, -55.0, 2.0, 35.0);
      // a bolt 40 mm from the line
      CaseText close = CaseText.nailed().at("/operations/0/fixation/0/bolts/1", "{atMm: 140}");
      assertThat(nail(close).rests())
          .extracting(rest -> rest.at().middle())
          .containsExactly(-2.0, -20.0, 2.0, 45.0);
    }

    @Test
    void rests_in_a_canal_as_wide_as_it_is_there_or_as_the_reamer_made_it() {
      // from 10 mm at 60 to 14 at 300: 11.967 at 178, 11.25 at 135; reamed to 11
      CaseText cone =
          CaseText.nailed()
              .at(
                  "/bone",
                  "{sections: [{atMm: 60, outerMm: 27, canalMm: 10}, {atMm: 300, outerMm: 27,"
                      + " canalMm: 14}]}");
      assertThat(nail(cone).rests().get(0).canal().middle()).isCloseTo(11.967, within(0.001));
      assertThat(nail(cone).rests().get(1).canal().middle()).isCloseTo(11.25, within(0.001));
      assertThat(nail(cone).rests().get(3).canal().middle()).isCloseTo(12.75, within(0.001));
      CaseText untold = cone.at("/operations/0/fixation/0", "{reamedMm: null}");
      // nothing to 1.5 mm more than the nail of 10
      assertThat(nail(untold).rests().get(1).canal().min()).isCloseTo(11.25, within(0.001));
      assertThat(nail(untold).rests().get(1).canal().max()).isCloseTo(11.5, within(0.001));
    }

    @Test
    void has_bolts_of_two_to_five_tenths_of_its_width_where_they_are_not_told() {
      CaseText text = CaseText.nailed().without("/operations/0/fixation/0/bolts/0/diameterMm");
      Dimension bolt = nail(text).bolts().get(0).diameter();
      assertThat(bolt.min()).isEqualTo(4);
      assertThat(bolt.max()).isEqualTo(5);
      assertThat(nail(CaseText.nailed()).bolts().get(0).diameter().max()).isEqualTo(5);
    }
  }

  @Nested
  class A_fixator {

    private static CaseText pins(String bone, String first, String second, String more) {
      return CaseText.plated()
          .at("/bone", "{name: '" + bone + "'}")
          .at(
              "/operations/0",
              "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm: 2,"
                  + " gapFarMm: 2, contactPercent: 0}, fixation: [{id: 'f', kind:"
                  + " 'external-fixator', frame: 'unilateral', pins: [{atMm: 70, direction: "
                  + first
                  + "}, {atMm: 110, direction: "
                  + first
                  + "}, {atMm: 250, direction: "
                  + second
                  + "}, {atMm: 290, direction: "
                  + second
                  + "}]}"
                  + more
                  + "]}");
    }

    @ParameterizedTest(name = "{0}: bars of {1} to {2} mm")
    @CsvSource({
      "femur, 8, 12",
      "tibia, 8, 12",
      "humerus, 8, 12",
      "radius, 4, 8",
      "ulna, 4, 8",
      "clavicle, 4, 8"
    })
    void has_the_usual_bars_of_its_bone_where_they_are_not_told(
        String bone, double min, double max) {
      Dimension bar = Sketches.of(pins(bone, "0", "0", "")).fixator().orElseThrow().barDiameter();
      assertThat(bar.min()).isEqualTo(min);
      assertThat(bar.max()).isEqualTo(max);
    }

    @Test
    void lies_in_one_plane_up_to_thirty_degrees() {
      assertThat(Taken.of("modelled-line", pins("tibia", "0", "30", ""))).isEqualTo("gap fact");
      assertThat(Taken.of("modelled-line", pins("tibia", "0", "31", "")))
          .isEqualTo("none: a fixator with pins in more than one plane is not modelled");
    }

    @Test
    void beside_a_plate_lies_around_the_bone_from_it() {
      String plate =
          ", "
              + Sketches.bridged()
                  .at("/operations/0/fixation/0", "{surface: 'medial'}")
                  .tree()
                  .at("/operations/0/fixation/0");
      // medial is 270
      assertThat(Sketches.of(pins("tibia", "300", "300", plate)).fixator().orElseThrow().azimuth())
          .isEqualTo(30);
    }
  }

  @Nested
  class A_bone {

    @Test
    void of_which_the_line_is_told_by_no_level_is_taken_as_broken_in_its_middle() {
      CaseText text =
          Sketches.bridged()
              .at("/injury", "{zone: null}")
              .at("/bone", "{lengthMm: 400}")
              .at(
                  "/operations/0/fixation/0",
                  "{place: {zoneBetweenHoles: [5, 6], firstHoleMm: null}}");
      assertThat(Sketches.of(text).proximal()).isEqualTo(200);
      assertThat(Sketches.of(text).distal()).isEqualTo(200);
    }

    @Test
    void reaches_a_centimetre_beyond_what_is_fixed_to_it() {
      CaseText brief = Sketches.bridged().at("/bone", "{lengthMm: 240}");
      assertThat(Sketches.of(brief).distal()).isEqualTo(91);
      CaseText nailed = CaseText.nailed().at("/bone", "{lengthMm: 300}");
      // its last bolt stands 150 mm from the line
      assertThat(Sketches.of(nailed).distal()).isEqualTo(160);
      String fixator =
          "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm: 2,"
              + " gapFarMm: 2, contactPercent: 0}, fixation: ["
              + Sketches.FIXATOR
              + "]}";
      assertThat(
              Sketches.of(
                      CaseText.plated().at("/operations/0", fixator).at("/bone", "{lengthMm: 240}"))
                  .distal())
          .isEqualTo(120);
    }

    @Test
    void is_told_with_its_gap_or_as_touching() {
      assertThat(Sketches.of(Sketches.bridged()).told()).isEqualTo("gap taken as even, 2 mm");
      assertThat(
              Sketches.of(CaseText.plated().at("/operations/0/reduction", "{gapFarMm: 0}")).told())
          .isEqualTo("ends taken as touching all round");
    }
  }

  @Nested
  class Screws {

    private static Sketch screws(String rows) {
      return Sketches.of(
          Sketches.bridged().at("/operations/0/fixation/0", "{screws: [" + rows + "]}"));
    }

    @Test
    void are_all_locked_or_mixed_or_neither() {
      String locked = "{at: [1, 10], type: 'locking', diameterMm: 5, cortices: 2}";
      String pressed = "{at: [3, 8], type: 'cortical', diameterMm: 4.5, cortices: 2}";
      assertThat(screws(locked).locked()).isTrue();
      assertThat(screws(locked).mixed()).isFalse();
      assertThat(screws(pressed).locked()).isFalse();
      assertThat(screws(pressed).mixed()).isFalse();
      assertThat(screws(locked + ", " + pressed).locked()).isFalse();
      assertThat(screws(locked + ", " + pressed).mixed()).isTrue();
    }
  }

  @Test
  void a_tubular_plate_is_one_to_two_millimetres_thick() {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0/fixation/0",
                "{family: 'one-third-tubular', lengthMm: null, place: {firstHoleMm: 108}}");
    Dimension thick = Sketches.of(text).plates().get(0).thickness();
    assertThat(thick.min()).isEqualTo(1);
    assertThat(thick.max()).isEqualTo(2);
  }

  @Nested
  class A_strut_on_the_bone {

    private static CaseText strut(String strut, String plateSurface) {
      CaseText plain =
          Sketches.bridged().at("/operations/0/fixation/0", "{surface: " + plateSurface + "}");
      return plain.at(
          "/operations/0",
          "{fixation: ["
              + plain.tree().at("/operations/0/fixation/0")
              + ", {id: 'i', kind: 'strut', where: 'intramedullary', fromMm: 150, toMm: 210},"
              + " {id: 's', kind: 'strut', where: 'onlay', outerMm: 14, wallMm: 4, "
              + strut
              + "}, {id: 'w', kind: 'cerclage', holds: 'strut', atMm: [99, 100, 150, 260,"
              + " 261]}]}");
    }

    @Test
    void is_held_by_the_wires_that_go_around_it_from_end_to_end() {
      OnlaySketch onlay =
          Sketches.of(strut("fromMm: 100, toMm: 260, surface: 'lateral'", "'medial'"))
              .onlay()
              .orElseThrow();
      assertThat(onlay.wires()).extracting(Dimension::middle).containsExactly(-80.0, -30.0, 80.0);
    }

    @ParameterizedTest(name = "from {0} to {1}: {2}")
    @CsvSource({"179, 260, true", "180, 260, false", "100, 181, true", "100, 180, false"})
    void crosses_the_line_by_a_millimetre_at_the_least(int from, int to, boolean crosses) {
      Sketch sketch =
          Sketches.of(
              strut("fromMm: " + from + ", toMm: " + to + ", surface: 'lateral'", "'medial'"));
      assertThat(sketch.onlay().isPresent()).isEqualTo(crosses);
    }

    @Test
    void is_none_under_a_plate_also_where_the_full_turn_lies_between_them() {
      String at = "fromMm: 100, toMm: 260, surface: 355";
      assertThat(Sketches.of(strut(at, "5")).onlay()).isEmpty();
      assertThat(Sketches.of(strut(at, "175")).onlay()).isPresent();
    }
  }

  @Nested
  class Readings {

    private static final Solved ONE = new Solved(0, 0, 0, 0, 5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    private static Reading read(int answered) {
      List<Draw> draws = Draws.all().subList(0, answered);
      return new Forces.Known(
              Sketches.of(Sketches.bridged()),
              new Solutions.Answers<>(draws, Collections.nCopies(answered, ONE)),
              List.of(new MissingFact("patient/weightKg", "How heavy?")))
          .reading(Solved::strain);
    }

    @Test
    void say_in_how_many_sets_the_model_found_no_answer() {
      assertThat(read(200).working()).isEqualTo("gap taken as even, 2 mm");
      assertThat(read(190).working())
          .isEqualTo("gap taken as even, 2 mm; no answer in 10 of 200 sets");
      assertThat(read(190).missing()).hasSize(1);
      assertThat(((Reading.Sampled) read(190)).nominal()).isEqualTo(5);
    }
  }
}
