package org.bonewright.mechanics.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.mechanics.section.Give;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;
import org.junit.jupiter.api.Test;

/**
 * The bending test of plates of ASTM F382 (formula from memory): two supports, two loading rollers
 * between them. Bending structural stiffness is (2 h + 3 a) K h² / 12, with h from a support to the
 * next roller, a between the rollers, and K the load over the movement of the rollers. Half of the
 * plate is modelled, held in the middle, where it stays level.
 */
class FourPointBendingTest {

  private static final Material STEEL = Material.isotropic(193_000, 0.3);
  private static final Rectangle PLATE = new Rectangle(13.5, 4.5);
  private static final double H = 60;
  private static final double A = 80;
  private static final double LOAD = 500;

  private static double structuralStiffness(List<Beams.Soft> holes) {
    Vector middle = new Vector(0, 0, 0);
    Vector roller = new Vector(0, 0, A / 2);
    Vector support = new Vector(0, 0, A / 2 + H);
    Vector away = new Vector(1, 0, 0);
    Frame frame = new Frame();
    frame.node(middle);
    frame.node(roller);
    frame.node(support);
    frame.link(Beams.link(0, 1, middle, roller, away, List.of(piece(A / 2)), holes));
    frame.link(Beams.link(1, 2, roller, support, away, List.of(piece(H)), List.of()));
    SolvedFrame solved = frame.hold(0).orElseThrow();
    Vector half = new Vector(LOAD / 2, 0, 0);
    Movements moved =
        solved.under(
            solved
                .loads()
                .add(1, half.times(-1), new Vector(0, 0, 0))
                .add(2, half, new Vector(0, 0, 0)));
    double stiffness = LOAD / (moved.shift(2).x() - moved.shift(1).x());
    return (2 * H + 3 * A) * stiffness * H * H / 12;
  }

  private static Beams.Piece piece(double length) {
    return new Beams.Piece(length, PLATE.of(STEEL));
  }

  @Test
  void a_plate_without_holes_shows_modulus_times_second_moment() {
    double bent = STEEL.young() * PLATE.weak();
    assertThat(structuralStiffness(List.of())).isCloseTo(bent, within(0.01 * bent));
  }

  @Test
  void a_hole_between_the_rollers_takes_off_what_it_gives() {
    double kink = 1e-7;
    double without = structuralStiffness(List.of());
    double with = structuralStiffness(List.of(new Beams.Soft(20, new Give(0, 0, kink, 0))));
    // Two holes, one on each half, turn by M · kink each; the rollers sink by that times h.
    double moment = LOAD / 2 * H;
    double sinks = moment * kink * H;
    double before = (2 * H + 3 * A) * H * H / 12 * LOAD / without;
    assertThat((2 * H + 3 * A) * H * H / 12 * LOAD / with)
        .isCloseTo(before + sinks, within(1e-3 * sinks));
  }
}
