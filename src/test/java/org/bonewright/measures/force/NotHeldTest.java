package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** What the numbers say of a construct that does not hold the bone. */
final class NotHeldTest {

  private static final String OPEN =
      "{concept: 'relative', compression: {method: 'none'},"
          + " reduction: {gapNearMm: 2, gapFarMm: 2, contactPercent: 0}}";

  private static CaseText screws(String rows) {
    return CaseText.plated()
        .at("/operations/0", OPEN)
        .at(
            "/operations/0",
            "{fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',"
                + " surface: 'medial', holes: 10, lengthMm: 160,"
                + " place: {zoneBetweenHoles: [5, 6]}, screws: "
                + rows
                + "}]}");
  }

  private static Reading.Sampled sampled(String measure, CaseText text) {
    return (Reading.Sampled) Taken.reading(measure, Taken.subject(text.file(), "op-1"));
  }

  private static CaseText overAZone(String rows) {
    return screws(rows)
        .at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}}")
        .at("/operations/0/fixation/0", "{place: {zoneBetweenHoles: [4, 7]}}");
  }

  @Test
  void fragments_that_tilt_about_their_only_screws_until_they_meet_strain_the_line_wholly() {
    assertThat(sampled("gap-strain", screws("[{at: [4, 7], type: 'locking', cortices: 2}]")).low())
        .isGreaterThanOrEqualTo(100);
  }

  @Test
  void fragments_that_pivot_about_their_only_screws_leave_no_strain_that_suits() {
    CaseText pivots = overAZone("[{at: [3, 8], type: 'locking', cortices: 2}]");

    assertThat(sampled("gap-strain", pivots).low()).isEqualTo(100);
    assertThat(sampled("screw-pull-margin", pivots).high()).isZero();
    assertThat(sampled("contact-under-load", pivots).high()).isZero();
  }

  @Test
  void a_plate_gains_no_life_by_screws_that_slip_before_the_load_is_borne() {
    CaseText slips =
        overAZone("[{at: [1, 3, 8, 10], type: 'cortical', cortices: 2, diameterMm: 1.5}]");
    CaseText holds = overAZone("[{at: [1, 3, 8, 10], type: 'locking', cortices: 2}]");

    assertThat(sampled("gap-strain", slips).low()).isEqualTo(100);
    assertThat(sampled("metal-life-over-union", slips).high())
        .isLessThanOrEqualTo(sampled("metal-life-over-union", holds).high());
    assertThat(sampled("plate-stress-range", slips).low())
        .isGreaterThan(0.5 * sampled("plate-stress-range", holds).low());
  }

  @Test
  void the_number_shown_lies_within_its_likely_range() {
    CaseText any = screws("[{at: [2, 4, 7, 9], type: 'locking', cortices: 2}]");
    for (String measure : List.of("gap-strain", "far-cortex-movement", "gap-movement")) {
      Reading.Sampled read = sampled(measure, any);
      assertThat(read.nominal()).as(measure).isBetween(read.low(), read.high());
    }
  }

  @Test
  void screws_that_reach_no_cortex_hold_nothing() {
    CaseText none = screws("[{at: [2, 4, 7, 9], type: 'locking', cortices: 0}]");
    assertThat(Taken.of("gap-strain", none, "op-1")).startsWith("unknown, ask op-1/fixation");
  }
}
