package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bonewright.bone.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DrawsTest {

  private static final List<Draw> ALL = Draws.all();

  private static double[] places(Assumption assumption) {
    return ALL.stream().mapToDouble(draw -> draw.place(assumption)).toArray();
  }

  @Test
  void there_are_two_hundred_and_always_the_same_ones() {
    assertThat(ALL).hasSize(200).hasSize(Draws.NUMBER).doesNotHaveDuplicates();
    assertThat(Draws.all()).isSameAs(ALL);
    // Written down, so that a change of the sequence is seen: readings would change with it.
    assertThat(ALL.get(0).place(Assumption.LOAD)).isCloseTo(0.349609375, within(1e-12));
    assertThat(ALL.get(199).place(Assumption.TWIST)).isCloseTo(0.8850124599501601, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource
  void each_eighth_of_a_range_holds_its_part_of_them(Assumption assumption) {
    double[] places = places(assumption);
    for (int eighth = 0; eighth < 8; eighth++) {
      double from = eighth / 8.0;
      assertThat(Arrays.stream(places).filter(at -> at >= from && at < from + 0.125).count())
          .as("%s from %s", assumption, from)
          .isBetween(20L, 30L);
    }
    assertThat(Arrays.stream(places).boxed()).allMatch(place -> place >= 0 && place < 1);
  }

  @ParameterizedTest
  @EnumSource
  void the_mean_of_a_range_is_its_middle(Assumption assumption) {
    assertThat(mean(places(assumption))).isCloseTo(0.5, within(0.02));
  }

  @Test
  void what_matters_most_does_not_go_together() {
    List<Assumption> first = List.of(Assumption.values()).subList(0, 6);
    for (Assumption one : first) {
      for (Assumption other : first) {
        double together = one == other ? 0 : correlation(places(one), places(other));
        assertThat(together).as("%s with %s", one, other).isBetween(-0.1, 0.1);
      }
    }
  }

  private static double correlation(double[] one, double[] other) {
    return covariance(one, other) / Math.sqrt(covariance(one, one) * covariance(other, other));
  }

  private static double covariance(double[] one, double[] other) {
    double meanOne = mean(one);
    double meanOther = mean(other);
    return IntStream.range(0, one.length)
        .mapToDouble(i -> (one[i] - meanOne) * (other[i] - meanOther))
        .sum();
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  @Test
  void a_place_is_a_share_of_a_range() {
    Draw draw = new Draw(Map.of(Assumption.GAP, 0.25));
    Dimension range = Dimension.assumed(2, 6, "test");
    assertThat(draw.in(range, Assumption.GAP)).isEqualTo(3);
    assertThat(draw.between(6, 2, Assumption.GAP)).isEqualTo(5);
    assertThat(draw.in(Dimension.assumed(7, 7, "test"), Assumption.GAP)).isEqualTo(7);
  }

  @ParameterizedTest
  @EnumSource
  void what_is_not_told_lies_half_way(Assumption assumption) {
    assertThat(new Draw(Map.of()).place(assumption)).isEqualTo(0.5);
    assertThat(Draw.MIDDLE.place(assumption)).isEqualTo(0.5);
  }
}
