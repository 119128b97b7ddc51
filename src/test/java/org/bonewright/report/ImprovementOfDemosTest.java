package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.change.Improvement;
import org.bonewright.change.Improver;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.bonewright.shelf.UsualShelf;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Each demo's plan is walked from once, with few tries; some are held against golden copies,
 * blessed as those of the review are.
 */
class ImprovementOfDemosTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final RuleSet RULES = RuleSet.built();
  private static final Review.Versions VERSIONS = Reviewer.versions(RULES, RULES.usual());
  private static final int FEW = 10;
  private static final Map<String, Improvement> WALKS = new TreeMap<>();

  @BeforeAll
  static void walk() throws IOException {
    Improver improver = new Improver(RULES, UsualShelf.shelf(), FEW, judged -> {});
    for (String demo :
        List.of(
            "clavicle-sound-plate-weak-host",
            "femur-three-operations",
            "humerus-fourth-operation",
            "radius-graft-alone",
            "tibia-draining-sinus",
            "tibia-minimum-set",
            "tibia-next-size-nail",
            "ulna-nineteen-years")) {
      byte[] file = Files.readAllBytes(Path.of("cases/demo", demo, "case.json"));
      WALKS.put(demo, improver.improve(file, "plan-a").orElseThrow());
    }
  }

  private static Improvement walk(String demo) {
    Improvement walk = WALKS.get(demo);
    if (walk == null) {
      throw new IllegalArgumentException(demo);
    }
    return walk;
  }

  @Test
  void no_demo_is_left_out() throws IOException {
    try (var folders = Files.list(Path.of("cases/demo"))) {
      assertThat(folders.filter(Files::isDirectory).map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(WALKS.keySet());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "femur-three-operations, FOUND",
    "humerus-fourth-operation, NOTHING_NEEDED",
    "radius-graft-alone, NOTHING_NEEDED",
    "tibia-draining-sinus, FOUND",
    "tibia-next-size-nail, FOUND",
    "clavicle-sound-plate-weak-host, NONE",
    "tibia-minimum-set, NONE",
    "ulna-nineteen-years, NONE"
  })
  void a_bad_plan_is_made_good_or_it_is_told_why_not(String demo, Improvement.Outcome outcome) {
    Improvement walk = walk(demo);

    assertThat(walk.outcome()).isEqualTo(outcome);
    assertThat(walk.unmet().isEmpty()).isEqualTo(outcome.isEnough());
    assertThat(walk.unmet()).allSatisfy(stays -> assertThat(stays.why()).isNotBlank());
    assertThat(walk.judged()).isLessThanOrEqualTo(FEW);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "clavicle-sound-plate-weak-host | smoking-addressed | The patient is treated",
        "tibia-minimum-set | vitality-type-recorded | It asks for a fact",
        "ulna-nineteen-years | cumulative-bone-loss | only a surgeon can make"
      })
  void what_stays_unmet_has_the_reason_that_fits(String demo, String principle, String why) {
    assertThat(walk(demo).unmet())
        .anySatisfy(
            stays -> {
              assertThat(stays.principle()).isEqualTo(principle);
              assertThat(stays.why()).contains(why);
            });
  }

  @Test
  void infection_that_is_only_suspected_is_named_before_the_steps() throws IOException {
    byte[] file = Files.readAllBytes(Path.of("cases/faults/humerus-false-joint-three-plans.json"));
    Improvement walk =
        new Improver(RULES, UsualShelf.shelf(), FEW, judged -> {})
            .improve(file, "plan-a")
            .orElseThrow();

    assertThat(walk.outcome()).isEqualTo(Improvement.Outcome.NONE);
    assertThat(walk.infection()).isEqualTo(Improvement.Infection.COMES_FIRST);
    assertThat(ImprovementText.render(walk, VERSIONS))
        .containsSubsequence("INFECTION FIRST", "NONE FOUND", "STEPS, IN ORDER")
        .containsIgnoringWhitespaces("Infection is in doubt: markers and samples first");
    assertThat(walk("clavicle-sound-plate-weak-host").infection())
        .isEqualTo(Improvement.Infection.NOT_AT_ISSUE);
  }

  @Test
  void what_one_step_makes_worse_a_later_one_puts_right() {
    Improvement walk = walk("tibia-next-size-nail");

    assertThat(walk.steps())
        .extracting(Improvement.Step::move)
        .containsExactly("static-locking", "sampling", "larger-nail");
    assertThat(walk.steps().get(0).worse()).hasSize(1);
    assertThat(walk.milder()).isEmpty();
  }

  @Test
  void proven_infection_is_drawn_in_two_stages_and_named_before_the_good_news() {
    Improvement walk = walk("tibia-draining-sinus");

    assertThat(walk.infection()).isEqualTo(Improvement.Infection.DRAWN_IN_STAGES);
    assertThat(walk.steps()).first().extracting(Improvement.Step::move).isEqualTo("infection-plan");
    assertThat(ImprovementText.render(walk, VERSIONS))
        .containsSubsequence("INFECTION FIRST", "sketch to take to", "FOUND", "STEPS, IN ORDER");
  }

  @Test
  void proven_infection_ends_the_walk_where_no_stages_can_be_drawn() throws IOException {
    JsonNode root =
        JsonMapper.shared()
            .readTree(Files.readAllBytes(Path.of("cases/demo/tibia-draining-sinus/case.json")));
    ((ObjectNode) root.at("/plans/0/stages/0")).putArray("removed");
    Improvement walk =
        new Improver(RULES, UsualShelf.shelf(), FEW, judged -> {})
            .improve(root.toString().getBytes(StandardCharsets.UTF_8), "plan-a")
            .orElseThrow();

    assertThat(walk.outcome()).isEqualTo(Improvement.Outcome.INFECTION_FIRST);
    assertThat(walk.steps()).isEmpty();
    assertThat(walk.judged()).isEqualTo(1);
    assertThat(walk.unmet())
        .filteredOn(stays -> stays.principle().equals("infection-confirmatory-sign-stops-plan"))
        .singleElement()
        .extracting(Improvement.Stays::why)
        .asString()
        .startsWith("Infection must be treated first");
  }

  @Test
  void a_step_that_opens_something_is_followed_at_once_by_one_that_closes_it() {
    assertThat(walk("tibia-minimum-set").steps())
        .extracting(Improvement.Step::move)
        .startsWith("sampling", "result-path");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "clavicle-sound-plate-weak-host",
        "femur-three-operations",
        "radius-graft-alone",
        "tibia-draining-sinus",
        "tibia-next-size-nail"
      })
  void the_text_is_as_it_was(String demo) throws IOException {
    Path golden = GOLDEN.resolve(demo + ".improve.txt");
    String text =
        ImprovementText.render(walk(demo), VERSIONS).replace(VERSIONS.hash(), "============");
    if (Boolean.getBoolean("bless")) {
      Files.writeString(golden, text);
    }
    assertThat(text).isEqualTo(Files.readString(golden));
  }

  @Test
  void every_text_fits_a_screen_and_says_that_it_gives_no_orders() {
    WALKS.forEach(
        (demo, walk) -> {
          String text = ImprovementText.render(walk, VERSIONS);
          assertThat(text.lines().count()).as(demo).isLessThanOrEqualTo(80);
          assertThat(text.lines()).as(demo).allMatch(line -> line.length() <= Page.WIDTH);
          assertThat(text)
              .as(demo)
              .contains("Options to discuss, not orders.", "not thereby safe", "CAUTION");
        });
  }

  @Test
  void good_news_never_stands_without_what_is_still_open() {
    assertThat(ImprovementText.render(walk("femur-three-operations"), VERSIONS))
        .containsIgnoringWhitespaces("Still open: 3 questions, 1 at worst critical, see below.");
    assertThat(ImprovementText.render(walk("radius-graft-alone"), VERSIONS))
        .containsIgnoringWhitespaces("Still open: 1 question, at worst major, see below.");
  }

  @Test
  void json_holds_the_walk_and_the_plan_as_it_would_be_drawn() {
    Improvement walk = walk("femur-three-operations");
    JsonNode json = JsonMapper.shared().readTree(ImprovementJson.render(walk, VERSIONS));

    assertThat(json.path("schema").asString()).isEqualTo("bonewright/improvement/1");
    assertThat(json.path("outcome").asString()).isEqualTo("found");
    assertThat(json.path("shortness").asString()).isEqualTo("none-shorter");
    assertThat(json.path("steps").path(0).path("move").asString()).isEqualTo("sampling");
    assertThat(json.path("drawn")).isEqualTo(walk.drawn());
    assertThat(json.at("/drawn/stages/0/samples/deepSamples").asInt()).isEqualTo(5);
    assertThat(json.path("toFindOut").size()).isEqualTo(walk.toFindOut().size());
    assertThat(json.toString()).doesNotContain("null");
  }
}
