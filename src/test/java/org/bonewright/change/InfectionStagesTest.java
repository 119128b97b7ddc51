package org.bonewright.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.shelf.UsualShelf;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A plan that goes into proven infection in one sitting, drawn in two stages. */
class InfectionStagesTest {

  private static final DrawnCase SINUS = DrawnCase.demo("tibia-draining-sinus");

  private static List<Option> options(DrawnCase drawn) {
    return new Options(UsualShelf.shelf())
        .of(PlanInFile.of(drawn.bytes(), "plan-a").orElseThrow(), "infection-plan", "plan-a");
  }

  private static DrawnCase changed(Consumer<ObjectNode> change) {
    ObjectNode copy = SINUS.root().deepCopy();
    change.accept(copy);
    return new DrawnCase(copy);
  }

  @Test
  void the_first_has_every_part_that_the_cards_ask_for_and_no_graft_plate_or_nail() {
    assertThat(options(SINUS)).isNotEmpty();
    for (Option option : options(SINUS)) {
      JsonNode first = option.file().stage(0);
      assertThat(first.path("fixation")).hasSize(1);
      assertThat(first.at("/fixation/0/kind").asString()).isEqualTo("external-fixator");
      assertThat(first.at("/biology").toString()).isEqualTo("[{\"kind\":\"spacer\"}]");
      assertThat(first.at("/removed/0/of").asString()).isEqualTo("op-1/nail-1");
      assertThat(first.at("/samples/deepSamples").asInt()).isEqualTo(5);
      for (String part : List.of("debridement", "deadSpace", "softTissueCover", "team")) {
        assertThat(first.at("/infectionCare/" + part).asString()).as(part).isEqualTo("yes");
      }
      assertThat(first.at("/infectionCare/antibioticWeeks/min").asInt()).isEqualTo(6);
    }
  }

  @Test
  void the_second_is_the_stage_as_drawn_four_to_eight_weeks_later_without_the_fixator() {
    ObjectNode drawn = SINUS.stage();
    for (Option option : options(SINUS)) {
      ObjectNode second = option.file().stage(1);
      assertThat(second.at("/daysAfterStageBefore").toString())
          .isEqualTo("{\"min\":28,\"max\":56}");
      assertThat(second.at("/removed/0/of").asString()).isEqualTo("debridement/fixator-1");
      for (String field : drawn.propertyNames()) {
        if (!List.of("removed", "infectionCare").contains(field)) {
          assertThat(second.path(field)).as(field).isEqualTo(drawn.path(field));
        }
      }
    }
  }

  @Test
  void pins_stand_clear_of_the_zone_and_of_the_joints_on_another_side_than_the_plate() {
    for (Option option : options(SINUS)) {
      for (JsonNode pin : option.file().stage(0).at("/fixation/0/pins")) {
        double level = pin.path("atMm").asDouble();
        assertThat(level).isBetween(50.0, 322.0);
        assertThat(level < 188 - 29 || level > 222 + 29).as("level " + level).isTrue();
        assertThat(pin.path("direction").asString()).isEqualTo("anteromedial");
      }
    }
  }

  @Test
  void every_way_reads_as_a_case_file_and_no_fact_is_changed() {
    ObjectNode facts = SINUS.root().deepCopy();
    facts.remove("plans");
    for (Option option : options(SINUS)) {
      assertThat(new Intake().read(option.file().bytes()).caseFile()).isPresent();
      ObjectNode left = option.file().root().deepCopy();
      left.remove("plans");
      assertThat(left).isEqualTo(facts);
    }
  }

  @Test
  void a_spacer_lies_in_the_wound_only_where_graft_follows() {
    DrawnCase bare = SINUS.stage(stage -> stage.putArray("biology"));
    assertThat(options(bare)).isNotEmpty();
    assertThat(options(bare).get(0).file().stage(0).path("biology")).isEmpty();
  }

  @Test
  void they_are_told_as_a_change_that_turns_the_verdict() {
    List<PlanChange> changes =
        new ChangeFinder(RuleSet.built(), UsualShelf.shelf())
            .changes(SINUS.bytes(), "infected-plan-has-all-parts", "plan-a");
    assertThat(changes).singleElement().extracting(PlanChange::move).isEqualTo("infection-plan");
  }

  @Nested
  class Are_not_drawn {

    @Test
    void where_infection_is_not_proven() {
      DrawnCase quiet =
          changed(
              root -> {
                root.set(
                    "findings", DrawnCase.demo("humerus-fourth-operation").root().path("findings"));
                ((ObjectNode) root.at("/operations/1/outcome"))
                    .put("mode", "no-union-metal-intact");
              });
      assertThat(new Intake().read(quiet.bytes()).caseFile()).isPresent();
      assertThat(options(quiet)).isEmpty();
    }

    @Test
    void where_the_plan_lets_metal_stay() {
      assertThat(options(SINUS.stage(stage -> stage.putArray("removed")))).isEmpty();
    }

    @Test
    void where_a_nail_is_to_follow_the_pins() {
      assertThat(
              options(
                  SINUS.implant(
                      plate -> plate.removeAll().put("id", "nail-2").put("kind", "nail"))))
          .isEmpty();
    }

    @Test
    void where_pins_find_no_room_beside_the_zone() {
      assertThat(
              options(changed(root -> ((ObjectNode) root.at("/injury/zone")).put("fromMm", 110))))
          .isEmpty();
    }

    @Test
    void in_the_arm() {
      assertThat(options(changed(root -> ((ObjectNode) root.at("/bone")).put("name", "humerus"))))
          .isEmpty();
    }

    @Test
    void where_the_plan_has_stages_already() {
      assertThat(options(new DrawnCase(options(SINUS).get(0).file().root()))).isEmpty();
    }
  }
}
