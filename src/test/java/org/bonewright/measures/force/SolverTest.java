package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/** One construct under one set of assumptions: everything in the middle of its range. */
class SolverTest {

  private static final String ALL = "[1, 3, 5, 6, 8, 10]";

  /** A gap so wide that its ends never meet: everything grows with the load. */
  private static final Sketch WIDE = Sketches.of(Sketches.bridged(8, ALL));

  private static Solved solved(Sketch sketch, Loading... loads) {
    return new Solver(sketch, List.of(loads), BoneName.TIBIA, false)
        .under(Draw.MIDDLE)
        .orElseThrow();
  }

  private static Sketch pressed() {
    return Sketches.of(
        CaseText.plated()
            .at(
                "/operations/0",
                "{reduction: {gapNearMm: 0, gapFarMm: 0, contactPercent: 100}, compression:"
                    + " {method: 'lag-screw', prebent: 'yes'}}"));
  }

  @Test
  void over_a_wide_gap_all_movement_and_stress_grow_with_the_load_and_margins_fall() {
    Solved once = solved(WIDE, Sketches.load(1000, 20, 2));
    Solved twice = solved(WIDE, Sketches.load(2000, 40, 4));
    // movements are told to a micrometre
    assertThat(twice.near()).isCloseTo(2 * once.near(), within(0.002));
    assertThat(twice.far()).isCloseTo(2 * once.far(), within(0.002));
    assertThat(twice.most()).isCloseTo(2 * once.most(), within(0.002));
    assertThat(twice.shear()).isCloseTo(2 * once.shear(), within(0.002));
    assertThat(twice.strain()).isCloseTo(2 * once.strain(), withinPercentage(0.1));
    assertThat(twice.stress()).isCloseTo(2 * once.stress(), withinPercentage(0.1));
    assertThat(twice.use()).isCloseTo(2 * once.use(), withinPercentage(0.1));
    assertThat(twice.margin()).isCloseTo(once.margin() / 2, withinPercentage(0.1));
    assertThat(once.far()).isNotZero();
    assertThat(once.stress()).isPositive();
    assertThat(once.margin()).isBetween(1.0, 100.0);
  }

  @Test
  void strain_is_the_largest_movement_over_the_gap() {
    Solved wide = solved(WIDE, Sketches.load(100, 1, 0.2));
    assertThat(wide.strain()).isCloseTo(100 * wide.most() / 8, within(0.02));
    assertThat(wide.most()).isGreaterThanOrEqualTo(Math.abs(wide.near()));
    assertThat(wide.most()).isGreaterThanOrEqualTo(Math.abs(wide.far()));
    assertThat(solved(pressed(), Sketches.load(50, 0.5, 0)).strain()).isZero();
  }

  @Test
  void of_several_loads_the_one_counts_that_moves_strains_and_pulls_most() {
    Loading light = Sketches.load(50, 0.5, 0.1);
    Loading heavy = Sketches.load(200, 2, 0.4);
    Solved both = solved(WIDE, light, heavy);
    Solved alone = solved(WIDE, heavy);
    assertThat(both).isEqualTo(alone);
    assertThat(solved(WIDE, heavy, light)).isEqualTo(alone);
  }

  @Test
  void a_gap_touches_nowhere_and_ends_that_are_pressed_together_all_round() {
    assertThat(solved(WIDE, Sketches.load(100, 1, 0)).contact()).isZero();
    Solved closed = solved(pressed(), Sketches.load(100, 0, 0));
    assertThat(closed.contact()).isCloseTo(100, within(1e-9));
    // under a bending load beyond the moment that opens them less of the ring touches
    Solved bent = solved(pressed(), Sketches.load(10, 2 * closed.opening(), 0));
    assertThat(bent.contact()).isBetween(0.0, 99.0);
    // and of two loads the one that opens more
    assertThat(
            solved(pressed(), Sketches.load(100, 0, 0), Sketches.load(10, 2 * closed.opening(), 0))
                .contact())
        .isEqualTo(bent.contact());
  }

  @Test
  void only_what_is_pressed_together_has_a_moment_that_opens_it_and_a_steady_stress() {
    assertThat(solved(WIDE, Sketches.load(100, 1, 0)).opening()).isZero();
    assertThat(solved(pressed(), Sketches.load(100, 1, 0)).opening()).isPositive();
    assertThat(solved(WIDE, Sketches.load(100, 1, 0)).steady()).isCloseTo(0, within(1e-9));
  }

