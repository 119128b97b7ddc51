package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.principles.MovingGap.samples;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two limits of equal weight, each broken by some samples: which one is named. */
class TwoLimitsSampledTest {

  private static final Card CARD =
      TestCards.card(
          "small",
          Map.of("gap", "gap"),
          Map.of("near", TestCards.limit("gap", 2), "off", TestCards.limit("gap", 5)));
  private static final Worlds WORLDS =
      new Worlds(CARD, id -> new Definition(id, id, Definition.millimetres(), "", List.of(), ""));

  /** Between 2 and 5 the one limit is not kept, above 5 the other. */
  private static Verdict verdict(int between, int above) {
    Map<String, Reading> readings =
        new TreeMap<>(Map.of("gap", MovingGap.sampled(samples(between, 3, above, 6))));
    List<World> worlds = WORLDS.of(readings);
    Verdicts said = new Verdicts();
    for (World world : worlds) {
      said.applies(world);
      said.unmet(world, "minor", MovingGap.above(world, "gap", "off") ? "off" : "near");
    }
    return new CardVerdict(WORLDS, worlds, said, readings).verdict();
  }

  @ParameterizedTest
  @CsvSource({"40, 60, off", "60, 40, near", "50, 50, off", "95, 5, near"})
  void the_one_that_most_samples_do_not_keep_is_named(int between, int above, String named) {
    assertThat(verdict(between, above))
        .isInstanceOfSatisfying(
            Verdict.Unmet.class, unmet -> assertThat(unmet.limit()).isEqualTo(named));
  }

  @Test
  void one_limit_counts_at_the_graver_of_the_grades_that_samples_give_it() {
    List<World> worlds = WORLDS.of(Map.of("gap", MovingGap.sampled(samples(1, 3, 1, 6))));
    assertThat(worlds).hasSize(2);
    for (List<String> grades : List.of(List.of("minor", "major"), List.of("major", "minor"))) {
      Verdicts said = new Verdicts();
      Map<World, Integer> counts = new LinkedHashMap<>();
      for (int i = 0; i < 2; i++) {
        said.applies(worlds.get(i));
        said.unmet(worlds.get(i), grades.get(i), "near");
        counts.put(worlds.get(i), 50);
      }
      assertThat(new SampledGroup(counts, said).faults()).isEqualTo(Map.of("near", Severity.MAJOR));
    }
  }
}
