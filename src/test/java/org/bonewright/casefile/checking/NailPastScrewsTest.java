package org.bonewright.casefile.checking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.casefile.checking.Limits.PLATE;
import static org.bonewright.casefile.checking.Limits.assertSound;

import org.bonewright.casefile.reading.Problem;
import org.junit.jupiter.api.Test;

/** A nail where a plate with screws in holes 1 to 3 and 6 to 8 was put in before. */
class NailPastScrewsTest {

  private static final String NAIL = "/operations/1/fixation/0";

  private static Altered nailed(String fields) {
    return Altered.minimal()
        .with(
            "/operations/-",
            "{\"id\": \"op-2\", \"day\": 220, \"fixation\": [{\"id\": \"nail-1\","
                + " \"kind\": \"nail\""
                + fields
                + "}]}");
  }

  private static Altered removing(String removal) {
    return nailed("").with("/operations/1/removed", "[{\"of\": \"op-1/plate-1\"" + removal + "}]");
  }

  /** Holes 1, 2, 3 at 200, 216 and 232 mm, the others from 280 mm on. */
  private static Altered from200(String fields) {
    return nailed(fields).with(PLATE + "/place", "{\"firstHoleMm\": 200}");
  }

  private static void warns(Altered file, String screws) {
    assertThat(file.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.severity()).isEqualTo(Problem.Severity.WARNING);
              assertThat(problem.pointer().toString()).isEqualTo(NAIL);
              assertThat(problem.found()).contains("past " + screws + " of op-1/plate-1");
            });
  }

  @Test
  void is_doubted_for_every_screw_that_stays() {
    warns(nailed(""), "6 screws");
    warns(removing(", \"holes\": [1, 2, 3]"), "3 screws");
    assertSound(removing(", \"holes\": [1, 2, 3, 6, 7, 8]"));
    assertSound(removing(""));
  }

  @Test
  void is_believed_past_screws_that_cross_one_cortex() {
    String cortices = PLATE + "/screws/0/cortices";
    assertSound(nailed("").with(cortices, "1"));
    warns(nailed("").with(cortices, "{\"min\": 1, \"max\": 2}"), "6 screws");
    warns(nailed("").with(cortices, "2"), "6 screws");
  }

  @Test
  void from_above_may_end_before_screws_that_lie_farther_down() {
    // it may begin 30 mm below the landmark: 186 and 30 reach hole 2 at 216 mm
    warns(from200(", \"entry\": \"antegrade\", \"lengthMm\": 186"), "2 screws");
    warns(from200(", \"entry\": \"antegrade\", \"lengthMm\": 185.5"), "1 screw");
    warns(
        from200(", \"entry\": \"antegrade\", \"lengthMm\": {\"min\": 150, \"max\": 186}"),
        "2 screws");
    assertSound(from200(", \"entry\": \"antegrade\", \"lengthMm\": 169"));
    // 8 mm apart: 200 to 216 and 240 to 256 mm
    warns(
        from200(", \"entry\": \"antegrade\", \"lengthMm\": 210").with(PLATE + "/spacingMm", "8"),
        "4 screws");
  }

  @Test
  void meets_them_all_where_entry_length_or_place_are_not_told() {
    warns(from200(", \"entry\": \"retrograde\", \"lengthMm\": 186"), "6 screws");
    warns(from200(", \"lengthMm\": 186"), "6 screws");
    warns(from200(", \"entry\": \"antegrade\""), "6 screws");
    warns(nailed(", \"entry\": \"antegrade\", \"lengthMm\": 186"), "6 screws");
  }

  @Test
  void may_be_put_in_together_with_the_plate() {
    assertSound(
        Altered.minimal()
            .with("/operations/0/fixation/-", "{\"id\": \"nail-1\", \"kind\": \"nail\"}"));
  }
}
