package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;

/** What a thread may keep where places are ranges: every exact case lies in the range. */
class ShareOfVagueTracksTest {

  /** A screw, old tracks and a bone, each of it more or less known. */
  record Known(Drill screw, List<Drill> older, Dimension outer, Dimension cortex) {

    Dimension left(boolean near) {
      return new ShareLeft(screw.track(), outer, cortex)
          .in(near, older.stream().map(Drill::old).toList());
    }
  }

  private static Dimension left(Drill screw, boolean near, Drill... older) {
    return new Known(screw, List.of(older), Drill.exactly(24), Drill.exactly(5)).left(near);
  }

  private static void isBetween(Dimension share, double min, double max) {
    assertThat(share.min()).isCloseTo(min, org.assertj.core.api.Assertions.within(0.01));
    assertThat(share.max()).isCloseTo(max, org.assertj.core.api.Assertions.within(0.01));
  }

  @Example
  void a_level_that_is_a_range_gives_the_worst_and_best_within_it() {
    // 0.639 at half the diameter, nothing left on the spot, all beyond 4.5 mm
    isBetween(left(Drill.at(100, 0), true, Drill.at(0, 0).level(102.25, 110)), 0.639, 1);
    isBetween(left(Drill.at(100, 0), true, Drill.at(0, 0).level(100, 102.25)), 0, 0.639);
    isBetween(left(Drill.at(100, 0), true, Drill.at(0, 0).level(97, 160)), 0, 1);
    isBetween(left(Drill.at(100, 0), true, Drill.at(0, 0).level(104.5, 160)), 1, 1);
    isBetween(left(Drill.at(0, 0).level(50, 100), true, Drill.at(100, 0)), 0, 1);
  }

  @Example
  void a_thin_old_track_is_worst_beside_the_core_not_in_it() {
    // 2.7 mm: nothing on the axis; most at 1.8 to 2 mm
    Dimension share = left(Drill.at(100, 0), true, Drill.at(0, 0).thick(2.7).level(97, 103));
    assertThat(share.min()).isLessThan(0.76);
    assertThat(share.max()).isEqualTo(1);
    Dimension around = left(Drill.at(100, 0), true, Drill.at(100, 0).thick(2.7).fromSomewhere());
    assertThat(around.min()).isLessThan(0.8);
    assertThat(around.max()).isEqualTo(1);
  }

  @Example
  void a_steep_old_track_from_an_unknown_side_may_come_out_in_the_new_one() {
    Drill old = Drill.at(100 - 24 * Math.tan(Math.toRadians(30)), 0).tilted(30).fromSomewhere();
    assertThat(left(Drill.at(100, 0), true, old).min()).isLessThan(0.7);
  }

  @Example
  void an_unknown_side_does_not_matter_where_levels_keep_them_apart() {
    isBetween(left(Drill.at(100, 0), true, Drill.at(104.5, 0).fromSomewhere()), 1, 1);
    isBetween(left(Drill.at(100, 0).fromSomewhere(), true, Drill.at(95.5, 0)), 1, 1);
    isBetween(left(Drill.at(100, 0).fromSomewhere(), false, Drill.at(100, 0)), 0, 1);
  }

  @Example
  void an_old_track_in_one_cortex_opens_the_side_it_came_from() {
    Drill screw = Drill.at(100, 0);
    Drill same = Drill.at(100, 0).reaching(Track.Reach.NEAR_CORTEX);
    Drill opposite = Drill.at(100, 180).reaching(Track.Reach.NEAR_CORTEX);
    isBetween(left(screw, true, same), 0, 0);
    isBetween(left(screw, false, same), 1, 1);
    isBetween(left(screw, true, opposite), 1, 1);
    isBetween(left(screw, false, opposite), 0, 0);
    isBetween(left(screw, false, same.level(99, 101)), 1, 1);
    isBetween(left(screw, true, opposite.level(99, 101)), 1, 1);
  }

  @Example
  void an_old_track_in_one_cortex_or_both_opens_its_own_side_for_certain() {
    Drill unsure = Drill.at(100, 0).reaching(Track.Reach.UNSURE);
    isBetween(left(Drill.at(100, 0), true, unsure), 0, 0);
    isBetween(left(Drill.at(100, 0), false, unsure), 0, 1);
    isBetween(left(Drill.at(100, 180), true, unsure), 0, 1);
    isBetween(left(Drill.at(100, 180), false, unsure), 0, 0);
  }

  @Example
  void a_track_that_may_be_gone_may_leave_all() {
    isBetween(left(Drill.at(100, 0), true, Drill.at(100, 0).perhapsGone()), 0, 1);
  }

