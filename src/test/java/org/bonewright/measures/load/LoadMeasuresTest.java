package org.bonewright.measures.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.AbstractStringAssert;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneLoad;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Taken;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The load at the fracture: table, weight, aftercare; what the case states goes first. */
class LoadMeasuresTest {

  private static final String ASK = ", ask ";
  private static final PermittedLoads PERMITTED = new PermittedLoads(UsualLoads.published());

  /** An operation that was done, with limits that were kept. */
  private static CaseText done(String bone, String weight, String load) {
    return CaseText.plated()
        .at("/bone", "{name: '" + bone + "'}")
        .at("/patient", "{weightKg: " + weight + "}")
        .at("/operations/0", "{aftercare: {load: " + load + ", followed: 'yes'}}");
  }

  private static CaseText limited(String bone, String weight, String kg) {
    return done(bone, weight, "[{untilDay: 42, limitKg: " + kg + "}]");
  }

  private static Scene scene(CaseText text) {
    List<Subject> subjects = Subject.of(text.file());
    return new Scene(subjects.get(subjects.size() - 1), Taken.CATALOGUE);
  }

  private static LoadRange only(List<LoadRange> loads) {
    assertThat(loads).hasSize(1);
    return loads.get(0);
  }

  private static void span(Dimension span, double min, double max) {
    assertThat(span.min()).isCloseTo(min, within(0.01));
    assertThat(span.max()).isCloseTo(max, within(0.01));
  }

