package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.mechanics.construct.Load;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A load of the body, turned into forces and moments about the first plate. */
class LoadingTest {

  private static Loading bending(Optional<Double> tension, double spread) {
    return new Loading(
        Dimension.assumed(800, 1200, ""),
        Dimension.assumed(20, 40, ""),
        Dimension.assumed(2, 6, ""),
        tension,
        spread);
  }

  @Test
  void presses_bends_and_twists_by_the_place_of_the_load_in_its_range() {
    Load middle = bending(Optional.empty(), 0).under(Draw.MIDDLE, Optional.of(90.0));
    assertThat(middle.axial()).isEqualTo(-1000);
    assertThat(Math.hypot(middle.bendingX(), middle.bendingY())).isCloseTo(30_000, within(1e-6));
    assertThat(middle.torque()).isEqualTo(4000);
    Load least =
        bending(Optional.empty(), 0)
            .under(new Draw(Map.of(Assumption.LOAD, 0.0)), Optional.of(90.0));
    assertThat(least.axial()).isEqualTo(-800);
    assertThat(least.torque()).isEqualTo(2000);
  }

  @Test
  void twists_either_way_round() {
    assertThat(twist(0.49)).isEqualTo(-4000);
    assertThat(twist(0.5)).isEqualTo(4000);
  }

  private static double twist(double place) {
    return bending(Optional.empty(), 0)
        .under(new Draw(Map.of(Assumption.TWIST, place)), Optional.empty())
        .torque();
  }

  @ParameterizedTest(name = "tension at {0}, plate at {1}, spread {2}, place {3}: {4} degrees off")
  @CsvSource({
    // the side under tension lies a quarter turn from the plate
    "90, 0, 0, 0.5, 90",
    "180, 0, 0, 0.5, 180",
    "180, 90, 0, 0.5, 90",
    // as far as 20 degrees off on either side
    "90, 0, 20, 0, 70",
    "90, 0, 20, 1, 110",
    "90, 0, 20, 0.75, 100"
  })
  void bends_open_the_side_under_tension(
      double tension, double facing, double spread, double place, double degrees) {
    Load load =
        bending(Optional.of(tension), spread)
            .under(new Draw(Map.of(Assumption.SIDE, place)), Optional.of(facing));
    at(load, degrees);
  }

  @ParameterizedTest(name = "place {0}: {1} degrees off")
  @CsvSource({"0.5, 180", "0, 0", "0.25, 90", "0.75, 270"})
  void bends_open_any_side_where_none_is_told_in_the_middle_the_one_opposite_the_plate(
      double place, double degrees) {
    Draw draw = new Draw(Map.of(Assumption.SIDE, place));
    at(bending(Optional.empty(), 0).under(draw, Optional.of(30.0)), degrees);
    at(bending(Optional.of(10.0), 0).under(draw, Optional.empty()), degrees);
  }

  private static void at(Load load, double degrees) {
    double turned = Math.toRadians(degrees);
    assertThat(load.bendingX()).isCloseTo(30_000 * Math.sin(turned), within(1e-6));
    assertThat(load.bendingY()).isCloseTo(-30_000 * Math.cos(turned), within(1e-6));
  }
}
