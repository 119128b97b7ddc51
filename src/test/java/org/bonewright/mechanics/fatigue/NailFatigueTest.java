package org.bonewright.mechanics.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.junit.jupiter.api.Test;

class NailFatigueTest {

  private static final Material STEEL = Material.isotropic(193_000, 0.3);

  /** One bolt at 50 mm, from the side that faces x. */
  private static final MetalNail NAIL =
      new MetalNail(
          STEEL,
          HollowCircle.solid(10),
          List.of(new MetalNail.Bolt(50, 0, STEEL, 4.7, false, false, false)),
          List.of());

  private static final double SOLID = 32 * 10_000 / (Math.PI * 1000);

  @Test
  void aSolidNailIsBentAsARoundBar() {
    NailFatigue found = NailFatigue.at(NAIL, new TubeCut(0, 0, 6000, 8000, 0));

    assertThat(found.range()).isCloseTo(SOLID, within(0.01));
    assertThat(found.alternating()).isCloseTo(SOLID / 2, within(0.01));
    assertThat(found.mean()).isCloseTo(SOLID / 2, within(0.01));
  }

  @Test
  void aHoleOnTheStretchedSideCostsMostOfTheStrength() {
    NailFatigue found = NailFatigue.at(NAIL, new TubeCut(50, 0, 0, 10_000, 0));

    // 5 mm of 10: the strip takes three quarters of the second moment, and its edge doubles the
    // rest.
    assertThat(found.range()).isBetween(3.5 * SOLID, 4.5 * SOLID);
    assertThat(found.alternating()).isBetween(3 * SOLID, 5 * SOLID);
  }

  @Test
  void aHoleInTheMiddleOfTheBendingCostsNothing() {
    NailFatigue found = NailFatigue.at(NAIL, new TubeCut(50, 0, 10_000, 0, 0));

    assertThat(found.range()).isCloseTo(SOLID, within(0.01));
    assertThat(found.alternating()).isCloseTo(SOLID / 2, within(0.01));
  }

  @Test
  void torsionJoinsByVonMises() {
    double shear = 16 * 5000 / (Math.PI * 1000);

    NailFatigue found = NailFatigue.at(NAIL, new TubeCut(0, 0, 0, 10_000, 5000));

    assertThat(found.range()).isCloseTo(Math.sqrt(SOLID * SOLID + 3 * shear * shear), within(0.01));
  }
}
