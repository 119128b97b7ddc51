package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.measures.force.Sketches.bridged;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Taken;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.measures.load.UsualLoads;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings of cases, from the file to the number. */
class ForceMeasureTest {

  /** A man of 80 kg whose tibia is bridged over 2 mm, with ends that may not meet. */
  private static final CaseText BRIDGED =
      bridged().at("/patient", "{weightKg: 80}").at("/operations/0/aftercare", "{followed: 'yes'}");

  private static final CaseText CLOSED =
      BRIDGED.at(
          "/operations/0",
          "{reduction: {gapNearMm: 0, gapFarMm: 0, contactPercent: 100},"
              + " compression: {method: 'tension-device', prebent: 'yes'}}");

  static Stream<String> numbers() {
    return ids()
        .filter(
            id ->
                !List.of(
                        "contact-kept",
                        "modelled-line",
                        "stiffness-gain",
                        "nail-stress-range",
                        "bolt-stress-range")
                    .contains(id));
  }

  static Stream<String> ids() {
    return ForceMeasures.all(UsualLoads.published()).stream()
        .map(Measure::definition)
        .map(Definition::id);
  }

  private static Reading read(String measure, CaseText text) {
    return Sketches.scene(text).read(measure);
  }

  private static List<Double> samples(String measure, CaseText text) {
    return ((Reading.Sampled) read(measure, text)).samples();
  }

  private static CaseText limited(String kg) {
    return BRIDGED.at("/operations/0/aftercare", "{load: [{untilDay: 84, limitKg: " + kg + "}]}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plate-stress-range", "endurance-used"})
  void a_lower_limit_of_load_spares_the_plate(String measure) {
    List<Double> five = samples(measure, limited("5"));
    List<Double> thirty = samples(measure, limited("30"));
    assertThat(five).hasSize(200);
    for (int i = 0; i < five.size(); i++) {
      assertThat(five.get(i)).isLessThan(thirty.get(i));
    }
  }

