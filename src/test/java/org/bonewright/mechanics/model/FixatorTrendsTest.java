package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.mechanics.answer.Stiffness;

/** What makes an external fixator stiffer, as textbooks of fixation have it (from memory). */
class FixatorTrendsTest {

  private static final Fixators USUAL = Fixators.USUAL;

  @Property(tries = 30)
  void it_is_stiffer_the_nearer_its_bar_lies_to_the_bone(
      @ForAll @DoubleRange(min = 20, max = 90) double distance,
      @ForAll @DoubleRange(min = 1, max = 10) double nearer) {
    stiffer(USUAL.barsAt(distance - nearer), USUAL.barsAt(distance));
  }

  @Property(tries = 30)
  void it_is_stiffer_the_thicker_its_pins(
      @ForAll @DoubleRange(min = 3, max = 6) double pin,
      @ForAll @DoubleRange(min = 0.1, max = 1) double more) {
    stiffer(USUAL.pins(pin + more), USUAL.pins(pin));
  }

  @Property(tries = 30)
  void it_is_stiffer_the_more_pins_it_has(@ForAll @DoubleRange(min = 45, max = 100) double level) {
    Fixators few = USUAL.pinsAt(-102, -40, 40, 102);
    stiffer(USUAL.pinsAt(-102, -level, -40, 40, 102), few);
    stiffer(USUAL.pinsAt(-102, -level, -40, 40, level, 102), few);
  }

  @Property(tries = 30)
  void it_is_stiffer_the_nearer_its_inner_pins_lie_to_the_line(
      @ForAll @DoubleRange(min = 15, max = 60) double near,
      @ForAll @DoubleRange(min = 1, max = 12) double nearer) {
    stiffer(
        USUAL.pinsAt(-100, -near + nearer, near - nearer, 100),
        USUAL.pinsAt(-100, -near, near, 100));
  }

  @Property(tries = 30)
  void it_is_stiffer_with_a_second_bar(@ForAll @DoubleRange(min = 10, max = 60) double beyond) {
    stiffer(USUAL.barsAt(50, 50 + beyond), USUAL);
  }

  private static void stiffer(Fixators better, Fixators worse) {
    Stiffness one = better.stiffness();
    Stiffness other = worse.stiffness();
    double rounding = 1 - 1e-9;
    assertThat(one.axial()).isGreaterThanOrEqualTo(other.axial() * rounding);
    assertThat(one.bendingWeakPlus()).isGreaterThanOrEqualTo(other.bendingWeakPlus() * rounding);
    assertThat(one.bendingStrong()).isGreaterThanOrEqualTo(other.bendingStrong() * rounding);
    assertThat(one.torsion()).isGreaterThanOrEqualTo(other.torsion() * rounding);
  }
}
