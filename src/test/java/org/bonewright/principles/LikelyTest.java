package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bonewright.principles.MovingGap.BETWEEN;
import static org.bonewright.principles.MovingGap.FEMUR;
import static org.bonewright.principles.MovingGap.LITTLE;
import static org.bonewright.principles.MovingGap.OPEN;
import static org.bonewright.principles.MovingGap.SLIPS;
import static org.bonewright.principles.MovingGap.STILL;
import static org.bonewright.principles.MovingGap.TIBIA;
import static org.bonewright.principles.MovingGap.WIDE;
import static org.bonewright.principles.MovingGap.YES;
import static org.bonewright.principles.MovingGap.femur;
import static org.bonewright.principles.MovingGap.gap;
import static org.bonewright.principles.MovingGap.judged;
import static org.bonewright.principles.MovingGap.sampled;
import static org.bonewright.principles.MovingGap.samples;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.bonewright.measures.Reading;
import org.bonewright.principles.MovingGap.Judged;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Nine samples in ten decide, at a severity that one in ten reaches. */
class LikelyTest {

  @Nested
  class NineInTen {

    @Test
    void decide_when_met() {
      Judged ninety = femur(gap(90, LITTLE, 10, WIDE));
      assertThat(ninety.verdict()).isEqualTo(new Verdict.Met());
      assertThat(ninety.shared())
          .isEqualTo("in 90 of 100 sampled assumptions; most depends on the load");
      assertThat(femur(gap(89, LITTLE, 11, WIDE)).verdict().kind()).isEqualTo(VerdictKind.UNKNOWN);
    }

    @Test
    void decide_when_unmet() {
      assertThat(femur(gap(10, LITTLE, 90, WIDE)).verdict())
          .isEqualTo(new Verdict.Unmet(Severity.MINOR, Severity.MINOR, "wide", List.of("wide")));
      assertThat(femur(gap(11, LITTLE, 89, WIDE)).verdict().kind()).isEqualTo(VerdictKind.UNKNOWN);
    }

    @Test
    void decide_when_not_applicable() {
      assertThat(femur(gap(90, STILL, 10, OPEN)).verdict()).isEqualTo(new Verdict.NotApplicable());
      assertThat(femur(gap(89, STILL, 11, OPEN)).verdict().kind()).isEqualTo(VerdictKind.UNKNOWN);
    }

    @Test
    void are_counted_in_any_number_of_samples() {
      assertThat(femur(gap(9, LITTLE, 1, WIDE)).verdict().kind()).isEqualTo(VerdictKind.MET);
      assertThat(femur(gap(170, LITTLE, 19, WIDE)).verdict().kind()).isEqualTo(VerdictKind.UNKNOWN);
      assertThat(femur(gap(1, WIDE)).verdict().kind()).isEqualTo(VerdictKind.UNMET);
    }

    @Test
    void look_at_no_nominal_value() {
      Reading nominalElsewhere =
          new Reading.Sampled(OPEN, samples(100, LITTLE), "", "the load", List.of());
      assertThat(femur(nominalElsewhere).verdict()).isEqualTo(new Verdict.Met());
    }
  }

  @Nested
  class TheSeverity {

    @Test
    void of_what_is_unmet_is_one_that_a_tenth_reaches() {
      assertThat(femur(gap(91, WIDE, 9, OPEN)).verdict())
          .isEqualTo(new Verdict.Unmet(Severity.MINOR, Severity.MINOR, "wide", List.of("wide")));
      assertThat(femur(gap(90, WIDE, 10, OPEN)).verdict())
          .isEqualTo(new Verdict.Unmet(Severity.CRITICAL, Severity.MINOR, "open", List.of("wide")));
    }

    @Test
    void of_what_is_unknown_is_one_that_a_tenth_reaches() {
      assertThat(femur(gap(50, LITTLE, 41, WIDE, 9, OPEN)).unknown().worst())
          .isEqualTo(Severity.MINOR);
      assertThat(femur(gap(50, LITTLE, 40, WIDE, 10, OPEN)).unknown().worst())
          .isEqualTo(Severity.CRITICAL);
    }

    @Test
    void counts_what_is_graver_as_well() {
      assertThat(femur(gap(88, LITTLE, 6, WIDE, 6, OPEN)).unknown().worst())
          .isEqualTo(Severity.MINOR);
    }

    @Test
    void is_the_mildest_where_no_tenth_is_unmet() {
      Verdict.Unknown open = femur(gap(85, LITTLE, 8, STILL, 7, OPEN)).unknown();
      assertThat(open.possible())
          .isEqualTo(Set.of(VerdictKind.MET, VerdictKind.UNMET, VerdictKind.NOT_APPLICABLE));
      assertThat(open.worst()).isEqualTo(Severity.CRITICAL);
    }
  }

