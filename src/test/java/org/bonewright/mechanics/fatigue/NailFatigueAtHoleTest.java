package org.bonewright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.NailHole;
import org.junit.jupiter.api.Test;

class NailFatigueAtHoleTest {

  private static final Material STEEL = Material.isotropic(193_000, 0.3);
  private static final HollowCircle BAR = HollowCircle.solid(10);

  private static MetalNail nail(double bolt) {
    return new MetalNail(
        STEEL,
        BAR,
        List.of(new MetalNail.Bolt(50, 0, STEEL, bolt, false, false, false)),
        List.of());
  }

  /**
   * A pull is raised at the edge of the hole; bending across it is not, and counts beside a pull.
   */
  @Test
  void beside_a_pull_the_worse_of_edge_and_side_counts() {
    NailHole hole = new NailHole(BAR, 5);
    double pull = 8000 / hole.netArea();
    double bent = 32 * 4000 / (Math.PI * 1000);
    double edge = Goodman.notch(hole.factor()) * pull;

    assertThat(edge).isGreaterThan(pull + bent);
    assertThat(NailFatigue.at(nail(4.7), new TubeCut(50, 8000, 4000, 0, 0)).alternating())
        .isCloseTo(edge / 2, within(1e-6));
    assertThat(NailFatigue.at(nail(4.7), new TubeCut(50, 800, 20_000, 0, 0)).alternating())
        .isCloseTo((pull / 10 + 5 * bent) / 2, within(1e-6));
  }

  @Test
  void a_bolt_as_thick_as_the_nail_leaves_no_hole_to_judge() {
    TubeCut cut = new TubeCut(50, 0, 0, 10_000, 0);
    assertThat(NailFatigue.at(nail(9.8), cut).alternating())
        .isCloseTo(16 * 10_000 / (Math.PI * 1000), within(1e-6));
  }

  @Test
  void pull_and_bending_towards_the_hole_meet_at_its_edge() {
    NailHole hole = new NailHole(BAR, 5);
    double along = 1000 / hole.netArea() + 10_000 * 5 / hole.netOpenSide();
    assertThat(NailFatigue.at(nail(4.7), new TubeCut(50, 1000, 0, 10_000, 0)).alternating())
        .isCloseTo(Goodman.notch(hole.factor()) * along / 2, within(1e-6));
  }
}
