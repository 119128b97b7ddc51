package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The zone lies at 179 to 181 mm, between holes 5 and 6 of ten. */
class ScrewTipTest {

  private static final String PLATE = "/operations/0/fixation/0";
  private static final String ASK = ", ask op-1/fixation/plate-1/screws/tipBeyondMm";

  private static CaseText screws(String... rows) {
    return CaseText.plated().at(PLATE, "{screws: [" + String.join(", ", rows) + "]}");
  }

  private static String row(String holes, String more) {
    return "{at: " + holes + ", type: 'cortical'" + more + "}";
  }

  @Nested
  class Stated {

    @Test
    void too_short_are_counted_on_the_side_with_more_of_them() {
      CaseText text =
          screws(row("[1, 6, 8]", ", tipBeyondMm: -1"), row("[3, 5, 10]", ", tipBeyondMm: 1.5"));
      assertThat(Taken.of("screws-too-short", text)).isEqualTo("2 fact");
      assertThat(Taken.of("screw-tip-farthest", text)).isEqualTo("1.5 fact");
      assertThat(Taken.of("screw-tips-recorded", text)).isEqualTo("yes record");
    }

    @Test
    void flush_with_the_far_cortex_is_not_too_short() {
      CaseText text = screws(row("[1, 3, 6, 8]", ", tipBeyondMm: 0"));
      assertThat(Taken.of("screws-too-short", text)).isEqualTo("0 fact");
    }

    @Test
    void a_range_or_a_screw_not_recorded_leaves_it_open() {
      CaseText text =
          screws(
              row("[1]", ", tipBeyondMm: {min: -1, max: 3}"),
              row("[3]", ""),
              row("[6, 8]", ", tipBeyondMm: 2"));
      assertThat(Taken.of("screws-too-short", text)).isEqualTo("0–2 fact" + ASK);
      assertThat(Taken.of("screw-tip-farthest", text)).isEqualTo("2–40 fact" + ASK);
    }

    @Test
    void a_second_plate_whose_screws_are_not_told_may_hold_one_that_is_too_short_or_longer() {
      CaseText text =
          CaseText.plated()
              .at(
                  "/operations/0",
                  """
                  {fixation: [
                    {id: 'plate-1', kind: 'plate', lengthMm: 160, holes: 10,
                      place: {zoneBetweenHoles: [5, 6]},
                      screws: [{at: [1, 3, 6, 8], type: 'cortical', tipBeyondMm: 2}]},
                    {id: 'plate-2', kind: 'plate', lengthMm: 100, holes: 6}]}
                  """);
      assertThat(Taken.of("screws-too-short", text)).isEqualTo("unknown" + ASK);
      assertThat(Taken.of("screw-tip-farthest", text)).isEqualTo("2–40 fact" + ASK);
    }

    @Test
    void a_screw_meant_for_one_cortex_is_left_out() {
      CaseText text =
          screws(
              row("[1, 6]", ", tipBeyondMm: 1"), row("[3, 8]", ", cortices: 1, tipBeyondMm: -15"));
      assertThat(Taken.of("screws-too-short", text)).isEqualTo("0 fact");
      CaseText alone = screws(row("[1, 6]", ", cortices: 1, tipBeyondMm: -15"));
      assertThat(Taken.of("screw-tips-recorded", alone)).isEqualTo("no record");
      assertThat(Taken.of("screws-too-short", alone))
          .isEqualTo("none: no plate screw meant for both cortices");
    }
  }

  @Nested
  class FromTheLength {

    /** Bone 24 mm wide from end to end, plate 4 mm thick: 28 mm to the far side. */
    private static CaseText lengths(String length, String more) {
      return screws(row("[1, 3, 5, 6, 8, 10]", ", lengthMm: " + length + more))
          .at(PLATE, "{thicknessMm: 4}")
          .at("/bone", "{sections: [{atMm: 50, outerMm: 24}, {atMm: 300, outerMm: 24}]}");
    }

    @ParameterizedTest(name = "{0} mm {1}: {2} short, tip {3}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            27  |                | 3 fact     | -1.5–-0.5
            28  |                | 0–3        | -0.5–0.5
            30  |                | 0 fact     | 1.5–2.5
            # 28 / cos 20° = 29.797
            30  | , tiltDeg: 20  | 0–3        | -0.297–0.703
            30  | , tiltDeg: -20 | 0–3        | -0.297–0.703
            """)
    void the_tip_is_what_plate_and_bone_leave(
        String length, String more, String shortOnes, String tip) {
      CaseText text = lengths(length, more == null ? "" : more);
      assertThat(Taken.of("screws-too-short", text))
          .startsWith(shortOnes.replace(" fact", " assumed"));
      assertThat(Taken.of("screw-tip-farthest", text)).isEqualTo(tip + " assumed" + ASK);
    }

    @Test
    void a_plate_that_stands_off_takes_away_from_it() {
      // 30 - (28 + 0 to 1), half a millimetre either way
      CaseText text = lengths("30", "").at(PLATE, "{standOffMm: 1}");
      assertThat(Taken.of("screw-tip-farthest", text)).isEqualTo("0.5–2.5 assumed" + ASK);
    }

    @Test
    void bone_not_measured_on_both_sides_of_the_screw_tells_nothing() {
      CaseText text = lengths("30", "").at("/bone", "{sections: [{atMm: 180, outerMm: 24}]}");
      assertThat(Taken.of("screw-tips-recorded", text)).isEqualTo("no record");
      assertThat(Taken.of("screws-too-short", text)).isEqualTo("0–3 fact" + ASK);
    }
  }

  @Test
  void without_a_plate_there_is_none() {
    assertThat(Taken.of("screw-tips-recorded", CaseText.nailed())).isEqualTo("no record");
    assertThat(Taken.of("screws-too-short", CaseText.nailed()))
        .isEqualTo("none: no plate in place");
    assertThat(Taken.of("screw-tip-farthest", CaseText.plated().at(PLATE, "{screws: null}")))
        .isEqualTo("unknown" + ASK);
  }
}
