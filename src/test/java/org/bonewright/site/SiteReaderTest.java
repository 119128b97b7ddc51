package org.bonewright.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.measures.load.UsualLoad;
import org.bonewright.measures.load.UsualLoads;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A site file is used whole, or refused with everything that is wrong with it. */
class SiteReaderTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final String SPAN = "plate-span-ratio";
  private static final String FILL = "nail-diameter-fits-isthmus";

  private static List<String> problems(SiteText text) {
    return text.read(RULES).problems().stream().map(Problem::inWords).toList();
  }

  private static void refused(SiteText text, String... words) {
    List<String> problems = problems(text);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0)).contains(words);
  }

  private static void refused(String text, String... words) {
    List<Problem> problems = new SiteReader(RULES).read(text.getBytes(UTF_8)).problems();
    assertThat(problems.stream().map(Problem::inWords)).singleElement().asString().contains(words);
  }

  private static SiteText span(String where, double value) {
    return new SiteText().limit(SPAN, "pressed", where, value, "1");
  }

  @Test
  void the_example_is_usable_and_marked_as_invented() throws IOException {
    SiteReading reading =
        new SiteReader(RULES).read(Files.readAllBytes(Path.of("sites/example.json")));
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.changes().orElseThrow().invented()).isTrue();
    assertThat(reading.changes().orElseThrow().hash()).matches("[0-9a-f]{12}");
  }

  @Test
  void every_problem_is_told_at_once_in_the_order_of_the_file() {
    SiteText text =
        span("simple compresed", 4.5)
            .limit("no-such-principle", "x", 1, "1")
            .limit(FILL, "close", 1.4, "cm")
            .severity(SPAN, "critical", "note");
    String broken = text.text().replace("\"name\": \"test-site\"", "\"nam\": \"test-site\"");

    List<Problem> problems = new SiteReader(RULES).read(broken.getBytes(UTF_8)).problems();

    assertThat(problems)
        .extracting(Problem::pointer)
        .contains(
            "/nam",
            "/limits/0/where",
            "/limits/1/principle",
            "/limits/2/unit",
            "/severities/0/from");
    assertThat(problems).allMatch(problem -> problem.place().isPresent());
    assertThat(problems.stream().map(p -> p.place().orElseThrow())).isSorted();
  }

  @Nested
  class A_shelf {

    private static String with(String shelf) {
      return """
      {"schema": "bonewright/site/1", "name": "test-site", "provenance": "invented",
      "shelf": {%s, "plugs": true, "tensionDevice": false}}
      """
          .formatted(shelf);
    }

    private static String plates(String holes) {
      return "{\"family\": \"small-fragment\", \"material\": \"steel-cold-worked\","
          + " \"holes\": "
          + holes
          + "}";
    }

    @Test
    void is_read_beside_limits_or_alone_and_changes_no_rule() throws IOException {
      SiteReading reading =
          new SiteReader(RULES).read(Files.readAllBytes(Path.of("sites/shelf-example.json")));
      assertThat(reading.problems()).isEmpty();
      assertThat(reading.shelf().orElseThrow().name()).isEqualTo("example-small-hospital");
      assertThat(reading.shelf().orElseThrow().plates()).hasSize(3);
      assertThat(reading.changes().orElseThrow().limits()).isEmpty();
    }

    @Test
    void that_is_not_listed_is_not_there() throws IOException {
      assertThat(
              new SiteReader(RULES).read(Files.readAllBytes(Path.of("sites/example.json"))).shelf())
          .isEmpty();
    }

    @Test
    void lists_each_size_once_and_none_empty() {
      refused(with("\"plates\": [" + plates("[]") + "]"), "/shelf/plates/0/holes", "no size");
      refused(with("\"plates\": [" + plates("[6, 6]") + "]"), "/shelf/plates/0/holes", "twice");
      refused(
          with("\"plates\": [" + plates("[6]") + ", " + plates("[8]") + "]"),
          "/shelf/plates/1/family",
          "a second time");
      refused(with("\"lagScrewMm\": [3.5, 3.5]"), "/shelf/lagScrewMm", "twice");
    }

    @Test
    void has_generic_sizes_only_within_what_there_can_be() {
      refused(
          with("\"plates\": [" + plates("[6]").replace("small-fragment", "long-one") + "]"),
          "/shelf/plates/0/family",
          "small-fragment");
      refused(with("\"plates\": [" + plates("[99]") + "]"), "/shelf/plates/0/holes/0", "2 to 30");
    }
  }

  @Nested
  class A_principle {

    @Test
    void that_does_not_exist_is_an_error_with_the_nearest_as_a_hint() {
      refused(
          new SiteText().limit("plate-span-rato", "pressed", "simple compressed", 4.5, "1"),
          "/limits/0/principle",
          "Did you mean \"plate-span-ratio\"?");
    }

    @Test
    void that_is_a_promise_of_the_program_cannot_be_changed() {
      refused(new SiteText().severity("unknown-is-not-met", "major", "minor"), "promise");
    }

    @Test
    void that_refuses_says_why() {
      refused(
          new SiteText().limit("infection-confirmatory-sign-stops-plan", "confirmed", 2, "1"),
          "which this one is not",
          "One confirmatory sign proves infection");
      refused(
          new SiteText().severity("plan-leaves-bone-held", "critical", "major"),
          "A bone that nothing holds");
    }
  }

  @Nested
  class A_limit {

    @Test
    void that_does_not_exist_is_an_error_that_lists_those_that_do() {
      refused(
          new SiteText().limit(SPAN, "presed", "simple compressed", 4.5, "1"),
          "/limits/0/limit",
          "pressed, pressedLeast",
          "Did you mean \"pressed\"?");
    }

    @Test
    void needs_the_words_for_which_it_holds() {
      refused(new SiteText().limit(SPAN, "pressed", 4.5, "1"), "/limits/0/where", "found nothing");
      refused(span("simple bridged", 4.5), "pattern and line", "simple compressed");
    }

    @Test
    void of_a_single_value_takes_no_words() {
      refused(
          new SiteText().limit(FILL, "close", "femur", 1.4, "mm"),
          "single value",
          "leave the field");
    }

    @Test
    void may_be_set_for_words_that_the_card_keeps_under_the_rest() {
      assertThat(problems(new SiteText().limit(FILL, "fillWanted", "femur", 0.75, "1"))).isEmpty();
    }

    @Test
    void keeps_the_unit_of_its_measure() {
      refused(new SiteText().limit(FILL, "close", 1.4, "cm"), "/limits/0/unit", "the unit \"mm\"");
    }

    @Test
    void stays_within_what_its_measure_can_be() {
      refused(
          new SiteText().limit("absolute-needs-reduction", "contactLeast", "no", 120, "%"),
          "/limits/0/value",
          "from 0 to 100");
      refused(new SiteText().limit("five-deep-samples", "five", 3.5, "1"), "in steps of 1");
    }

    @Test
    void that_stays_as_it_is_needs_no_entry() {
      refused(span("simple compressed", 5), "the published value 5");
    }

    @Test
    void is_changed_once() {
      refused(
          span("simple compressed", 4.5).limit(SPAN, "pressed", "simple compressed", 4.6, "1"),
          "/limits/1/limit",
          "The first stands at /limits/0.");
    }

    @Test
    void does_not_pass_another_limit_of_the_same_need() {
      refused(
          span("simple compressed", 3.5),
          "/limits/0/value",
          "pressedLeast is 4",
          "above pressedLeast");
    }

    @Test
    void passes_it_where_both_move() {
      assertThat(
              problems(
                  span("simple compressed", 3.5)
                      .limit(SPAN, "pressedLeast", "simple compressed", 3, "1")))
          .isEmpty();
    }

    @Test
    void does_not_switch_its_principle_off() {
      refused(
          new SiteText().limit("five-deep-samples", "culture", 0, "d"), "can no longer be unmet");
    }
  }

  @Nested
  class A_severity {

    @Test
    void is_one_that_the_principle_gives() {
      refused(
          new SiteText().severity(SPAN, "critical", "major"), "/severities/0/from", "minor, major");
    }

    @Test
    void is_not_raised_past_the_gravest_that_the_principle_can_be() {
      refused(new SiteText().severity(SPAN, "major", "critical"), "at most major");
    }

    @Test
    void of_what_can_be_critical_is_not_lowered_below_major() {
      refused(
          new SiteText().severity("lag-screw-is-protected", "critical", "minor"), "at least major");
      assertThat(problems(new SiteText().severity("lag-screw-is-protected", "critical", "major")))
          .isEmpty();
    }

    @Test
    void that_stays_as_it_is_needs_no_entry() {
      refused(new SiteText().severity(SPAN, "minor", "minor"), "needs no entry");
    }

    @Test
    void is_changed_once() {
      refused(
          new SiteText().severity(SPAN, "minor", "note").severity(SPAN, "minor", "major"),
          "The first stands at /severities/0.");
    }

    @Test
    void of_a_milder_fault_does_not_pass_that_of_a_graver_one() {
      refused(
          new SiteText().severity(SPAN, "major", "note"), "where minor counts as minor", "order");
    }
  }

  @Nested
  class The_grounds {

    private static final String SOUND = span("simple compressed", 4.5).text();

    @Test
    void have_a_reason() {
      refused(SOUND.replace("\"Test.\"", "\" \""), "/limits/0/reason", "not blank");
    }

    @Test
    void name_a_role_and_no_person() {
      refused(SOUND.replace("\"test bench\"", "\"\""), "/limits/0/by");
      refused(SOUND.replace("test bench", "Dr. Miller"), "/limits/0/by", "a role");
    }

    @Test
    void have_a_day_that_exists() {
      refused(SOUND.replace("2026-01-31", "2026-02-30"), "/limits/0/on", "a day that exists");
      refused(SOUND.replace("2026-01-31", "31.1.2026"), "/limits/0/on", "2026-03-31");
    }
  }

  @Nested
  class Loads {

    @Test
    void of_a_bone_take_the_place_of_the_published_ones_and_of_no_other_bone() {
      RuleSet local = new SiteText().loads("femur", "walking", "stairs").on(RULES);
      UsualLoads table = local.site().orElseThrow().on(UsualLoads.published());
      assertThat(table.of(BoneName.FEMUR))
          .extracting(UsualLoad::activity)
          .containsExactly("walking", "stairs");
      assertThat(table.of(BoneName.TIBIA)).isEqualTo(UsualLoads.published().of(BoneName.TIBIA));
    }

    @Test
    void of_a_leg_are_for_75_kg_and_those_of_an_arm_for_anybody() {
      UsualLoads table =
          new SiteText()
              .loads("femur", "walking")
              .loads("humerus", "crutches")
              .on(RULES)
              .site()
              .orElseThrow()
              .on(UsualLoads.published());
      Dimension heavy = Dimension.assumed(150, 150, "");
      assertThat(table.of(BoneName.FEMUR).get(0).full(heavy).press().min()).isEqualTo(2000);
      assertThat(table.of(BoneName.HUMERUS).get(0).full(heavy).press().min()).isEqualTo(1000);
    }

    @Test
    void are_one_to_five_each_of_another_activity() {
      refused(new SiteText().loads("femur"), "/loads/0/loads", "no load", "at most 5");
      refused(
          new SiteText().loads("femur", "a", "b", "c", "d", "e", "f"), "/loads/0/loads", "6 loads");
      refused(new SiteText().loads("femur", "a", "b", "a"), "\"a\" twice", "one load of each");
    }

    @Test
    void load_the_bone() {
      refused(
          new SiteText().loadsOf("femur", SiteText.load("rest", 0, 0, 0)),
          "/loads/0/loads",
          "zeros",
          "above zero");
      refused(
          new SiteText().loadsOf("femur", SiteText.load("leap", 30000, 0, 0)),
          "/loads/0/loads/0/pressN",
          "20000");
    }

    @Test
    void of_a_bone_are_set_once() {
      refused(
          new SiteText().loads("femur", "walking").loads("femur", "stairs"),
          "/loads/1/bone",
          "The first stands at /loads/0");
    }

    @Test
    void have_grounds_like_every_change() {
      String text = new SiteText().loads("femur", "walking").text();
      refused(text.replace("test bench", "Dr Jones"), "/loads/0/by", "a role");
      refused(text.replace("2026-01-31", "2026-02-31"), "/loads/0/on", "a day that exists");
    }
  }
}
