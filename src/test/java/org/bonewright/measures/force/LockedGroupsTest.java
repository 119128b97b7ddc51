package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.measures.force.HandAnswers.cut;
import static org.bonewright.measures.force.HandAnswers.screw;

import java.util.List;
import java.util.Optional;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.construct.Load;
import org.junit.jupiter.api.Test;

/** Screws that strip at 1000 N each. */
class LockedGroupsTest {

  private static double share(PlateCut cut, ScrewDemand... screws) {
    return new LockedGroups(
            HandAnswers.answer(Load.bendingY(1), Optional.empty(), List.of(cut), List.of(screws)))
        .share();
  }

  /** Two screws 40 mm apart bear 1000 N × 40 mm as a couple: four times 10 N·m. */
  @Test
  void a_moment_is_borne_by_a_couple() {
    assertThat(
            share(cut(0, 10_000), screw(-60, 500), screw(-20, 500), screw(20, 500), screw(60, 500)))
        .isCloseTo(4, within(1e-3));
  }

  /** The side whose screws stand 20 mm apart lets go first: 1000 N × 20 mm. */
  @Test
  void the_weaker_side_lets_go_first() {
    assertThat(
            share(cut(0, 10_000), screw(-40, 900), screw(-20, 900), screw(20, 900), screw(60, 900)))
        .isCloseTo(2, within(1e-3));
  }

  /** A pull of 100 N in their middle falls to both: 2000 N. It has that place by 100 N × 40 mm. */
  @Test
  void a_pull_in_their_middle_falls_to_all() {
    assertThat(share(cut(100, 4000), screw(20, 500), screw(60, 500))).isCloseTo(20, within(1e-6));
  }

  /** Five times the load is borne before anything strips: 1000 N over 200 N. */
  @Test
  void what_is_borne_before_the_first_thread_strips_is_borne() {
    assertThat(
            share(cut(0, 10_000), screw(-60, 200), screw(-20, 150), screw(20, 200), screw(60, 100)))
        .isCloseTo(5, within(1e-6));
  }

  @Test
  void nothing_lets_go_where_nothing_pulls() {
    assertThat(share(cut(0, 0), screw(-20, 500), screw(20, 500))).isEqualTo(LetGo.MOST);
  }
}
