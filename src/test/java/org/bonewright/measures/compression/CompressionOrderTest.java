package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line lies between holes 5 and 6; compression by eccentric screws. */
class CompressionOrderTest {

  private static final String ID = "compression-order";
  private static final String ASK = "unknown, ask op-1/compression/beforeLocking";
  private static final String ASK_ORDER = "unknown, ask op-1/fixation/plate-1/screws/order";

  private static CaseText screws(String rows) {
    return CaseText.plated().at("/operations/0/fixation/0", "{screws: [" + rows + "]}");
  }

  private static String row(String holes, String type, int order) {
    return "{at: [" + holes + "], type: '" + type + "', order: " + order + "}";
  }

  private static CaseText stated(CaseText text, String compression) {
    return text.at("/operations/0/compression", "{" + compression + "}");
  }

  private static final CaseText LOCKED = screws("{at: [1, 10], type: 'locking'}");

  @Test
  void is_as_stated_where_compression_came_before_the_first_locking_screw() {
    assertThat(Taken.of(ID, stated(LOCKED, "beforeLocking: 'yes'")))
        .isEqualTo("compressed-first fact");
  }

  @Test
  void is_not_known_where_nothing_is_recorded() {
    assertThat(Taken.of(ID, LOCKED)).isEqualTo(ASK);
    assertThat(Taken.of(ID, stated(LOCKED, "beforeLocking: 'unknown'"))).isEqualTo(ASK);
  }

  @Test
  void one_side_may_have_been_locked_first_so_that_no_is_not_enough() {
    assertThat(Taken.of(ID, stated(LOCKED, "beforeLocking: 'no'"))).isEqualTo(ASK_ORDER);
  }

  @Test
  void there_is_none_where_one_side_is_not_locked() {
    assertThat(Taken.of(ID, CaseText.plated()))
        .isEqualTo("none: no locking screws on both sides of the line");
  }

  @ParameterizedTest(name = "near locked {0}th, far locked {1}th, conventional {2}th: {3}")
  @CsvSource({
    "2, 3, 1, compressed-first fact",
    "1, 3, 2, compressed-first fact",
    "3, 1, 2, compressed-first fact",
    "1, 2, 3, locked-first fact",
    "1, 2, 2, 'unknown, ask op-1/compression/beforeLocking'"
  })
  void eccentric_screws_are_among_the_conventional_ones(
      int near, int far, int conventional, String reads) {
    CaseText text =
        screws(
            row("1", "locking", near)
                + ","
                + row("10", "locking", far)
                + ","
                + row("3, 5, 6, 8", "cortical", conventional));
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void conventional_screws_before_and_after_locking_leave_it_open() {
    CaseText text =
        screws(
            row("3", "cortical", 1)
                + ","
                + row("1, 10", "locking", 2)
                + ","
                + row("8", "cortical", 3));
    assertThat(Taken.of(ID, text)).isEqualTo(ASK);
    assertThat(Taken.of(ID, stated(text, "beforeLocking: 'no'"))).isEqualTo(ASK_ORDER);
  }

  @Test
  void a_device_has_pulled_before_the_second_fragment_was_screwed() {
    CaseText apart = screws(row("1, 3", "locking", 1) + "," + row("8, 10", "locking", 2));
    CaseText mixed = screws(row("1, 8", "locking", 1) + "," + row("3, 10", "locking", 2));
    for (String method : List.of("method: 'tension-device'", "method: 'clamp'")) {
      assertThat(Taken.of(ID, stated(apart, method))).isEqualTo("compressed-first fact");
      assertThat(Taken.of(ID, stated(mixed, method))).isEqualTo(ASK);
    }
  }

  @Test
  void a_lag_screw_is_not_told_by_the_order_of_plate_screws() {
    CaseText apart = screws(row("1, 3", "locking", 1) + "," + row("8, 10", "locking", 2));
    assertThat(Taken.of(ID, stated(apart, "method: 'lag-screw'"))).isEqualTo(ASK);
  }

  @Test
  void the_place_of_the_plate_is_asked_for() {
    assertThat(Taken.of(ID, LOCKED.at("/operations/0/fixation/0", "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
  }
}