  @Test
  void metal_that_is_hardly_loaded_outlasts_union_a_hundredfold_and_no_more_is_told() {
    assertThat(solved(WIDE, Sketches.load(1, 0.01, 0)).life()).isEqualTo(100);
    assertThat(solved(WIDE, Sketches.load(1, 0.01, 0)).margin()).isEqualTo(100);
  }

  @Test
  void metal_that_breaks_at_once_lasts_a_hundredth_of_the_time_to_union() {
    assertThat(solved(WIDE, Sketches.load(2000, 60, 5)).life()).isEqualTo(0.01);
  }

  @Test
  void a_plate_has_no_stress_of_a_nail_and_a_nail_none_of_a_plate() {
    Solved plate = solved(WIDE, Sketches.load(100, 1, 0.2));
    assertThat(plate.nail()).isZero();
    assertThat(plate.bolt()).isZero();
    assertThat(plate.pin()).isZero();
    Solved nail = solved(Sketches.of(nailed()), Sketches.load(300, 3, 0.5));
    assertThat(nail.stress()).isZero();
    assertThat(nail.nail()).isPositive();
    assertThat(nail.bolt()).isPositive();
    assertThat(nail.use()).isPositive();
  }

  private static CaseText nailed() {
    return CaseText.nailed()
        .at("/operations/0", "{reduction: {gapNearMm: 8, gapFarMm: 8, contactPercent: 0}}")
        .at("/operations/0/fixation/0", "{entry: 'antegrade', lengthMm: 330}");
  }

  @Test
  void pins_of_a_fixator_bend_in_proportion_to_the_load() {
    Sketch fixator =
        Sketches.of(
            CaseText.plated()
                .at(
                    "/operations/0",
                    "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm:"
                        + " 8, gapFarMm: 8, contactPercent: 0}, fixation: ["
                        + Sketches.FIXATOR
                        + "]}"));
    double once = solved(fixator, Sketches.load(20, 0.2, 0)).pin();
    assertThat(once).isPositive();
    assertThat(solved(fixator, Sketches.load(40, 0.4, 0)).pin())
        .isCloseTo(2 * once, withinPercentage(0.5));
    assertThat(solved(fixator, Sketches.load(20, 0.2, 0), Sketches.load(40, 0.4, 0)).pin())
        .isCloseTo(2 * once, withinPercentage(0.5));
  }

  @Test
  void fragments_that_pivot_strain_the_line_wholly_and_leave_screws_no_margin() {
    Sketch pivots =
        Sketches.of(
            CaseText.plated()
                .at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}}")
                .at(
                    "/operations/0",
                    "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm:"
                        + " 2, gapFarMm: 2, contactPercent: 0}, fixation: [{id: 'plate-1', kind:"
                        + " 'plate', family: 'large-fragment-narrow', surface: 'medial', holes:"
                        + " 10, lengthMm: 160, place: {zoneBetweenHoles: [4, 7]}, screws: [{at:"
                        + " [3, 8], type: 'locking', cortices: 2}]}]}"));
    // bent open on the side of the plate they fold shut; both ends move by all that is told: 24 mm
    Solved folds = folded(pivots, 0, Sketches.load(2600, 40, 4));
    assertThat(folds.strain()).isEqualTo(100);
    assertThat(folds.margin()).isZero();
    assertThat(folds.contact()).isZero();
    assertThat(folds.far()).isEqualTo(-24);
    assertThat(folds.most()).isEqualTo(24);
    // twisted off they slide past each other, however little the gap opens
    Solved twists = folded(pivots, 0.5, Sketches.load(2600, 40, 60));
    assertThat(twists.most()).isLessThan(3);
    assertThat(twists.shear()).isEqualTo(24);
    assertThat(twists.strain()).isEqualTo(100);
    assertThat(twists.margin()).isZero();
    // a load that they bear beside one that parts them does not save them
    assertThat(folded(pivots, 0.5, Sketches.load(2600, 40, 4)).margin()).isEqualTo(100);
    assertThat(
            folded(pivots, 0.5, Sketches.load(2600, 40, 4), Sketches.load(2600, 40, 60)).margin())
        .isZero();
  }

  private static Solved folded(Sketch sketch, double side, Loading... loads) {
    return new Solver(sketch, List.of(loads), BoneName.TIBIA, false)
        .under(new Draw(Map.of(Assumption.SIDE, side)))
        .orElseThrow();
  }
}