  @Example
  void several_vague_tracks_take_together_what_each_may_take() {
    // 0.361 each at half the diameter
    Drill one = Drill.at(0, 0).level(102.25, 110);
    Drill two = Drill.at(0, 0).level(90, 97.75);
    isBetween(left(Drill.at(100, 0), true, one, two), 0.278, 1);
    isBetween(left(Drill.at(100, 0), true, one, Drill.at(97.75, 0)), 0.278, 0.639);
  }

  @Property(tries = 100)
  void knowing_more_never_leaves_the_range(
      @ForAll("vague") Known vague, @ForAll long seed, @ForAll boolean near) {
    SplittableRandom random = new SplittableRandom(seed);
    Known narrower = narrowed(vague, random, false);
    Known exact = narrowed(narrower, random, true);
    Dimension wide = vague.left(near);
    Dimension less = narrower.left(near);
    Dimension one = exact.left(near);
    assertThat(one.min()).as("%s in %s", exact, vague).isEqualTo(one.max());
    within(one, wide, exact, vague);
    within(one, less, exact, narrower);
    // two ranges by trial may differ by what is missed between the trials
    assertThat(less.min()).isGreaterThanOrEqualTo(wide.min() - 0.02);
    assertThat(less.max()).isLessThanOrEqualTo(wide.max() + 0.02);
  }

  private static void within(Dimension inner, Dimension outer, Known from, Known to) {
    assertThat(inner.min())
        .as("%s in %s of %s in %s", inner, outer, from, to)
        .isGreaterThanOrEqualTo(outer.min() - 1e-9);
    assertThat(inner.max())
        .as("%s in %s of %s in %s", inner, outer, from, to)
        .isLessThanOrEqualTo(outer.max() + 1e-9);
  }

  private static Known narrowed(Known known, SplittableRandom random, boolean toPoint) {
    List<Drill> older = new ArrayList<>();
    known.older().forEach(old -> older.add(narrowed(old, random, toPoint)));
    return new Known(
        narrowed(known.screw(), random, toPoint),
        older,
        narrowed(known.outer(), random, toPoint),
        narrowed(known.cortex(), random, toPoint));
  }

  private static Drill narrowed(Drill drill, SplittableRandom random, boolean toPoint) {
    boolean told = toPoint || random.nextBoolean();
    Drill known =
        drill.direction().isEmpty() && told
            ? new Drill(
                drill.level(),
                java.util.Optional.of(new Direction(30 * random.nextInt(12))),
                drill.tilt(),
                drill.diameter(),
                drill.core(),
                drill.reach(),
                drill.mayBeGone())
            : drill;
    Dimension level = narrowed(drill.level(), random, toPoint);
    Dimension diameter = narrowed(drill.diameter(), random, toPoint);
    Track.Reach reach =
        drill.reach() == Track.Reach.UNSURE && told
            ? random.nextBoolean() ? Track.Reach.NEAR_CORTEX : Track.Reach.BOTH_CORTICES
            : drill.reach();
    return known
        .level(level.min(), level.max())
        .thick(diameter.min(), diameter.max())
        .reaching(reach);
  }

  private static Dimension narrowed(Dimension range, SplittableRandom random, boolean toPoint) {
    double a = range.min() + (range.max() - range.min()) * random.nextDouble();
    double b = toPoint ? a : range.min() + (range.max() - range.min()) * random.nextDouble();
    return Drill.between(Math.min(a, b), Math.max(a, b));
  }

  @Provide
  Arbitrary<Known> vague() {
    return Combinators.combine(
            drills(List.of(4.5)),
            drills(List.of(2.7, 3.5, 4.5)).list().ofMinSize(1).ofMaxSize(3),
            Arbitraries.doubles().between(22, 26),
            Arbitraries.doubles().between(0, 3),
            Arbitraries.doubles().between(3, 6),
            Arbitraries.doubles().between(0, 1.5))
        .as(
            (screw, older, outer, more, wall, thicker) ->
                new Known(
                    screw.thick(screw.diameter().min()),
                    older,
                    Drill.between(outer, outer + more),
                    Drill.between(wall, wall + thicker)));
  }

  private Arbitrary<Drill> drills(List<Double> thick) {
    return Combinators.combine(
            Arbitraries.doubles().between(94, 103),
            Arbitraries.of(0.0, 0.0, 3.0, 30.0),
            Arbitraries.integers().between(-1, 11),
            Arbitraries.of(0.0, 0.0, 0.0, 12.0, -25.0),
            Arbitraries.of(thick),
            Arbitraries.of(0.0, 0.0, 0.8),
            Arbitraries.of(Track.Reach.values()))
        .as(
            (level, width, side, tilt, diameter, thicker, reach) -> {
              Drill drill =
                  Drill.at(level, side > 5 ? 5 * side : 30 * Math.max(0, side))
                      .level(level, level + width)
                      .tilted(tilt)
                      .thick(diameter, diameter + thicker)
                      .reaching(reach);
              return side < 0 ? drill.fromSomewhere() : drill;
            });
  }
}
