package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bonewright.principles.MovingGap.BETWEEN;
import static org.bonewright.principles.MovingGap.BONE;
import static org.bonewright.principles.MovingGap.FEMUR;
import static org.bonewright.principles.MovingGap.LITTLE;
import static org.bonewright.principles.MovingGap.PLATE;
import static org.bonewright.principles.MovingGap.SLIPS;
import static org.bonewright.principles.MovingGap.TIBIA;
import static org.bonewright.principles.MovingGap.WEIGHT;
import static org.bonewright.principles.MovingGap.WIDE;
import static org.bonewright.principles.MovingGap.YES;
import static org.bonewright.principles.MovingGap.femur;
import static org.bonewright.principles.MovingGap.gap;
import static org.bonewright.principles.MovingGap.judged;
import static org.bonewright.principles.MovingGap.sampled;
import static org.bonewright.principles.MovingGap.samples;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.principles.MovingGap.Judged;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What is told of samples, and asked, where they are joint, split, or beside what is unknown. */
class SampleShareTest {

  @Nested
  class TwoSampledNeeds {

    @Test
    void belong_together_sample_by_sample() {
      Reading gap = sampled(samples(45, WIDE, 55, LITTLE));
      Reading slipTogether = sampled(samples(45, 2, 55, 0));
      Reading slipElsewhere = sampled(samples(45, 0, 55, 2));
      assertThat(judged(FEMUR, YES, gap, slipElsewhere).verdict()).isEqualTo(new Verdict.Met());
      assertThat(judged(FEMUR, YES, gap, slipElsewhere).shared())
          .isEqualTo("in all 100 sampled assumptions");
      assertThat(judged(FEMUR, YES, gap, slipTogether).shared())
          .startsWith("met in 55, unmet in 45 of 100");
    }

    @Test
    void are_both_asked_about_where_one_follows_the_other() {
      MissingFact hold = new MissingFact("hold", "How firm is the bone?");
      Judged open =
          judged(
              FEMUR,
              YES,
              sampled(samples(45, WIDE, 55, LITTLE), WEIGHT),
              sampled(samples(45, 2, 55, 0), hold));
      assertThat(open.unknown().asks()).containsExactly(WEIGHT, hold);
    }

    @Test
    void are_asked_about_beside_what_else_is_open_only_where_they_are_split() {
      MissingFact hold = new MissingFact("hold", "How firm is the bone?");
      Reading unknown = Reading.unknown(PLATE);
      assertThat(
              judged(
                      FEMUR,
                      unknown,
                      sampled(samples(45, WIDE, 55, LITTLE), WEIGHT),
                      sampled(samples(45, 2, 55, 0), hold))
                  .unknown()
                  .asks())
          .containsExactlyInAnyOrder(PLATE, WEIGHT, hold);
      assertThat(
              judged(
                      FEMUR,
                      unknown,
                      sampled(samples(100, WIDE), WEIGHT),
                      sampled(samples(100, 2), hold))
                  .unknown()
                  .asks())
          .containsExactly(PLATE);
    }

    @Test
    void are_not_both_asked_about_where_one_alone_splits_them() {
      MissingFact hold = new MissingFact("hold", "How firm is the bone?");
      assertThat(
              judged(
                      FEMUR,
                      YES,
                      sampled(samples(45, WIDE, 55, LITTLE), WEIGHT),
                      sampled(samples(100, 2), hold))
                  .unknown()
                  .asks())
          .containsExactly(WEIGHT);
    }

    @Test
    void must_have_equally_many_samples() {
      assertThatThrownBy(() -> judged(FEMUR, YES, gap(3, WIDE), sampled(samples(2, 0))))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("not equally many samples of [gap, slip]");
    }
  }

  @Nested
  class WithSomethingElseUnknown {

    @Test
    void every_way_in_which_it_may_fall_must_agree() {
      Judged open = judged(FEMUR, Reading.unknown(PLATE), gap(95, WIDE, 5, LITTLE), SLIPS);
      assertThat(open.unknown().possible())
          .isEqualTo(Set.of(VerdictKind.UNMET, VerdictKind.NOT_APPLICABLE));
      assertThat(open.unknown().asks()).containsExactly(PLATE);
      assertThat(open.unknown().settles()).containsExactly(PLATE);
      assertThat(open.share()).as("no sample leaves it open").isEmpty();
    }

    @Test
    void nine_in_ten_decide_for_each_word_by_its_own_limits() {
      Reading gap = gap(91, BETWEEN, 9, WIDE);
      assertThat(judged(FEMUR, YES, gap, SLIPS).verdict()).isEqualTo(new Verdict.Met());
      assertThat(judged(TIBIA, YES, gap, SLIPS).shared())
          .isEqualTo("in all 100 sampled assumptions");
      Verdict.Unknown open = judged(Reading.unknown(BONE), YES, gap, SLIPS).unknown();
      assertThat(open.asks()).containsExactly(BONE);
      assertThat(open.settles()).containsExactly(BONE);
    }

    @Test
    void the_share_runs_from_the_fewest_to_the_most() {
      Judged both = judged(Reading.unknown(BONE), YES, gap(92, LITTLE, 4, BETWEEN, 4, WIDE), SLIPS);
      assertThat(both.verdict()).isEqualTo(new Verdict.Met());
      assertThat(both.shared())
          .isEqualTo("in 92 to 96 of 100 sampled assumptions; most depends on the load");
    }

    @Test
    void a_fact_that_moves_the_samples_settles_nothing() {
      Reading gap = sampled(samples(100, WIDE), PLATE);
      Judged open = judged(FEMUR, Reading.unknown(PLATE), gap, SLIPS);
      assertThat(open.unknown().asks()).containsExactly(PLATE);
      assertThat(open.unknown().settles()).isEmpty();
    }
  }

  @Nested
  class WhereTheSamplesAreSplit {

    @Test
    void it_asks_for_what_would_narrow_them() {
      Judged open = femur(sampled(samples(60, LITTLE, 40, WIDE), WEIGHT));
      assertThat(open.unknown().asks()).containsExactly(WEIGHT);
      assertThat(open.unknown().settles()).isEmpty();
      assertThat(open.shared())
          .isEqualTo("met in 60, unmet in 40 of 100 sampled assumptions; most depends on the load");
    }

    @Test
    void it_may_have_nothing_to_ask() {
      assertThat(femur(gap(60, LITTLE, 40, WIDE)).unknown().asks()).isEmpty();
    }
  }

  @Nested
  class TheShare {

    @Test
    void is_none_where_no_sample_could_turn_the_verdict() {
      assertThat(judged(FEMUR, Reading.word("no", ""), gap(50, LITTLE, 50, WIDE), SLIPS).share())
          .isEmpty();
      assertThat(judged(FEMUR, YES, Reading.number(WIDE, ""), SLIPS).share()).isEmpty();
    }

    @Test
    void leaves_away_what_decides_where_nobody_says() {
      assertThat(
              new SampleShare(8, List.of(new SampleShare.Count(VerdictKind.MET, 7, 7)), "")
                  .inWords())
          .isEqualTo("in 7 of 8 sampled assumptions");
    }
  }
}
