package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FarCortexTest {

  private static final String REBUILT = "far-cortex-rebuilt";
  private static final String PLATE = "/operations/0/fixation/0";

  @ParameterizedTest
  @CsvSource({
    "femur, 90, femur",
    "femur, 135, femur",
    "femur, 136, no",
    "femur, 270, no",
    "tibia, 270, tibia",
    "tibia, 45, tibia",
    "tibia, 0, no",
    "humerus, 180, humerus",
    "radius, 90, no",
  })
  void the_tension_side_is_that_of_the_bone(String bone, double surface, String word) {
    CaseText text =
        CaseText.plated()
            .at("/bone", "{name: '" + bone + "'}")
            .at(PLATE, "{surface: " + surface + "}");
    assertThat(Taken.of("tension-side-plate", text)).isEqualTo(word + " fact");
  }

  @Test
  void a_surface_that_is_not_told_leaves_the_side_open() {
    assertThat(Taken.of("tension-side-plate", CaseText.plated().at(PLATE, "{surface: null}")))
        .isEqualTo("no or tibia fact, ask op-1/fixation/plate-1/surface");
    assertThat(Taken.of("tension-side-plate", CaseText.nailed()))
        .isEqualTo("none: no plate in place");
  }

  @ParameterizedTest
  @CsvSource({
    "100, 100 assumed",
    "0, 0 assumed",
    // 80: at most 50 under the plate, so at least 30 of the other 50
    "80, '60–100 assumed, ask op-1/reduction/contactPercent'",
    "20, '0–40 assumed, ask op-1/reduction/contactPercent'",
    "50, '0–100 assumed, ask op-1/reduction/contactPercent'",
  })
  void contact_opposite_is_bounded_by_all_contact(double contact, String expected) {
    CaseText text =
        CaseText.plated().at("/operations/0/reduction", "{contactPercent: " + contact + "}");
    assertThat(Taken.of("far-contact-percent", text)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "autograft-cancellous, yes",
    "substitute, yes",
    "spacer, yes",
    "growth-factor, no",
    "membrane, no",
    "decortication, no",
  })
  void graft_that_fills_rebuilds_it(String kind, String word) {
    CaseText text = CaseText.plated().at("/operations/0", "{biology: [{kind: '" + kind + "'}]}");
    assertThat(Taken.of(REBUILT, text)).isEqualTo(word + " fact");
  }

  private static CaseText beside(String implant) {
    return CaseText.plated()
        .at(
            "/operations/0",
            "{fixation: [{id: 'plate-1', kind: 'plate', surface: 'medial', lengthMm: 160}, "
                + implant
                + "]}");
  }

  @Test
  void a_strut_rebuilds_it_inside_the_bone_or_on_the_other_side() {
    String strut = "{id: 'strut-1', kind: 'strut', fromMm: 120, toMm: 240, where: ";
    assertThat(Taken.of(REBUILT, beside(strut + "'intramedullary'}"))).isEqualTo("yes fact");
    assertThat(Taken.of(REBUILT, beside(strut + "'onlay', surface: 'lateral'}")))
        .isEqualTo("yes fact");
    assertThat(Taken.of(REBUILT, beside(strut + "'onlay', surface: 'anteromedial'}")))
        .isEqualTo("no fact");
    assertThat(Taken.of(REBUILT, beside(strut + "'onlay'}")))
        .isEqualTo("no or yes fact, ask op-1/fixation/strut-1/surface");
  }

  @Test
  void a_second_plate_rebuilds_it_from_60_degrees_on() {
    String plate = "{id: 'plate-2', kind: 'plate', lengthMm: 100, surface: ";
    assertThat(Taken.of(REBUILT, beside(plate + "330}"))).isEqualTo("yes fact");
    assertThat(Taken.of(REBUILT, beside(plate + "329}"))).isEqualTo("no fact");
  }

  @Test
  void what_is_not_told_leaves_it_open() {
    assertThat(Taken.of(REBUILT, CaseText.plated().at("/operations/0", "{biology: null}")))
        .isEqualTo("no or yes fact, ask op-1/biology");
    assertThat(Taken.of(REBUILT, CaseText.plated())).isEqualTo("no fact");
    assertThat(Taken.of(REBUILT, CaseText.nailed())).isEqualTo("none: no plate in place");
  }
}