  @ParameterizedTest(name = "{0} of {1} kg, limit {2} kg: {3}, {4}, {5}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # 74 kg weigh 725.94 N; 2.5 to 3.1 times that, 4.7 to 9.8 and 0.2 to 1.3 cm times that
          femur    | 74 | 74  | 1814.85–2250.414 | 34.119–71.142 | 1.452–9.437
          femur    | 74 | 200 | 1814.85–2250.414 | 34.119–71.142 | 1.452–9.437
          # 2.5 to 4.7 times, 4.1 to 7.16 and 0.4 to 1.4 cm
          tibia    | 74 | 74  | 1814.85–3411.918 | 29.764–51.977 | 2.904–10.163
          # 20 kg weigh 196.2 N; 2 to 3.1 times that; 4.7 to 9.8 and 0.2 to 1.3 cm times that
          femur    | 74 | 20  | 392.4–608.22     | 9.221–19.228  | 0.392–2.551
          tibia    | 74 | 20  | 392.4–922.14     | 8.044–14.048  | 0.785–2.747
          # a tenth of full use
          femur    | 74 | 0   | 181.485–225.041  | 3.412–7.114   | 0.145–0.944
          # 2 to 3.1 times 49.05 N would be 98.1 to 152.055: never below light use
          femur    | 74 | 5   | 181.485–225.041  | 3.412–7.114   | 0.145–0.944
          humerus  | 74 | 0   | 50–150           | 3–7.5         | 2–4
          humerus  | 74 | 2   | 50–150           | 3–7.5         | 2–4
          # half way from 2 to 20 kg
          humerus  | 74 | 11  | 175–325          | 6.5–13.75     | 3.5–7
          humerus  | 74 | 20  | 300–500          | 10–20         | 5–10
          humerus  | 74 | 50  | 300–500          | 10–20         | 5–10
          radius   | 74 | 20  | 150–500          | 5–15          | 3–6
          ulna     | 74 | 20  | 50–300           | 5–15          | 3–6
          clavicle | 74 | 2   | 20–100           | 1–3           | 0.5–1.5
          """)
  void follow_the_table_the_weight_and_the_limit(
      String bone, String weight, String kg, String press, String bending, String torsion) {
    CaseText text = limited(bone, weight, kg);
    reads("load-pressing", text).isEqualTo(press + " assumed" + ASK + "loads");
    reads("load-bending", text).isEqualTo(bending + " assumed" + ASK + "loads");
    reads("load-torsion", text).isEqualTo(torsion + " assumed" + ASK + "loads");
  }

  private static AbstractStringAssert<?> reads(String measure, CaseText text) {
    return assertThat(Taken.of(measure, text)).as(measure);
  }

  @Nested
  class A_weight {

    @Test
    void that_is_not_known_is_55_to_95_kg() {
      // 2.5 x 55 x 9.81 and 3.1 x 95 x 9.81
      reads("load-pressing", done("femur", "null", "[]"))
          .isEqualTo("1348.875–2889.045 assumed" + ASK + "patient/weightKg and loads");
    }

    @Test
    void that_is_a_range_stays_one() {
      reads("load-pressing", done("femur", "{min: 60, max: 80}", "[]"))
          .isEqualTo("1471.5–2432.88 assumed" + ASK + "patient/weightKg and loads");
    }

    @Test
    void is_not_asked_for_an_arm() {
      reads("load-bending", done("humerus", "null", "[]"))
          .isEqualTo("10–20 assumed" + ASK + "loads");
    }
  }

  @Nested
  class Aftercare {

    private static final String LIGHT_TO_FULL = "181.485–2250.414";

    @Test
    void that_is_not_told_in_the_past_leaves_all_from_light_to_full_use() {
      CaseText text = done("femur", "74", "[]").at("/operations/0", "{aftercare: null}");
      reads("load-pressing", text)
          .isEqualTo(LIGHT_TO_FULL + " assumed" + ASK + "op-1/aftercare/load and loads");
      assertThat(only(PERMITTED.of(scene(text))).basis())
          .isEqualTo("load limit not told: from light to full use; body weight 74 kg");
    }

    @Test
    void that_a_plan_does_not_limit_is_full_use() {
      CaseText plan =
          done("femur", "74", "[]")
              .with("{plans: [{id: 'plan-a', stages: [{id: 'stage-1', fixation: []}]}]}");
      reads("load-pressing", plan).isEqualTo("1814.85–2250.414 assumed" + ASK + "loads");
      assertThat(only(PERMITTED.of(scene(plan))).basis()).contains("no load limit planned");
    }

    @Test
    void of_a_plan_holds_as_ordered() {
      CaseText plan =
          done("femur", "74", "[]")
              .with(
                  "{plans: [{id: 'plan-a', stages: [{id: 'stage-1', fixation: [],"
                      + " aftercare: {load: [{untilDay: 42, limitKg: 20}]}}]}]}");
      reads("load-pressing", plan).isEqualTo("392.4–608.22 assumed" + ASK + "loads");
    }

    @Test
    void told_without_a_step_is_full_use() {
      reads("load-pressing", done("femur", "74", "[]"))
          .isEqualTo("1814.85–2250.414 assumed" + ASK + "loads");
    }

    @Test
    void that_was_not_kept_reaches_up_to_full_use() {
      CaseText text =
          limited("femur", "74", "20").at("/operations/0/aftercare", "{followed: 'no'}");
      reads("load-pressing", text).isEqualTo("392.4–2250.414 assumed" + ASK + "loads");
    }

    @Test
    void of_which_nobody_says_whether_it_was_kept_may_have_been_left() {
      CaseText text =
          limited("femur", "74", "20").at("/operations/0/aftercare", "{followed: null}");
      reads("load-pressing", text)
          .isEqualTo("392.4–2250.414 assumed" + ASK + "op-1/aftercare/followed and loads");
    }

    @Test
    void gives_the_highest_limit_of_the_first_six_weeks() {
      Scene scene =
          scene(
              done(
                  "femur",
                  "74",
                  "[{untilDay: 42, limitKg: 20}, {untilDay: 84, limitKg: 40},"
                      + " {untilDay: 90, limitKg: {min: 30, max: 37}}]"));
      span(only(PERMITTED.of(scene)).pressN(), 392.4, 608.22);
      Scene soon =
          scene(done("femur", "74", "[{untilDay: 14, limitKg: 0}, {untilDay: 84, limitKg: 20}]"));
      span(only(PERMITTED.of(soon)).pressN(), 392.4, 608.22);
    }

    @Test
    void with_a_limit_that_is_a_range_asks_for_it() {
      reads("load-pressing", limited("humerus", "74", "{min: 2, max: 11}"))
          .isEqualTo("50–325 assumed" + ASK + "op-1/aftercare/load and loads");
    }

    @Test
    void says_whether_no_limit_was_given_or_none_is_planned_and_how_an_arm_bears_one() {
      assertThat(only(PERMITTED.of(scene(done("femur", "74", "[]")))).basis())
          .isEqualTo("no load limit given; body weight 74 kg");
      CaseText plan =
          done("femur", "74", "[]")
              .with(
                  "{plans: [{id: 'plan-a', stages: [{id: 'stage-1', fixation: [],"
                      + " aftercare: {load: []}}]}]}");
      assertThat(only(PERMITTED.of(scene(plan))).basis())
          .isEqualTo("no load limit planned; body weight 74 kg");
      // an arm bears its load whatever the body weighs
      assertThat(only(PERMITTED.of(scene(limited("humerus", "74", "11")))).basis())
          .isEqualTo(
              "limit of 11 kg; in a straight line from light use at 2 kg to full use at 20 kg (our"
                  + " convention)");
    }

    @Test
    void counts_a_limit_that_begins_before_six_weeks_are_over_and_none_that_begins_then() {
      String steps = "[{untilDay: %d, limitKg: 20}, {untilDay: 84, limitKg: 74}]";
      span(
          only(PERMITTED.of(scene(done("femur", "74", steps.formatted(42))))).pressN(),
          392.4,
          608.22);
      span(
          only(PERMITTED.of(scene(done("femur", "74", steps.formatted(41))))).pressN(),
          1814.85,
          2250.41);
    }

    @Test
    void is_told_in_words_with_its_units() {
      LoadSpans spans =
          new LoadSpans(
              Dimension.assumed(300, 500, ""),
              Dimension.assumed(10, 20, ""),
              Dimension.assumed(5, 5, ""));
      assertThat(spans.inWords()).isEqualTo("pressing 300–500 N, bending 10–20 N·m, torsion 5 N·m");
    }

    @Test
    void says_how_it_made_the_numbers() {
      LoadRange leg = only(PERMITTED.of(scene(limited("femur", "74", "20"))));
      assertThat(leg.basis())
          .isEqualTo(
              "limit of 20 kg; body weight 74 kg; in proportion to its share of the body weight,"
                  + " muscles pressing two to three times as hard, never below light use (our"
                  + " convention)");
      Reading reading = scene(limited("femur", "74", "20")).read("load-bending");
      assertThat(reading.working())
          .startsWith("walking and stairs: limit of 20 kg; body weight 74 kg")
          .contains("Taylor and Walker 2001 (excerpt read)");
    }
  }

  @Nested
  class A_load_that_the_case_states {

    private static final String ONE =
        "{activity: 'two crutches', pressN: 900, bendingNm: 20, torsionNm: 4,"
            + " tensionSide: 'lateral', source: 'gait laboratory'}";
    private static final String OTHER =
        "{activity: 'stairs', pressN: {min: 800, max: 1200}, bendingNm: 30, torsionNm: 2,"
            + " source: 'gait laboratory'}";

    private static CaseText stating(CaseText text, String... loads) {
      return text.with("{loads: [" + String.join(", ", loads) + "]}");
    }

    @Test
    void takes_the_place_of_the_table_and_is_a_fact_with_no_limit() {
      CaseText text = stating(done("femur", "74", "[]"), ONE);
      reads("load-pressing", text).isEqualTo("900 fact");
      reads("load-bending", text).isEqualTo("20 fact");
      LoadRange load = only(PERMITTED.of(scene(text)));
      assertThat(load.tensionDeg()).contains(90.0);
      assertThat(load.tensionSpreadDeg()).isEqualTo(22.5);
      assertThat(load.source()).isEqualTo("gait laboratory");
    }

    @Test
    void is_scaled_down_by_a_limit() {
      // 18.5 of 74 kg: a quarter; nothing: a tenth
      reads("load-pressing", stating(limited("femur", "74", "18.5"), ONE)).isEqualTo("225 assumed");
      reads("load-pressing", stating(limited("femur", "74", "0"), ONE)).isEqualTo("90 assumed");
      reads("load-pressing", stating(limited("femur", "74", "90"), ONE)).isEqualTo("900 fact");
      // half way from a tenth to all of it
      reads("load-pressing", stating(limited("humerus", "74", "11"), ONE)).isEqualTo("495 assumed");
    }

    @Test
    void is_read_as_the_largest_of_several_and_listed_one_by_one() {
      CaseText text = stating(done("femur", "74", "[]"), ONE, OTHER);
      reads("load-pressing", text).isEqualTo("900–1200 fact" + ASK + "loads");
      reads("load-bending", text).isEqualTo("30 fact");
      reads("load-torsion", text).isEqualTo("4 fact");
      assertThat(PERMITTED.of(scene(text)))
          .extracting(LoadRange::activity)
          .containsExactly("two crutches", "stairs");
    }
  }

  @Nested
  class The_table {

    @ParameterizedTest
    @EnumSource(BoneName.class)
    void marks_each_number_as_read_or_remembered_and_grows_from_light_to_full(BoneName bone) {
      for (UsualLoad load : UsualLoads.published().of(bone)) {
        assertThat(load.source()).containsAnyOf("excerpt read", "from memory");
        Dimension kg = Dimension.assumed(75, 75, "");
        LoadSpans light = load.light(kg);
        LoadSpans full = load.full(kg);
        assertThat(light.press().max()).isLessThan(full.press().max());
        assertThat(light.bending().max()).isLessThan(full.bending().max());
        assertThat(light.torsion().max()).isLessThan(full.torsion().max());
      }
    }

    @Test
    void says_which_side_is_under_tension_only_where_that_is_known() {
      assertThat(tension(BoneName.FEMUR)).contains(70.0);
      assertThat(tension(BoneName.CLAVICLE)).contains(90.0);
      assertThat(tension(BoneName.TIBIA)).isEmpty();
      assertThat(tension(BoneName.HUMERUS)).isEmpty();
    }

    private static java.util.Optional<Double> tension(BoneName bone) {
      return UsualLoads.published().of(bone).get(0).tensionDeg();
    }

    @Test
    void of_a_site_is_the_one_that_is_read_and_leaves_the_published_as_it_was() {
      BoneLoad load =
          new BoneLoad(
              "walking",
              Quantity.of(1500),
              new Quantity(20, 30),
              java.util.Optional.empty(),
              Quantity.of(5),
              "their laboratory");
      UsualLoads site =
          UsualLoads.published().with(BoneName.FEMUR, List.of(UsualLoad.ofSite(load, true)));
      Subject subject = Subject.of(done("femur", "150", "[]").file()).get(0);

      Scene here = new Scene(subject, EveryMeasure.catalogue(site));
      Scene published = new Scene(subject, EveryMeasure.catalogue());

      // stated for 75 kg; this patient weighs twice as much
      assertThat(here.read("load-pressing").shown()).isEqualTo("3000");
      assertThat(here.read("load-bending").shown()).isEqualTo("40–60");
      assertThat(published.read("load-pressing").shown()).isEqualTo("3679–4562");
    }
  }

  @Test
  void what_would_narrow_them_is_asked_in_the_order_of_the_operation_first() {
    CaseText text = done("femur", "null", "[]").at("/operations/0", "{aftercare: null}");
    assertThat(PERMITTED.missing(scene(text)))
        .extracting(MissingFact::field)
        .containsExactly("op-1/aftercare/load", "patient/weightKg", "loads");
  }

  @Test
  void a_measure_rests_on_loads_where_it_names_them() {
    assertThat(
            Taken.CATALOGUE.definitions().stream()
                .filter(LoadMeasures::restsOnLoads)
                .map(org.bonewright.measures.Definition::id))
        .contains("load-pressing", "load-bending", "load-torsion")
        .doesNotContain("load-limit-given");
  }
}
