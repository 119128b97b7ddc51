package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlateFamilyFitTest {

  private static final String ID = "plate-family-fit";
  private static final String PLATE = "/operations/0/fixation/0";

  @ParameterizedTest
  @CsvSource({
    "femur, large-fragment-broad, transverse, right",
    "femur, large-fragment-narrow-locking, transverse, soft",
    "femur, one-third-tubular, transverse, tubular",
    "tibia, large-fragment-narrow, transverse, right",
    "tibia, small-fragment-locking, transverse, soft",
    "humerus, large-fragment-narrow, transverse, right",
    "humerus, large-fragment-broad-locking, transverse, heavy",
    "humerus, small-fragment, transverse, light",
    "humerus, reconstruction, transverse, soft",
    "humerus, one-third-tubular, transverse, tubular",
    "radius, small-fragment, transverse, right",
    "ulna, one-third-tubular, transverse, soft",
    "ulna, large-fragment-narrow, transverse, heavy",
    "clavicle, shaft-strength-2-7, multifragmentary, right",
    "clavicle, reconstruction, wedge, right",
    "clavicle, reconstruction, multifragmentary, soft",
    "clavicle, large-fragment-narrow, wedge, heavy",
  })
  void a_single_plate(String bone, String family, String pattern, String fit) {
    CaseText text =
        CaseText.plated()
            .at("/bone", "{name: '" + bone + "'}")
            .at("/injury", "{pattern: '" + pattern + "'}")
            .at(PLATE, "{family: '" + family + "'}");
    assertThat(Taken.of(ID, text)).isEqualTo(fit + " fact");
  }

  private static CaseText pair(String bone, String family, String first, String second) {
    String plate = "{id: 'plate-%s', kind: 'plate', family: '" + family + "'%s}";
    return CaseText.plated()
        .at("/bone", "{name: '" + bone + "'}")
        .at(
            "/operations/0",
            "{fixation: ["
                + plate.formatted("1", first)
                + ", "
                + plate.formatted("2", second)
                + "]}");
  }

  @Test
  void two_lighter_plates_do_at_a_right_angle() {
    String medial = ", surface: 'medial'";
    assertThat(Taken.of(ID, pair("humerus", "small-fragment", medial, ", surface: 'anterior'")))
        .isEqualTo("right fact");
    assertThat(Taken.of(ID, pair("humerus", "small-fragment", medial, ", surface: 'lateral'")))
        .isEqualTo("light fact");
    assertThat(Taken.of(ID, pair("femur", "small-fragment", medial, ", surface: 'anterior'")))
        .isEqualTo("soft fact");
    assertThat(Taken.of(ID, pair("tibia", "small-fragment", medial, "")))
        .isEqualTo("right or soft fact, ask op-1/fixation/plate-2/surface");
  }

  @ParameterizedTest(name = "surfaces {0} degrees apart: {1}")
  @CsvSource({"59, light fact", "60, right fact", "120, right fact", "121, light fact"})
  void a_right_angle_is_one_of_60_to_120_degrees(int degrees, String fit) {
    String other = ", surface: " + degrees;
    assertThat(Taken.of(ID, pair("humerus", "small-fragment", ", surface: 0", other)))
        .isEqualTo(fit);
  }

  @Test
  void the_size_of_each_plate_is_told() {
    CaseText text = pair("tibia", "small-fragment", "", "");
    assertThat(Taken.reading(ID, Taken.subject(text.file(), "op-1")).working())
        .contains("small fragment");
  }

  @Test
  void a_pattern_that_is_not_told_leaves_a_reconstruction_plate_open() {
    CaseText text =
        CaseText.plated()
            .at("/bone", "{name: 'clavicle'}")
            .at("/injury", "{pattern: null}")
            .at(PLATE, "{family: 'reconstruction'}");
    assertThat(Taken.of(ID, text)).isEqualTo("right or soft fact, ask injury/pattern");
  }

  @Test
  void a_size_that_is_not_told_is_asked_for() {
    assertThat(Taken.of(ID, CaseText.plated().at(PLATE, "{family: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/family");
    assertThat(Taken.of(ID, CaseText.nailed())).isEqualTo("none: no plate in place");
  }

  @Test
  void a_plate_that_did_not_fail_did_not_give_way_and_one_of_unknown_end_may_have() {
    String id = "plate-family-failed-before";
    CaseText bent = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of(id, bent.at("/operations/0", "{outcome: {result: 'united', mode: null}}")))
        .isEqualTo("no fact");
    assertThat(Taken.of(id, bent.at("/operations/0", "{outcome: {result: 'unknown', mode: null}}")))
        .isEqualTo("no or yes fact, ask op-1/outcome/mode");
  }

  @Test
  void a_plate_of_now_without_a_size_may_be_one_that_gave_way() {
    CaseText text =
        CaseText.plated().redone("plate-bent").at("/plans/0/stages/0/fixation/0", "{family: null}");
    assertThat(Taken.of("plate-family-failed-before", text))
        .isEqualTo("no or yes fact, ask op-1/fixation/family");
  }

  @Test
  void a_size_failed_before_when_a_plate_of_it_broke_or_bent() {
    String id = "plate-family-failed-before";
    CaseText bent = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of(id, bent)).isEqualTo("yes fact");
    assertThat(Taken.of(id, bent, "op-1")).isEqualTo("no fact");
    assertThat(Taken.of(id, CaseText.plated().redone("plate-broken"))).isEqualTo("yes fact");
    assertThat(Taken.of(id, CaseText.plated().redone("screws-pulled-out-in-sequence")))
        .isEqualTo("no fact");
    assertThat(
            Taken.of(
                id, bent.at("/plans/0/stages/0/fixation/0", "{family: 'large-fragment-broad'}")))
        .isEqualTo("no fact");
    assertThat(Taken.of(id, bent.at("/operations/0/outcome", "{mode: null}")))
        .isEqualTo("no or yes fact, ask op-1/outcome/mode");
    assertThat(Taken.of(id, bent.at(PLATE, "{family: null}")))
        .isEqualTo("no or yes fact, ask op-1/fixation/family");
  }
}
