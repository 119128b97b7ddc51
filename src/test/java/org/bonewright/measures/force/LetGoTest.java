package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.construct.Load;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of several ways to let go counts, and when a line has come apart. */
class LetGoTest {

  private static final LetGo EARLY = new LetGo(2, LetGo.Mode.UNZIPS);
  private static final LetGo LATE = new LetGo(3, LetGo.Mode.TOGETHER);

  @Test
  void the_earlier_counts_and_of_two_at_once_the_first() {
    assertThat(EARLY.orEarlier(LATE)).isEqualTo(EARLY);
    assertThat(LATE.orEarlier(EARLY)).isEqualTo(EARLY);
    assertThat(EARLY.orEarlier(new LetGo(2, LetGo.Mode.SLIPS))).isEqualTo(EARLY);
  }

  @Test
  void nothing_lets_go_before_there_is_a_load_and_64_times_the_load_is_enough() {
    assertThat(new LetGo(-1, LetGo.Mode.SLIPS).share()).isZero();
    assertThat(new LetGo(100, LetGo.Mode.HOLDS).share()).isEqualTo(64);
    assertThat(LetGo.Mode.UNZIPS.word()).isEqualTo("unzips");
  }

  @Test
  void each_way_is_named_once() {
    assertThat(HoldOuts.words(List.of(EARLY, LATE, EARLY))).containsExactly("unzips", "together");
    assertThat(HoldOuts.sets()).isEqualTo(3);
  }

  @ParameterizedTest(name = "opening {0} to {1}, across {2}: {3}")
  @CsvSource({
    // a bone of 12 mm radius
    "-11.9, 11.9, 11.9, false",
    "-12, 0, 0, true",
    "0, 12, 0, true",
    "0, 0, 12, true"
  })
  void fragments_have_come_apart_where_the_line_moves_by_the_radius_of_the_bone(
      double min, double max, double shear, boolean apart) {
    LoadAnswer none = HandAnswers.answer(Load.axial(-100), Optional.empty(), List.of(), List.of());
    LoadAnswer moved =
        new LoadAnswer(
            none.load(),
            none.end(),
            new GapMovement(0, 0, min, max, shear, OptionalDouble.empty(), OptionalDouble.empty()),
            none.contact(),
            none.plates(),
            none.screws(),
            none.nail(),
            none.fixator(),
            none.lags(),
            none.strut(),
            none.onlay(),
            none.events(),
            none.slipCautious(),
            1);
    assertThat(new Borne(moved, 1).parts(12)).isEqualTo(apart);
    assertThat(new Borne(moved, 1).whole()).isTrue();
    assertThat(new Borne(moved, 0.99).whole()).isFalse();
  }

  @Test
  void the_number_shown_is_one_that_half_of_all_do_not_exceed() {
    assertThat(Middle.of(List.of(4.0, 1.0, 3.0, 2.0))).isEqualTo(2);
    assertThat(Middle.of(List.of(5.0, 1.0, 3.0))).isEqualTo(3);
    assertThat(Middle.of(List.of(7.0))).isEqualTo(7);
  }
}
