package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.junit.jupiter.api.Test;

/** A gap of at most 1 mm is expected; how far beyond is it? */
class ShortfallTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Card CARD = RULES.card("residual-gap-closed").orElseThrow();

  private static double of(Reading gap, Verdict verdict) {
    return of(gap, verdict, new Dimension(1, 1, false, ""));
  }

  private static double of(Reading gap, Verdict verdict, Dimension limit) {
    return Shortfall.of(
        new Judgement(
            CARD,
            RULES.family(CARD),
            "op-1",
            verdict,
            Optional.empty(),
            List.of(),
            List.of(),
            Map.of("gap", gap),
            Map.of("closed", limit),
            List.of(),
            Optional.empty()));
  }

  private static double unmet(Reading gap) {
    return of(gap, new Verdict.Unmet(Severity.MINOR, Severity.MINOR, "closed", List.of("closed")));
  }

  private static double unmet(double gap, Dimension limit) {
    return of(
        Reading.number(gap, ""),
        new Verdict.Unmet(Severity.MINOR, Severity.MINOR, "closed", List.of("closed")),
        limit);
  }

  @Test
  void it_is_told_as_a_share_of_the_limit_on_either_side() {
    assertThat(unmet(5, new Dimension(2, 2, false, ""))).isEqualTo(1.5);
    assertThat(unmet(1.5, new Dimension(2, 2, false, ""))).isEqualTo(0.25);
  }

  @Test
  void it_is_counted_from_the_nearer_end_of_a_limit_that_is_a_range() {
    assertThat(unmet(5, new Dimension(2, 4, false, ""))).isEqualTo(0.25);
    assertThat(unmet(1, new Dimension(2, 4, false, ""))).isEqualTo(0.5);
    assertThat(unmet(3, new Dimension(2, 4, false, ""))).isZero();
  }

  @Test
  void of_a_limit_of_nought_there_is_no_share() {
    assertThat(unmet(5, new Dimension(0, 0, false, ""))).isZero();
    assertThat(unmet(5, new Dimension(0, 4, false, ""))).isZero();
  }

  @Test
  void a_range_falls_short_by_its_better_end() {
    assertThat(unmet(new Reading.Amount(1.5, 3, Kind.FACT, "", List.of()))).isEqualTo(0.5);
    assertThat(unmet(new Reading.Amount(0.5, 3, Kind.FACT, "", List.of()))).isZero();
  }

  @Test
  void what_a_model_samples_falls_short_by_the_better_end_of_its_likely_range() {
    List<Double> samples = IntStream.rangeClosed(1, 20).mapToObj(i -> 0.5 + i * 0.5).toList();
    Reading.Sampled sampled = new Reading.Sampled(9, samples, "", "the load", List.of());
    assertThat(sampled.low()).isEqualTo(1);
    assertThat(unmet(sampled)).isZero();
    Reading.Sampled wider =
        new Reading.Sampled(
            9, samples.stream().map(sample -> sample + 0.4).toList(), "", "the load", List.of());
    assertThat(unmet(wider)).isCloseTo(0.4, within(1e-9));
  }

  @Test
  void what_is_met_or_words_falls_short_of_nothing() {
    assertThat(of(Reading.number(3, ""), new Verdict.Met())).isZero();
    assertThat(unmet(Reading.word("yes", ""))).isZero();
  }
}
