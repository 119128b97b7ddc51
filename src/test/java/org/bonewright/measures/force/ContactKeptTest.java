package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.measures.force.Sketches.bridged;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class ContactKeptTest {

  private static CaseText gaps(String near, String far) {
    return bridged()
        .at(
            "/operations/0",
            "{reduction: {gapNearMm: "
                + near
                + ", gapFarMm: "
                + far
                + ", contactPercent: null}, compression: {method: 'tension-device', prebent:"
                + " 'yes'}}");
  }

  private static Reading read(String measure, CaseText text) {
    return Sketches.scene(text).read(measure);
  }

  @Test
  void without_any_gap_it_is_what_touches_under_load() {
    CaseText closed = gaps("0", "0");
    assertThat(read("contact-kept", closed))
        .isInstanceOf(Reading.Sampled.class)
        .isEqualTo(read("contact-under-load", closed));
  }

  /** The model takes these ends as touching all round; the film says that they do not. */
  @Test
  void with_a_gap_on_one_side_it_is_nothing_even_where_the_model_closes_it() {
    CaseText oneSided = gaps("0", "3");
    assertThat(Taken.of("modelled-line", oneSided)).isEqualTo("touching fact");
    assertThat(Taken.of("contact-kept", oneSided)).isEqualTo("0 fact");
    assertThat(Taken.of("contact-kept", gaps("2", "2"))).isEqualTo("0 fact");
  }

  /**
   * Two films without a gap, and yet less than half of the ring in contact: what was seen stands.
   */
  @Test
  void is_nothing_where_less_than_half_of_the_ring_was_seen_in_contact() {
    assertThat(Taken.of("contact-kept", seen("40"))).isEqualTo("0 fact");
    assertThat(Taken.of("contact-kept", seen("{min: 20, max: 40}"))).isEqualTo("0 fact");
    assertThat(read("contact-kept", seen("50"))).isInstanceOf(Reading.Sampled.class);
  }

  private static CaseText seen(String percent) {
    return gaps("0", "0").at("/operations/0/reduction", "{contactPercent: " + percent + "}");
  }

  @Test
  void a_gap_that_is_not_told_is_asked() {
    assertThat(Taken.of("contact-kept", gaps("0", "null"))).startsWith("unknown, ask ");
    assertThat(Taken.of("contact-kept", gaps("0", "{min: 0, max: 2}"))).startsWith("unknown, ask ");
  }
}