  @Test
  void a_lower_limit_of_load_lets_the_plate_last_longer() {
    List<Double> five = samples("metal-life-over-union", limited("5"));
    List<Double> thirty = samples("metal-life-over-union", limited("30"));
    for (int i = 0; i < five.size(); i++) {
      assertThat(five.get(i)).isGreaterThanOrEqualTo(thirty.get(i));
    }
    assertThat(five).isNotEqualTo(thirty);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void the_same_case_reads_the_same_by_one_thread_and_by_several(String measure)
      throws InterruptedException, ExecutionException {
    for (CaseText text : List.of(BRIDGED, CLOSED)) {
      Reading first = read(measure, text);
      assertThat(read(measure, text)).isEqualTo(first);
      ForkJoinPool alone = new ForkJoinPool(1);
      try {
        assertThat(alone.submit(() -> afresh(measure, text)).get()).isEqualTo(first);
      } finally {
        alone.shutdown();
      }
      assertThat(afresh(measure, text)).isEqualTo(first);
    }
  }

  /** Read it with nothing remembered. */
  private static Reading afresh(String measure, CaseText text) {
    return new Scene(Subject.of(text.file()).get(0), EveryMeasure.catalogue()).read(measure);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void a_left_limb_reads_as_a_right_one(String measure) {
    assertThat(Taken.of(measure, BRIDGED.at("/bone", "{side: 'right'}")))
        .isEqualTo(Taken.of(measure, BRIDGED));
    assertThat(read(measure, CLOSED.at("/bone", "{side: 'right'}")))
        .isEqualTo(read(measure, CLOSED));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void a_gap_that_is_not_told_is_asked(String measure) {
    CaseText text = BRIDGED.without("/operations/0/reduction/gapFarMm");
    assertThat(Taken.of(measure, text)).isEqualTo("unknown, ask op-1/reduction/gapFarMm");
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void a_fixator_of_rings_has_none(String measure) {
    CaseText text =
        BRIDGED.at(
            "/operations/0", "{fixation: [{id: 'f', kind: 'external-fixator', frame: 'ring'}]}");
    assertThat(read(measure, text))
        .isEqualTo(new Reading.None("a ring or hybrid fixator is not modelled"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plate-stress-range",
        "plate-stress-steady",
        "far-cortex-movement",
        "near-cortex-movement",
        "screw-pull-margin"
      })
  void what_is_said_of_a_plate_is_not_said_of_a_nail(String measure) {
    assertThat(read(measure, CaseText.nailed()))
        .isEqualTo(new Reading.None("no plate holds the bone"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"nail-stress-range", "bolt-stress-range"})
  void what_is_said_of_a_nail_is_not_said_of_a_plate(String measure) {
    assertThat(read(measure, BRIDGED)).isEqualTo(new Reading.None("no nail holds the bone"));
    assertThat(read(measure, CaseText.nailed())).isInstanceOf(Reading.Sampled.class);
  }

  @ParameterizedTest(name = "{0}: none where {1}")
  @CsvSource({
    "gap-strain, 'the ends touch, there is no gap to strain'",
    "metal-life-over-union, the ends touch and bear the load with the metal"
  })
  void some_have_no_meaning_where_the_ends_touch(String measure, String why) {
    assertThat(read(measure, CLOSED)).isEqualTo(new Reading.None(why));
    assertThat(read(measure, BRIDGED)).isInstanceOf(Reading.Sampled.class);
  }

  @Test
  void only_ends_that_touch_have_a_moment_that_opens_them() {
    assertThat(read("opening-moment", BRIDGED)).isEqualTo(new Reading.None("there is a gap"));
    assertThat(samples("opening-moment", pressed("lag-screw", "yes"))).allMatch(nm -> nm > 0);
    assertThat(samples("opening-moment", pressed("tension-device", "no"))).containsOnly(0.0);
    assertThat(samples("opening-moment", pressed("none", "unknown"))).containsOnly(0.0);
  }

  private static CaseText pressed(String method, String prebent) {
    return CLOSED.at(
        "/operations/0", "{compression: {method: '" + method + "', prebent: '" + prebent + "'}}");
  }

  @Nested
  class The_line {

    @Test
    void is_told_as_it_was_modelled() {
      assertThat(Taken.of("modelled-line", BRIDGED)).isEqualTo("gap fact");
      assertThat(Taken.of("modelled-line", CLOSED)).isEqualTo("touching fact");
      assertThat(read("gap-strain", BRIDGED).working()).isEqualTo("gap taken as even, 2 mm");
      assertThat(read("contact-under-load", CLOSED).working())
          .isEqualTo("ends taken as touching all round");
    }

    @Test
    void touches_more_where_it_was_closed() {
      List<Double> open = samples("contact-under-load", BRIDGED);
      List<Double> closed = samples("contact-under-load", CLOSED);
      for (int i = 0; i < open.size(); i++) {
        assertThat(open.get(i)).isBetween(0.0, 100.0);
        assertThat(closed.get(i)).isBetween(0.0, 100.0).isGreaterThanOrEqualTo(open.get(i));
      }
    }

    @Test
    void is_strained_to_the_whole_of_it_at_most_where_it_closes() {
      List<Double> strain = samples("gap-strain", limited("80"));
      List<Double> contact = samples("contact-under-load", limited("80"));
      assertThat(contact).anyMatch(share -> share > 0);
      assertThat(strain).allMatch(percent -> percent >= 0);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"far-cortex-movement", "near-cortex-movement", "gap-movement", "shear-movement"})
  void movement_has_no_sign_and_stays_within_the_width_of_the_bone(String measure) {
    assertThat(samples(measure, limited("80"))).allMatch(mm -> mm >= 0 && mm <= 24 * 1.2);
  }

  @Test
  void nothing_moves_more_at_a_cortex_than_round_the_ring() {
    List<Double> most = samples("gap-movement", BRIDGED);
    List<Double> near = samples("near-cortex-movement", BRIDGED);
    List<Double> far = samples("far-cortex-movement", BRIDGED);
    for (int i = 0; i < most.size(); i++) {
      assertThat(Math.max(near.get(i), far.get(i))).isLessThanOrEqualTo(most.get(i) + 1e-9);
    }
  }

  @Test
  void a_weight_that_is_not_told_is_asked_and_still_read() {
    Reading reading = read("gap-strain", BRIDGED.at("/patient", "{weightKg: null}"));
    assertThat(reading).isInstanceOf(Reading.Sampled.class);
    assertThat(reading.missing()).extracting(MissingFact::field).contains("patient/weightKg");
    assertThat(read("gap-strain", BRIDGED).missing()).isEmpty();
  }
}
