package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** In which order screws give, and whether the rest then holds more or less. */
class HoldOutOrderTest {

  /** By hand: shares 1/12, 1/3 and 7/12; the weak one gives at 1200, then two share alike. */
  @Test
  void a_weak_screw_that_gives_first_does_not_take_the_others_with_it() {
    HoldOut row = new HoldOut(List.of(0.0, 20.0, 40.0), List.of(100.0, 2000.0, 2000.0));
    assertThat(row.sequential(30).get(0)).isCloseTo(1200, within(1e-9));
    assertThat(row.sequential(30).get(1)).isCloseTo(4000, within(1e-9));
    assertThat(row.unzips(30)).isFalse();
    assertThat(row.holds(30)).isCloseTo(4000, within(1e-9));
  }

  @Test
  void two_at_one_place_share_alike_and_one_that_then_holds_as_much_does_not_unzip() {
    HoldOut row = new HoldOut(List.of(5.0, 5.0), List.of(500.0, 1000.0));
    assertThat(row.sequential(5)).containsExactly(1000.0, 1000.0);
    assertThat(row.unzips(5)).isFalse();
  }

  @Test
  void a_row_that_is_gone_with_its_first_screw_unzips() {
    assertThat(new HoldOut(List.of(-10.0, 10.0), List.of(1000.0, 1000.0)).unzips(0)).isTrue();
  }
}
