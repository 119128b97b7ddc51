package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class HoldOutTest {

  @Test
  void a_pull_in_the_middle_is_shared_by_all() {
    HoldOut row = new HoldOut(List.of(0.0, 20.0, 40.0), List.of(1000.0, 1000.0, 1000.0));
    assertThat(row.sequential(20).get(0)).isCloseTo(3000, within(1e-9));
    assertThat(row.group(20)).isCloseTo(3000, within(1e-9));
  }

  @Test
  void a_pull_beyond_the_end_unzips_the_row() {
    HoldOut row = new HoldOut(List.of(0.0, 20.0, 40.0), List.of(1500.0, 1500.0, 1500.0));
    // By hand: share of the first screw 1/3 + 20 * 45 / 800 = 1.4583.
    assertThat(row.sequential(-25).get(0)).isCloseTo(1500 / (1.0 / 3 + 900.0 / 800), within(1e-9));
    // Then two screws at 20 and 40: share 1/2 + 10 * 55 / 200 = 3.25.
    assertThat(row.sequential(-25).get(1)).isCloseTo(1500 / 3.25, within(1e-9));
    assertThat(row.unzips(-25)).isTrue();
    assertThat(row.holds(-25)).isCloseTo(row.sequential(-25).get(0), within(1e-9));
  }

  @Test
  void two_screws_as_a_block_are_a_lever() {
    HoldOut row = new HoldOut(List.of(0.0, 20.0), List.of(1000.0, 1000.0));
    // About the far screw: 1000 * 20 = P * 30.
    assertThat(row.group(-10)).isCloseTo(1000 * 20 / 30.0, within(1e-9));
  }

  @Test
  void one_screw_balances_only_a_pull_on_itself() {
    HoldOut one = new HoldOut(List.of(5.0), List.of(800.0));
    assertThat(one.sequential(5)).containsExactly(800.0);
    assertThat(one.sequential(6)).isEmpty();
    assertThat(one.holds(6)).isZero();
    assertThat(one.group(6)).isZero();
  }

  @Property(tries = 200)
  void the_first_screw_never_gives_later_than_the_block(
      @ForAll @Size(min = 2, max = 6) List<@DoubleRange(min = 200, max = 3000) Double> capacities,
      @ForAll @DoubleRange(min = -60, max = 160) double load) {
    List<Double> at =
        java.util.stream.IntStream.range(0, capacities.size()).mapToObj(i -> 18.0 * i).toList();
    HoldOut row = new HoldOut(at, capacities);
    double first = row.sequential(load).get(0);
    boolean pushed = presses(at, load, first, capacities);
    assertThat(first <= row.group(load) + 1e-6 || pushed).isTrue();
  }

  @Property(tries = 200)
  void a_screw_more_never_lowers_what_a_symmetric_row_bears_in_its_middle(
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 4, max = 90) Double> places,
      @ForAll @DoubleRange(min = 0, max = 90) double more,
      @ForAll @DoubleRange(min = 200, max = 3000) double capacity) {
    List<Double> at = new java.util.ArrayList<>();
    places.forEach(place -> at.addAll(List.of(-place, place)));
    List<Double> longer = new java.util.ArrayList<>(at);
    longer.addAll(more == 0 ? List.of(0.0) : List.of(-more, more));
    HoldOut row = new HoldOut(at, java.util.Collections.nCopies(at.size(), capacity));
    HoldOut added = new HoldOut(longer, java.util.Collections.nCopies(longer.size(), capacity));
    assertThat(added.holds(0)).isGreaterThan(row.holds(0));
    assertThat(added.group(0)).isGreaterThan(row.group(0));
  }

  @Property(tries = 300)
  void a_screw_more_never_lowers_what_a_block_bears_wherever_it_is_pulled(
      @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 200, max = 3000) Double> capacities,
      @ForAll @DoubleRange(min = -30, max = 150) double more,
      @ForAll @DoubleRange(min = 200, max = 3000) double capacity,
      @ForAll @DoubleRange(min = -60, max = 160) double load) {
    List<Double> at = new java.util.ArrayList<>();
    capacities.forEach(one -> at.add(18.0 * at.size()));
    double before = new HoldOut(at, capacities).group(load);
    List<Double> longer = new java.util.ArrayList<>(at);
    List<Double> stronger = new java.util.ArrayList<>(capacities);
    longer.add(more);
    stronger.add(capacity);
    assertThat(new HoldOut(longer, stronger).group(load))
        .isGreaterThanOrEqualTo(before * (1 - 1e-9));
  }

  /** A screw that is pressed cannot strip, but the block counts it both ways. */
  private static boolean presses(
      List<Double> at, double load, double pull, List<Double> capacities) {
    double mean = at.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double spread = at.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
    for (int i = 0; i < at.size(); i++) {
      double share = 1.0 / at.size() + (at.get(i) - mean) * (load - mean) / spread;
      if (share * pull < -capacities.get(i)) {
        return true;
      }
    }
    return false;
  }
}
