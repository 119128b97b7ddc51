package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three screws of 4.5 mm across both cortices on either side: 6 credits a side in fresh bone, 3 at
 * half credit. The plan does the same as the operation that failed, unless changed; both plates lie
 * on the medial side with hole 1 at 108 mm, so that every screw finds an old hole of 4.5 mm.
 */
class ScrewCreditTest {

  private static final String PLATE = "/operations/0/fixation/0";
  private static final String STAGE_PLATE = "/plans/0/stages/0/fixation/0";

  /**
   * Return the case with the plate laid again, its first hole at a level in mm, with these rows.
   */
  static CaseText again(double firstHole, String rows) {
    return CaseText.plated()
        .at(
            "/bone",
            "{sections: [{atMm: 10, outerMm: 24, canalMm: 14},"
                + " {atMm: 350, outerMm: 24, canalMm: 14}]}")
        .at(PLATE, "{place: {firstHoleMm: 108}}")
        .redone("no-union-metal-intact")
        .at(STAGE_PLATE, "{place: {firstHoleMm: " + firstHole + "}, screws: [" + rows + "]}");
  }

  private static String screws(String more) {
    return "{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2" + more + "}";
  }

  private static String cortices(CaseText text) {
    return Taken.of("cortices-weaker-side", text);
  }

