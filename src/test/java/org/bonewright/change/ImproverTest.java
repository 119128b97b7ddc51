package org.bonewright.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.shelf.Shelf;
import org.bonewright.shelf.UsualShelf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class ImproverTest {

  static final RuleSet RULES = RuleSet.built();
  private static final Shelf EMPTY =
      new Shelf("empty", List.of(), List.of(), List.of(), List.of(), false, false);

  /** What was walked once serves every test. */
  private static final Map<DrawnCase, Improvement> WALKED = new ConcurrentHashMap<>();

  static Improvement improved(DrawnCase drawn) {
    return WALKED.computeIfAbsent(drawn, once -> improved(once, UsualShelf.shelf(), 80));
  }

  private static Improvement improved(DrawnCase drawn, Shelf shelf, int most) {
    return new Improver(RULES, shelf, most, judged -> {})
        .improve(drawn.bytes(), "plan-a")
        .orElseThrow();
  }

  static List<DrawnCase> badPlans() {
    return List.of(
        DrawnCase.threeSlips(), DrawnCase.thinNailFewSamples(), DrawnCase.weakShortPlate());
  }

  /** Judge a file with nothing of the package under test. */
  private static Map<Place, PlanChange.Standing> judged(ObjectNode root) {
    byte[] bytes = root.toString().getBytes(StandardCharsets.UTF_8);
    JudgedCase judged = new Judge(RULES).judge(new Intake().read(bytes).caseFile().orElseThrow());
    Map<Place, PlanChange.Standing> standings = new LinkedHashMap<>();
    for (Subject subject : judged.subjects()) {
      for (Judgement judgement : judged.of(subject)) {
        standings.put(
            new Place(judgement.card().id(), subject.id()),
            new PlanChange.Standing(
                judgement.verdict().kind(), judgement.severity().orElse(Severity.NOTE)));
      }
    }
    return standings;
  }

  private static ObjectNode with(DrawnCase drawn, ObjectNode plan) {
    ObjectNode copy = drawn.root().deepCopy();
    ((ArrayNode) copy.path("plans")).set(0, plan);
    return copy;
  }

  @ParameterizedTest
  @MethodSource("badPlans")
  void a_bad_plan_is_led_to_one_that_leaves_nothing_grave_unmet(DrawnCase drawn) {
    Improvement walk = improved(drawn);

    assertThat(walk.outcome()).isEqualTo(Improvement.Outcome.FOUND);
    assertThat(walk.unmet()).isEmpty();
    Map<Place, PlanChange.Standing> before = judged(drawn.root());
    Map<Place, PlanChange.Standing> after = judged(with(drawn, walk.drawn()));
    assertThat(after)
        .allSatisfy(
            (place, is) -> {
              if (place.subject().startsWith("plan-a")
                  && is.grave().compareTo(Severity.MAJOR) >= 0) {
                assertThat(is.verdict()).as(place.toString()).isNotEqualTo(VerdictKind.UNMET);
                if (is.verdict() == VerdictKind.UNKNOWN) {
                  assertThat(before.get(place))
                      .as("a doubt that the steps made: " + place)
                      .extracting(PlanChange.Standing::verdict)
                      .isIn(VerdictKind.UNKNOWN, VerdictKind.NOT_APPLICABLE);
                }
              }
            });
  }

  @ParameterizedTest
  @MethodSource("badPlans")
  void every_step_turns_what_it_says_and_nothing_else(DrawnCase drawn) {
    Improvement walk = improved(drawn);
    PlanInFile at = PlanInFile.of(drawn.bytes(), "plan-a").orElseThrow();

    for (Improvement.Step step : walk.steps()) {
      Map<Place, PlanChange.Standing> before = judged(at.root());
      at =
          new Options(UsualShelf.shelf())
              .of(at, step.move(), step.stage()).stream()
                  .filter(option -> option.words().equals(step.words()))
                  .findFirst()
                  .orElseThrow()
                  .file();
      Map<Place, PlanChange.Standing> after = judged(at.root());
      assertThat(turned(before, after, -1)).isEqualTo(told(step.better()));
      assertThat(turned(before, after, 1)).isEqualTo(told(step.worse()));
    }
    assertThat(at.plan()).isEqualTo(walk.drawn());
  }

  private static Set<String> turned(
      Map<Place, PlanChange.Standing> before, Map<Place, PlanChange.Standing> after, int sign) {
    Set<String> turned = new TreeSet<>();
    after.forEach(
        (place, is) -> {
          PlanChange.Standing was = before.get(place);
          if (Integer.signum(is.badness() - was.badness()) == sign) {
            turned.add(place + " " + was.inWords() + " " + is.inWords());
          }
        });
    return turned;
  }

  private static Set<String> told(List<PlanChange.Turned> all) {
    Set<String> told = new TreeSet<>();
    for (PlanChange.Turned one : all) {
      told.add(
          new Place(one.principle(), one.subject())
              + " "
              + one.from().inWords()
              + " "
              + one.to().inWords());
    }
    return told;
  }

  @ParameterizedTest
  @MethodSource("badPlans")
  void no_fact_is_changed_and_the_plan_keeps_its_name_and_stages(DrawnCase drawn) {
    Improvement walk = improved(drawn);
    ObjectNode before = (ObjectNode) drawn.root().at("/plans/0");
    List<String> changed = new ArrayList<>();
    for (String field : walk.drawn().propertyNames()) {
      if (!walk.drawn().path(field).equals(before.path(field))) {
        changed.add(field);
      }
    }
    assertThat(changed).isSubsetOf("stages", "triggers", "resultPath").isNotEmpty();
    assertThat(walk.drawn().path("stages")).hasSameSizeAs(before.path("stages"));
    List<String> inStage = new ArrayList<>();
    ObjectNode stage = (ObjectNode) walk.drawn().at("/stages/0");
    for (String field : stage.propertyNames()) {
      if (!stage.path(field).equals(before.at("/stages/0/" + field))) {
        inStage.add(field);
      }
    }
    assertThat(inStage).isSubsetOf("fixation", "samples", "reduction", "compression");
  }

  @ParameterizedTest
  @MethodSource("badPlans")
  void breadth_first_over_the_same_moves_finds_no_shorter_path(DrawnCase drawn) {
    Improvement walk = improved(drawn);

    assertThat(walk.shortness()).contains(Improvement.Shortness.NONE_SHORTER);
    BlindSearch blind = new BlindSearch(RULES, drawn);
    for (int moves = 0; moves < walk.steps().size(); moves++) {
      assertThat(blind.leavesNothingGraveUnmet()).as("after " + moves + " moves").isFalse();
      if (moves + 1 < walk.steps().size()) {
        blind.oneMoveFarther();
      }
    }
  }

  @Test
  void three_slips_take_three_steps() {
    assertThat(improved(DrawnCase.threeSlips()).steps())
        .extracting(Improvement.Step::move)
        .containsExactlyInAnyOrder("prebend-plate", "restore-alignment", "sampling");
  }

  @Test
  void the_same_case_gives_the_same_walk() {
    assertThat(improved(DrawnCase.threeSlips(), UsualShelf.shelf(), 80))
        .isEqualTo(improved(DrawnCase.threeSlips()));
  }

  @Test
  void a_weak_plate_gives_way_to_the_cheapest_that_is_strong_enough_and_long_enough() {
    Improvement walk = improved(DrawnCase.weakShortPlate());

    assertThat(walk.steps()).singleElement().extracting("move").isEqualTo("stronger-plate");
    assertThat(walk.before().exposedMm()).isEqualTo(128);
    assertThat(walk.after().exposedMm()).isGreaterThan(128);
    assertThat(walk.after().holes()).isEqualTo(8);
    assertThat(walk.shortness()).contains(Improvement.Shortness.NONE_SHORTER);
  }

  @Test
  void an_empty_shelf_leaves_a_weak_plate_and_says_that_it_has_no_other() {
    Improvement walk = improved(DrawnCase.weakShortPlate(), EMPTY, 40);

    assertThat(walk.outcome()).isEqualTo(Improvement.Outcome.NONE);
    assertThat(walk.unmet())
        .anySatisfy(
            stays -> {
              assertThat(stays.principle()).isEqualTo("plate-size-fits-bone");
              assertThat(stays.why()).contains("the shelf has no such implant", "a stronger plate");
            });
    assertThat(walk.shelf()).isEqualTo("empty");
  }

  @Test
  void the_number_of_plans_judged_is_bounded_and_a_cut_is_told() {
    Improvement walk = improved(DrawnCase.thinNailFewSamples(), UsualShelf.shelf(), 3);

    assertThat(walk.judged()).isLessThanOrEqualTo(3);
    assertThat(walk.outcome()).isEqualTo(Improvement.Outcome.NONE);
    assertThat(walk.unmet())
        .anyMatch(stays -> stays.why().startsWith("The number of tries ran out"));
  }

  @Test
  void what_is_unknown_stays_unknown_and_is_told_with_its_question() {
    Improvement walk = improved(DrawnCase.demo("femur-three-operations"));

    assertThat(walk.outcome()).isEqualTo(Improvement.Outcome.FOUND);
    assertThat(walk.steps()).singleElement().extracting("move").isEqualTo("sampling");
    assertThat(walk.toFindOut()).isNotEmpty();
    assertThat(walk.toFindOut().get(0).worst()).isEqualTo(Severity.CRITICAL);
    assertThat(walk.toFindOut().get(0).question()).contains("same organism");
  }

  @Test
  void other_plans_of_the_case_make_no_difference() {
    PlanInFile whole =
        PlanInFile.of(DrawnCase.demo("tibia-minimum-set").bytes(), "plan-a").orElseThrow();
    Map<Place, PlanChange.Standing> all = judged(whole.root());
    Map<Place, PlanChange.Standing> alone = judged(whole.alone().root());

    assertThat(alone.keySet()).anyMatch(place -> place.subject().equals("plan-a"));
    assertThat(all).containsAllEntriesOf(alone);
  }

  @Test
  void a_plan_that_is_not_there_gives_nothing() {
    byte[] file = DrawnCase.thinNailFewSamples().bytes();
    assertThat(new Improver(RULES, EMPTY, 5, judged -> {}).improve(file, "plan-z")).isEmpty();
  }

  @Test
  void every_move_of_the_cards_is_drawn_or_has_a_reason_why_not() {
    for (String move : RULES.moves().words().keySet()) {
      assertThat(Options.names().contains(move) ^ Undrawn.of(move).isPresent())
          .as("drawn, or a reason why not, and not both: " + move)
          .isTrue();
    }
    assertThat(RULES.moves().words().keySet()).containsAll(Options.names());
  }

  @Test
  void only_what_a_plan_can_do_is_drawn_never_what_was_found() {
    assertThat(Options.names())
        .doesNotContain("name-nonunion", "markers", "measure-bone", "record-nerve", "treat-host");
  }
}