  @Nested
  class TheMildestSeverity {

    @Test
    void of_what_is_unmet_is_one_that_nine_in_ten_reach() {
      assertThat(femur(gap(10, WIDE, 90, OPEN)).verdict())
          .isEqualTo(
              new Verdict.Unmet(Severity.CRITICAL, Severity.CRITICAL, "open", List.of("open")));
      assertThat(femur(gap(11, WIDE, 89, OPEN)).verdict())
          .isEqualTo(new Verdict.Unmet(Severity.CRITICAL, Severity.MINOR, "open", List.of("wide")));
    }
  }

  @Nested
  class ALimit {

    @Test
    void is_certainly_not_kept_where_nine_in_ten_do_not_keep_it() {
      Reading wide = sampled(samples(90, WIDE, 10, OPEN));
      assertThat(judged(FEMUR, YES, wide, sampled(samples(90, 2, 10, 0.5))).verdict())
          .isEqualTo(new Verdict.Unmet(Severity.CRITICAL, Severity.MINOR, "open", List.of("wide")));
      assertThat(judged(FEMUR, YES, wide, sampled(samples(89, 2, 11, 0.5))).verdict())
          .isEqualTo(new Verdict.Unmet(Severity.CRITICAL, Severity.MINOR, "open", List.of()));
    }
  }

  @Nested
  class Refused {

    @Test
    void is_a_sample_that_the_need_cannot_be() {
      assertThatThrownBy(() -> femur(gap(1, -1)))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("gap cannot be -1.0");
    }

    @Test
    void is_a_word_that_is_sampled() {
      assertThatThrownBy(() -> judged(gap(1, 1), YES, SLIPS, SLIPS))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("bone is no number to sample");
    }
  }

  @Test
  void a_sample_without_end_lies_in_the_last_cell() {
    assertThat(femur(gap(10, Double.POSITIVE_INFINITY)).verdict().kind())
        .isEqualTo(VerdictKind.UNMET);
  }

  /** Count sample by sample, without worlds and cells. */
  @Test
  void verdicts_are_those_of_counting_samples_one_by_one() {
    Random random = new Random(7);
    for (int i = 0; i < 3000; i++) {
      List<Double> gaps =
          drawn(random, List.of(STILL, 0.1, LITTLE, 1.0, BETWEEN, 2.0, WIDE, 5.0, OPEN));
      List<Double> slips = drawn(random, List.of(0.0, 1.0, 2.0));
      boolean femur = random.nextBoolean();
      Verdict verdict = judged(femur ? FEMUR : TIBIA, YES, sampled(gaps), sampled(slips)).verdict();
      int[] kinds = new int[3];
      int critical = 0;
      for (int s = 0; s < gaps.size(); s++) {
        double gap = gaps.get(s);
        boolean unmet = gap > 5 || (gap > (femur ? 2 : 1) && slips.get(s) > 1);
        kinds[gap <= 0.1 ? 2 : unmet ? 1 : 0]++;
        critical += gap > 5 ? 1 : 0;
      }
      String counted = kinds[0] + " met, " + kinds[1] + " unmet, " + critical + " critical";
      assertThat(verdict.kind()).as(counted).isEqualTo(expected(kinds, gaps.size()));
      Severity worst = 10 * critical >= gaps.size() ? Severity.CRITICAL : Severity.MINOR;
      if (verdict instanceof Verdict.Unmet unmet && kinds[1] > critical) {
        assertThat(unmet.severity()).as(counted).isEqualTo(worst);
      }
      if (verdict instanceof Verdict.Unknown unknown && kinds[1] > critical) {
        assertThat(unknown.worst()).as(counted).isEqualTo(worst);
      }
    }
  }

  private static VerdictKind expected(int[] kinds, int samples) {
    List<VerdictKind> all = List.of(VerdictKind.MET, VerdictKind.UNMET, VerdictKind.NOT_APPLICABLE);
    return IntStream.range(0, 3)
        .filter(k -> 10 * kinds[k] >= 9 * samples)
        .mapToObj(all::get)
        .findFirst()
        .orElse(VerdictKind.UNKNOWN);
  }

  /** Return 20 numbers, most of them the same. */
  private static List<Double> drawn(Random random, List<Double> from) {
    double usual = from.get(random.nextInt(from.size()));
    double share = 0.7 + random.nextDouble() * 0.3;
    return IntStream.range(0, 20)
        .mapToObj(i -> random.nextDouble() < share ? usual : from.get(random.nextInt(from.size())))
        .toList();
  }
}
