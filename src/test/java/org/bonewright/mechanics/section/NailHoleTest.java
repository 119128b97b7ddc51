package org.bonewright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class NailHoleTest {

  @Test
  void aThinHoleTakesAStripFromWallToWall() {
    HollowCircle nail = new HollowCircle(10, 6);
    NailHole hole = new NailHole(nail, 0.1);

    assertThat(nail.area() - hole.netArea()).isCloseTo(0.1 * (10 - 6), within(0.001));
    assertThat(nail.weak() - hole.netOpenSide()).isCloseTo(0.1 * (1000 - 216) / 12.0, within(0.01));
  }

  /** The strip of a full circle: the integral of (R² − x²)^1.5, in closed form. */
  @Test
  void aWideHoleInAFullNailLeavesWhatTheIntegralOfTheStripLeaves() {
    double r = 5;
    double x = 2.5;
    double root = Math.sqrt(r * r - x * x);
    double quarter =
        x * root * root * root / 4 + 3 * r * r / 8 * (x * root + r * r * Math.asin(x / r));
    double strip = 4.0 / 3 * quarter;

    NailHole hole = new NailHole(HollowCircle.solid(10), 5);

    assertThat(hole.netOpenSide())
        .isCloseTo(HollowCircle.solid(10).weak() - strip, within(0.001 * strip));
  }

  @Property
  void aWiderHoleNeverLeavesMore(
      @ForAll @DoubleRange(min = 0.5, max = 6) double one,
      @ForAll @DoubleRange(min = 0.5, max = 6) double other,
      @ForAll @DoubleRange(min = 0, max = 7) double bore) {
    HollowCircle nail = new HollowCircle(10, bore);
    NailHole small = new NailHole(nail, Math.min(one, other));
    NailHole wide = new NailHole(nail, Math.max(one, other));

    assertThat(wide.netArea()).isLessThanOrEqualTo(small.netArea() + 1e-9).isPositive();
    assertThat(wide.netOpenSide()).isLessThanOrEqualTo(small.netOpenSide() + 1e-6).isPositive();
  }

  @Test
  void aHoleAsWideAsTheNailIsRefused() {
    HollowCircle nail = HollowCircle.solid(10);
    assertThatThrownBy(() -> new NailHole(nail, 10)).isInstanceOf(IllegalArgumentException.class);
  }
}
