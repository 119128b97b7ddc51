package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.BoneName;
import org.bonewright.mechanics.model.MechanicalModel;
import org.junit.jupiter.api.Test;

/** One construct under every set of assumptions, with nothing remembered from elsewhere. */
class SolutionsTest {

  private static final Sketch HELD = Sketches.of(Sketches.bridged(8, "[1, 3, 5, 6, 8, 10]"));

  /** Screws on one side of the line only: nothing holds the other fragment. */
  private static final Sketch LOOSE = Sketches.of(Sketches.bridged(8, "[1, 3, 5]"));

  private static final List<Loading> LOADS = List.of(Sketches.load(500, 10, 1));

  @Test
  void each_set_has_the_answer_of_that_set() {
    Solver solver = new Solver(HELD, LOADS, BoneName.TIBIA, false);
    Solutions.Answers<Solved> answers =
        new Solutions().under(HELD, LOADS, BoneName.TIBIA, false).orElseThrow();
    List<Draw> draws = Draws.all();
    assertThat(answers.draws()).isEqualTo(draws).hasSize(200);
    assertThat(answers.samples()).hasSize(200);
    for (int i : new int[] {0, 99, 199}) {
      assertThat(solver.under(draws.get(i))).contains(answers.samples().get(i));
    }
  }

  @Test
  void stiffness_is_that_of_the_taut_construct_in_every_set() {
    Solutions.Stiff stiff = new Solutions().stiffness(HELD).orElseThrow();
    assertThat(stiff.sampled().samples())
        .hasSize(200)
        .allMatch(stiffness -> stiffness.torsion() > 0);
    assertThat(new MechanicalModel(new Builder(HELD, Draw.MIDDLE).taut()).stiffness())
        .contains(stiff.middle());
  }

  @Test
  void what_does_not_hold_the_bone_has_no_answer() {
    assertThat(new Solutions().under(LOOSE, LOADS, BoneName.TIBIA, false)).isEmpty();
    assertThat(new Solutions().stiffness(LOOSE)).isEmpty();
  }
}
