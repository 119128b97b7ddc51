package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Zone;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FractureZoneTest {

  private static FractureZone zone(Quantity from, Quantity to) {
    return FractureZone.of(new Zone(Optional.of(from), Optional.of(to), Optional.empty()));
  }

  private static FractureZone zone(double from, double to) {
    return zone(Quantity.of(from), Quantity.of(to));
  }

  private static void spans(Optional<Dimension> dimension, double min, double max) {
    assertThat(dimension).isPresent();
    assertThat(dimension.get().min()).isEqualTo(min);
    assertThat(dimension.get().max()).isEqualTo(max);
    assertThat(dimension.get().assumed()).isFalse();
  }

  @Nested
  class AsStated {

    @Test
    void runs_from_its_near_to_its_far_end() {
      spans(zone(168, 196).length(), 28, 28);
      spans(zone(168, 196).centre(), 182, 182);
    }

    @Test
    void ends_that_are_ranges_give_ranges() {
      FractureZone vague = zone(new Quantity(166, 170), new Quantity(194, 200));
      spans(vague.length(), 24, 34);
      spans(vague.centre(), 180, 185);
    }

    @Test
    void is_never_shorter_than_nothing() {
      spans(zone(new Quantity(170, 180), new Quantity(175, 185)).length(), 0, 15);
    }

    @Test
    void a_length_of_its_own_counts_before_the_levels() {
      Zone both =
          new Zone(
              Optional.of(Quantity.of(168)),
              Optional.of(Quantity.of(196)),
              Optional.of(Quantity.of(30)));
      spans(FractureZone.of(both).length(), 30, 30);
    }

    @Test
    void with_a_length_alone_its_place_is_unknown() {
      FractureZone zone =
          FractureZone.of(
              new Zone(Optional.empty(), Optional.empty(), Optional.of(Quantity.of(30))));
      spans(zone.length(), 30, 30);
      assertThat(zone.centre()).isEmpty();
    }

    @Test
    void with_one_end_alone_nothing_is_known() {
      Zone oneEnd = new Zone(Optional.of(Quantity.of(168)), Optional.empty(), Optional.empty());
      assertThat(FractureZone.of(oneEnd)).isEqualTo(FractureZone.UNKNOWN);
    }
  }
}
