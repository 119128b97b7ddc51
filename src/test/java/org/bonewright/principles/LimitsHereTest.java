package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.bonewright.bone.Dimension;
import org.junit.jupiter.api.Test;

/** The limits that hold in some worlds run from the smallest to the largest. */
class LimitsHereTest {

  private static final Card CARD =
      TestCards.card("small", Map.of("n", "ratio"), Map.of("least", TestCards.limit("n", 1)));

  /** How a world holds a limit that its words do not have. */
  private static final Map<String, Double> NONE = Map.of("least", Double.NaN);

  private static World world(Map<String, Double> limits) {
    return new World("small", Map.of(), limits);
  }

  private static Map<String, Dimension> here(World... worlds) {
    return LimitsHere.of(CARD, List.of(worlds));
  }

  @Test
  void from_the_smallest_to_the_largest_in_whatever_order() {
    Dimension range = new Dimension(1, 3, false, "least");
    assertThat(here(world(Map.of("least", 1.0)), world(Map.of("least", 3.0))))
        .isEqualTo(Map.of("least", range));
    assertThat(here(world(Map.of("least", 3.0)), world(Map.of("least", 1.0))))
        .isEqualTo(Map.of("least", range));
  }

  @Test
  void one_that_is_the_same_everywhere_it_holds_is_one_number() {
    assertThat(here(world(Map.of("least", 2.0)), world(NONE)))
        .isEqualTo(Map.of("least", new Dimension(2, 2, false, "least")));
  }

  @Test
  void one_that_holds_nowhere_is_left_out() {
    assertThat(here(world(NONE))).isEmpty();
  }
}
