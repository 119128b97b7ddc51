package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldDemandTest {

  private static final String PLATE = "/operations/0/fixation/0";

  private static CaseText cortex(String mm) {
    return CaseText.plated()
        .at("/bone", "{quality: [{method: 'cortical-thickness', value: " + mm + "}]}");
  }

  @Test
  void a_first_fixation_in_good_or_reduced_tibia_asks_the_usual() {
    assertThat(Taken.of("hold-demand", cortex("5"))).isEqualTo("usual fact");
    assertThat(Taken.of("hold-demand", cortex("3.5"))).isEqualTo("usual fact");
  }

  @Test
  void poor_bone_asks_more() {
    assertThat(Taken.of("hold-demand", cortex("2.5"))).isEqualTo("raised fact");
  }

  @Test
  void a_revision_asks_more_whatever_the_bone() {
    assertThat(Taken.of("hold-demand", cortex("5").redone("plate-bent"))).isEqualTo("raised fact");
  }

  @Test
  void bone_that_should_have_been_measured_leaves_it_open() {
    CaseText text =
        CaseText.plated().at("/bone", "{quality: null}").at("/patient", "{ageYears: 70}");
    assertThat(Taken.of("hold-demand", text))
        .isEqualTo("raised or usual assumed, ask bone/quality");
  }

  @Test
  void reduced_bone_asks_more_in_the_humerus() {
    assertThat(Taken.of("hold-demand", cortex("3.5").at("/bone", "{name: 'humerus'}")))
        .isEqualTo("raised fact");
    assertThat(Taken.of("hold-demand", cortex("5").at("/bone", "{name: 'humerus'}")))
        .isEqualTo("usual fact");
  }

  /** Good bone; the zone lies between holes 5 and 6 of ten. */
  @ParameterizedTest(name = "femur, screws in {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [1, 3, 5, 6, 8, 10]  | usual fact
          [2, 3, 5, 6, 8, 9]   | usual fact
          # 5 - 3 = 2 holes apart on the near side
          [3, 4, 5, 6, 8, 10]  | raised fact
          [1, 3, 5]            | raised fact
          """)
  void the_femur_asks_the_usual_only_where_screws_are_spread(String holes, String reads) {
    CaseText text =
        cortex("5")
            .at("/bone", "{name: 'femur'}")
            .at(PLATE, "{screws: [{at: " + holes + ", type: 'cortical'}]}");
    assertThat(Taken.of("hold-demand", text)).isEqualTo(reads);
  }

  @Test
  void the_femur_asks_more_under_a_plate_with_four_holes_a_side() {
    CaseText text =
        cortex("5")
            .at("/bone", "{name: 'femur'}")
            .at(
                PLATE,
                "{holes: 8, place: {zoneBetweenHoles: [4, 5]},"
                    + " screws: [{at: [1, 4, 5, 8], type: 'cortical'}]}");
    assertThat(Taken.of("hold-demand", text)).isEqualTo("raised fact");
  }

  @Test
  void a_femoral_plate_of_unknown_layout_leaves_it_open() {
    CaseText text = cortex("5").at("/bone", "{name: 'femur'}").at(PLATE, "{holes: null}");
    assertThat(Taken.of("hold-demand", text))
        .isEqualTo("raised or usual fact, ask op-1/fixation/screws");
  }

  @Test
  void a_femur_without_a_plate_asks_the_usual() {
    CaseText nailed = CaseText.nailed().at("/bone", "{name: 'femur'}");
    assertThat(Taken.of("hold-demand", nailed)).isEqualTo("usual fact");
  }
}
