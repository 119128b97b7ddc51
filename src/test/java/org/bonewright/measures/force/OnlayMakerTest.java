package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.construct.OnlayStrut;
import org.bonewright.mechanics.model.MechanicalModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A strut on the surface of the bone as the model takes it, and what it does. */
class OnlayMakerTest {

  private static final CaseText PLATE =
      Sketches.bridged().at("/operations/0/fixation/0", "{surface: 'medial'}");

  /** Wires 30 and 60 mm on either side of a line at 180 mm. */
  private static final String WIRES =
      "{id: 'w', kind: 'cerclage', atMm: [120, 150, 210, 240], holds: 'strut'}";

  private static CaseText with(String strut, String wires) {
    String plate = PLATE.tree().at("/operations/0/fixation/0").toString();
    return PLATE.at(
        "/operations/0",
        "{fixation: ["
            + plate
            + ", {id: 's', kind: 'strut', where: 'onlay', fromMm: 100, toMm: 260"
            + strut
            + "}, "
            + wires
            + "]}");
  }

  private static CaseText lateral() {
    return with(", outerMm: 14, wallMm: 4, surface: 'lateral'", WIRES);
  }

  private static OnlayStrut built(CaseText text) {
    return new Builder(Sketches.of(text), Draw.MIDDLE).build().beside().onlay().orElseThrow();
  }

  private static List<Double> samples(String measure, CaseText text) {
    return ((Reading.Sampled) Sketches.scene(text).read(measure)).samples();
  }

  @Test
  void lies_opposite_a_medial_plate_on_the_lateral_side_and_is_held_by_its_wires() {
    OnlayStrut strut = built(lateral());
    assertThat(strut.isOpposite(0)).isTrue();
    assertThat(strut.section().width()).isEqualTo(14);
    assertThat(strut.section().thickness()).isEqualTo(4);
    assertThat(strut.wires()).containsExactly(-60.0, -30.0, 30.0, 60.0);
  }

  @Test
  void is_passed_by_screws_whose_tips_stand_out_by_its_wall() {
    assertThat(built(lateral()).missed()).hasSize(6);
    String row = "/operations/0/fixation/0/screws/0";
    assertThat(built(lateral().at(row, "{tipBeyondMm: 3}")).missed()).hasSize(6);
    assertThat(built(lateral().at(row, "{tipBeyondMm: 5}")).missed()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ", outerMm: 14, wallMm: 4",
        ", outerMm: 14, wallMm: 4, surface: 'medial'",
        ", outerMm: 14, wallMm: 4, surface: 'lateral', toMm: 170"
      })
  void is_left_out_where_its_side_is_not_told_or_a_plates_or_it_does_not_cross_the_line(
      String strut) {
    assertThat(Sketches.of(with(strut, WIRES)).onlay()).isEmpty();
  }

  @Test
  void makes_the_construct_stiffer_under_every_set() {
    for (Draw draw : Draws.all().subList(0, 25)) {
      Stiffness bare = stiffness(PLATE, draw);
      Stiffness with = stiffness(lateral(), draw);
      assertThat(with.bendingWeakPlus()).isGreaterThan(bare.bendingWeakPlus());
      assertThat(with.bendingStrong()).isGreaterThan(bare.bendingStrong());
      assertThat(with.torsion()).isGreaterThan(bare.torsion());
    }
  }

  private static Stiffness stiffness(CaseText text, Draw draw) {
    return new MechanicalModel(new Builder(Sketches.of(text), draw).taut())
        .stiffness()
        .orElseThrow();
  }

  @Test
  void changes_nothing_where_wires_hold_something_else() {
    String wedge = WIRES.replace("'strut'", "'wedge'");
    CaseText text = with(", outerMm: 14, wallMm: 4, surface: 'lateral'", wedge);
    assertThat(samples("gap-movement", text)).isEqualTo(samples("gap-movement", PLATE));
  }
}
