package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;
import org.junit.jupiter.api.Test;

class OpeningTest {

  private static final Dimension OUTER = new Dimension(20, 20, false, "");

  private static Opening at(double min, double max, double degrees) {
    return new Opening(
        new Dimension(min, max, false, ""), Optional.of(new Direction(degrees)), true);
  }

  @Test
  void distances_are_taken_along_and_across_the_bone() {
    Opening here = at(100, 100, 0);
    Opening there = at(103, 103, 90);
    assertThat(here.along(there).middle()).isEqualTo(3);
    // 20 x sin 45 = 14.14; root of 9 + 200 = 14.46
    assertThat(here.across(there, OUTER).middle()).isCloseTo(14.142, within(0.001));
    assertThat(here.centres(there, OUTER).middle()).isCloseTo(14.457, within(0.001));
  }

  @Test
  void levels_that_overlap_may_be_the_same() {
    Dimension along = at(100, 106, 0).along(at(104, 105, 0));
    assertThat(along.min()).isZero();
    assertThat(along.max()).isEqualTo(5);
  }

  @Test
  void an_unknown_surface_lies_anywhere_across() {
    Opening unknown = new Opening(new Dimension(100, 100, false, ""), Optional.empty(), true);
    Dimension across = unknown.across(at(100, 100, 0), OUTER);
    assertThat(across.min()).isZero();
    assertThat(across.max()).isEqualTo(20);
    assertThat(across.assumed()).isTrue();
  }

  @Test
  void a_tilted_track_comes_out_farther_on_the_thicker_the_bone_is() {
    Track track = Drill.at(100, 30).tilted(45).track();
    List<Opening> open = Opening.of(track, new Dimension(20, 24, false, ""));
    // tan 45 = 1; then less steep, 1 in 2
    Track flat = Drill.at(100, 30).tilted(Math.toDegrees(Math.atan(0.5))).track();
    Dimension out = Opening.of(flat, new Dimension(20, 24, false, "")).get(1).level();
    assertThat(out.min()).isCloseTo(110, within(1e-9));
    assertThat(out.max()).isCloseTo(112, within(1e-9));
    assertThat(open.get(1).level().min()).isCloseTo(120, within(1e-9));
    assertThat(open.get(1).level().max()).isCloseTo(124, within(1e-9));
    assertThat(open.get(1).direction().orElseThrow().degrees()).isEqualTo(210);
    Track back = Drill.at(100, 30).tilted(-45).track();
    Dimension other = Opening.of(back, new Dimension(20, 24, false, "")).get(1).level();
    assertThat(other.min()).isCloseTo(76, within(1e-9));
    assertThat(other.max()).isCloseTo(80, within(1e-9));
  }

  @Test
  void a_distance_is_assumed_where_a_level_or_the_width_that_counts_is() {
    Opening here = at(100, 100, 0);
    Opening assumed =
        new Opening(Dimension.assumed(103, 103, ""), Optional.of(new Direction(0)), true);
    Dimension usual = Dimension.assumed(20, 20, "");
    assertThat(here.centres(at(103, 103, 90), OUTER).assumed()).isFalse();
    assertThat(here.centres(assumed, OUTER).assumed()).isTrue();
    assertThat(assumed.centres(here, OUTER).assumed()).isTrue();
    assertThat(here.centres(at(103, 103, 90), usual).assumed()).isTrue();
    // on one line along the bone its width does not count
    assertThat(here.centres(at(103, 103, 0), usual).assumed()).isFalse();
  }
}