  @ParameterizedTest(name = "{0} mm beside: {1}")
  @CsvSource({
    // the share is 0.5 at 1.225 mm and 0.9 at 3.912 mm (strips of the two circles)
    "0, 0 fact",
    "0.5, 0 fact",
    "1.22, 0 fact",
    "1.23, 3 fact",
    "2.25, 3 fact",
    "3.91, 3 fact",
    "3.92, 6 fact",
    "4.5, 6 fact",
    "8, 6 fact"
  })
  void is_full_from_nine_tenths_of_the_thread_and_half_from_a_half(double beside, String reads) {
    assertThat(cortices(again(108 + beside, screws("")))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} mm in a bone of {1} mm with a canal of {2}: {3}")
  @CsvSource({
    // step 0.5: thread 5.0 on 3.5, share 1 - (20.25 - 12.25) / (25 - 12.25) = 0.37
    "5.0, 24, 14, 0 fact",
    // step 0.9: thread 5.4 on 3.78, share 1 - (20.25 - 14.29) / (29.16 - 14.29) = 0.60
    "5.4, 24, 14, 3 fact",
    // a step of 1 is enough
    "5.5, 24, 14, 6 fact",
    // hole of 0.3 of the bone, and above; share of 6.1 on 4.27 is 0.89
    "6.0, 20, 10, 6 fact",
    "6.1, 20, 10, 3 fact",
    // cortex of 3 mm, and below; share of 5.5 on 3.85 is 0.65
    "5.5, 24, 18, 6 fact",
    "5.5, 24, 18.2, 3 fact",
    "4.0, 24, 14, 0 fact"
  })
  void of_a_thicker_screw_in_an_old_hole_is_full_where_the_bone_can_take_it(
      double thick, double outer, double canal, String reads) {
    String section = ", outerMm: " + outer + ", canalMm: " + canal + "}";
    CaseText text =
        again(108, screws(", diameterMm: " + thick))
            .at("/bone", "{sections: [{atMm: 10" + section + ", {atMm: 350" + section + "]}");
    assertThat(cortices(text)).isEqualTo(reads);
  }

  @Test
  void is_a_range_where_bone_or_step_decide_and_are_ranges() {
    String ask = " assumed, ask plan-a/stage-1/fixation/plate-1/screws/track";
    String section = ", outerMm: 24, canalMm: {min: 17, max: 19}}";
    CaseText cortex =
        again(108, screws(", diameterMm: 5.5"))
            .at("/bone", "{sections: [{atMm: 10" + section + ", {atMm: 350" + section + "]}");
    assertThat(cortices(cortex)).isEqualTo("3–6" + ask);
    assertThat(cortices(again(108, screws(", diameterMm: {min: 4.4, max: 5.6}"))))
        .isEqualTo("0–6" + ask);
  }

  @Test
  void of_half_a_millimetre_more_is_half_where_the_core_is_thick() {
    // locking 5.0 on 4.35: 1 - (20.25 - 18.92) / (25 - 18.92) = 0.78; near 2 x 0.5 + 2 in fresh
    // bone
    String rows =
        "{at: [1], type: 'locking', diameterMm: 5.0, cortices: 2},"
            + " {at: [2, 7, 9], type: 'cortical', cortices: 2}";
    assertThat(cortices(again(108, rows))).isEqualTo("3 fact");
  }

  @Test
  void is_none_for_a_stripped_screw() {
    assertThat(cortices(again(112.5, screws(", state: 'stripped'")))).isEqualTo("0 fact");
  }

  @Test
  void in_one_cortex_of_an_old_hole_in_one_leaves_the_far_one_whole() {
    CaseText text =
        again(108, screws(""))
            .at(PLATE, "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 1}]}");
    // near cortex nothing, far cortex one each
    assertThat(cortices(text)).isEqualTo("3 fact");
    assertThat(cortices(text.at(STAGE_PLATE, "{surface: 'lateral'}"))).isEqualTo("3 fact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cortices: null, tipBeyondMm: 1                  | 6 fact
          cortices: null, tipBeyondMm: 0                  | 6 fact
          cortices: null, tipBeyondMm: -1                 | 3 fact
          cortices: null, tipBeyondMm: {min: -4, max: -1} | 3 fact
          cortices: null, tipBeyondMm: {min: -1, max: 1}  | 3–6 fact, ask op-1/fixation/plate-1/screws/cortices
          cortices: null, tipBeyondMm: {min: -1, max: 0}  | 3–6 fact, ask op-1/fixation/plate-1/screws/cortices
          cortices: 2, tipBeyondMm: {min: -1, max: 1}     | 3–6 fact, ask op-1/fixation/plate-1/screws/cortices
          """)
  void counts_the_far_cortex_where_the_tip_reaches_it(String tip, String reads) {
    String row = "{at: [1, 3, 5, 6, 8, 10], type: 'cortical', " + tip + "}";
    assertThat(cortices(CaseText.plated().at(PLATE, "{screws: [" + row + "]}"))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # both walls of a strut in the canal: 3 x (2 + 2)
          where: 'intramedullary', fromMm: 90, toMm: 270             | 12 fact
          # the one wall of a strut opposite the plate, within 45 degrees of straight across
          where: 'onlay', fromMm: 90, toMm: 270, surface: 'lateral'  | 9 fact
          where: 'onlay', fromMm: 90, toMm: 270, surface: 135        | 9 fact
          where: 'onlay', fromMm: 90, toMm: 270, surface: 136        | 6 fact
          where: 'onlay', fromMm: 90, toMm: 270, surface: 'medial'   | 6 fact
          # near holes at 108, 140, 172: the last alone goes through, 2 + 2 + 4
          where: 'intramedullary', fromMm: 150, toMm: 270            | 8 fact
          where: 'intramedullary', fromMm: 140, toMm: 270            | 10 fact
          where: 'onlay', fromMm: 90, toMm: 270                      | 6–9 assumed, ask op-1/fixation/plate-1/place
          where: 'intramedullary', fromMm: {min: 130, max: 145}, toMm: 270 | 8–10 assumed, ask op-1/fixation/plate-1/place
          """)
  void grows_by_the_walls_of_struts_that_the_screw_crosses(String strut, String reads) {
    assertThat(cortices(withStruts("", strut))).isEqualTo(reads);
  }

  @Test
  void grows_by_two_walls_at_the_most_and_not_on_the_far_side_of_a_short_screw() {
    String inside = "where: 'intramedullary', fromMm: 90, toMm: 270";
    String onlay = "where: 'onlay', fromMm: 90, toMm: 270, surface: 'lateral'";
    assertThat(cortices(withStruts("", inside, onlay))).isEqualTo("12 fact");
    assertThat(cortices(withStruts("cortices: 1", onlay))).isEqualTo("3 fact");
    assertThat(cortices(withStruts("cortices: 1", inside)))
        .isEqualTo("3–9 assumed, ask op-1/fixation/plate-1/place");
  }

  private static CaseText withStruts(String screw, String... struts) {
    StringBuilder all =
        new StringBuilder(
            "{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow', surface: 'medial',"
                + " holes: 10, place: {zoneBetweenHoles: [5, 6], firstHoleMm: 108}, screws: [{at:"
                + " [1, 3, 5, 6, 8, 10], type: 'cortical', "
                + (screw.isEmpty() ? "cortices: 2" : screw)
                + "}]}");
    for (int i = 0; i < struts.length; i++) {
      all.append(", {id: 'strut-" + i + "', kind: 'strut', " + struts[i] + "}");
    }
    return CaseText.plated().at("/operations/0", "{fixation: [" + all + "]}");
  }
}
