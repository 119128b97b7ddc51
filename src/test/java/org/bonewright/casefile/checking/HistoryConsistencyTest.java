package org.bonewright.casefile.checking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.casefile.checking.Limits.OP_1;
import static org.bonewright.casefile.checking.Limits.OP_2;
import static org.bonewright.casefile.checking.Limits.OP_3;
import static org.bonewright.casefile.checking.Limits.PLATE;
import static org.bonewright.casefile.checking.Limits.assertObjections;
import static org.bonewright.casefile.checking.Limits.assertSound;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the checks of days, names, removals, outcomes and plans accept just inside each limit, and
 * object to just beyond.
 */
class HistoryConsistencyTest {

  @Nested
  class Days {

    @Test
    void of_operations_may_be_equal_or_overlap() {
      assertSound(Altered.plateHistory().with(OP_3 + "/day", "100"));
      assertSound(Altered.plateHistory().with(OP_3 + "/day", "{\"min\": 60, \"max\": 105}"));
      assertObjections(Altered.plateHistory().with(OP_3 + "/day", "99"))
          .contains("error " + OP_3 + "/day");
    }

    @Test
    void are_needed_of_what_was_done_and_not_of_what_is_planned() {
      assertObjections(Altered.minimal().without(OP_1 + "/day"))
          .containsExactly("error " + OP_1 + "/day");
      assertObjections(Altered.nailAndFixator().with("/plans/0/stages/0/day", "310"))
          .containsExactly("error /plans/0/stages/0/day");
    }

    @Test
    void of_an_outcome_may_be_that_of_the_operation() {
      assertSound(Altered.minimal().with(OP_1 + "/outcome/day", "0"));
      Altered exact = Altered.minimal().with(OP_1 + "/day", "30");
      assertSound(exact.with(OP_1 + "/outcome/day", "30"));
      assertObjections(exact.with(OP_1 + "/outcome/day", "29"))
          .containsExactly("error " + OP_1 + "/outcome/day");
    }

    @Test
    void of_findings_may_lie_anywhere_between_operations() {
      assertSound(
          Altered.plateHistory()
              .with("/findings/-", "{\"day\": 200}")
              .with("/findings/-", "{\"day\": {\"min\": 1, \"max\": 300}}"));
    }

    @Test
    void of_treatment_without_an_operation_run_forward() {
      assertSound(Altered.plateHistory().with("/nonOperative/0/toDay", "0"));
      assertObjections(Altered.plateHistory().with("/nonOperative/0/fromDay", "6"))
          .containsExactly("error /nonOperative/0/toDay");
    }

    @Test
    void of_metal_seen_loose_lie_between_its_operation_and_its_removal() {
      String seen = PLATE + "/screws/1/stateDay";
      assertSound(Altered.plateHistory().with(seen, "5"));
      assertSound(Altered.plateHistory().with(seen, "110"));
      assertObjections(Altered.plateHistory().with(seen, "4")).containsExactly("error " + seen);
      assertObjections(Altered.plateHistory().with(seen, "111")).containsExactly("error " + seen);
    }

    @Test
    void of_single_screws_end_when_the_last_of_the_row_is_out() {
      Altered rows =
          Altered.plateHistory()
              .with(PLATE + "/screws/1/at", "[9, 10]")
              .with(PLATE + "/screws/-", "{\"at\": [8], \"type\": \"cortical\"}");
      assertSound(rows.with(PLATE + "/screws/1/stateDay", "100"));
      assertObjections(rows.with(PLATE + "/screws/1/stateDay", "101"))
          .containsExactly("error " + PLATE + "/screws/1/stateDay");
    }
  }

  @Nested
  class Names {

    @Test
    void of_implants_may_return_in_another_operation() {
      assertSound(Altered.plateHistory().with("/plans/1/stages/0/fixation/-", plate("plate-1")));
    }

    @Test
    void of_implants_are_given_once_in_an_operation() {
      assertObjections(Altered.plateHistory().with(OP_1 + "/fixation/-", plate("lag-1")))
          .containsExactly("error " + OP_1 + "/fixation/3/id");
    }

    @ParameterizedTest
    @ValueSource(strings = {"op-1", "plan-a", "plan-b", "a-1"})
    void of_stages_are_used_for_nothing_else(String taken) {
      assertThat(
              Altered.plateHistory().with("/plans/1/stages/0/id", "\"" + taken + "\"").objections())
          .hasSize(1)
          .allMatch(objection -> objection.startsWith("error /plans/"));
    }

    @Test
    void of_accepted_things_may_be_those_of_operations_stages_and_plans() {
      for (String known : new String[] {"op-2", "a-2", "plan-b"}) {
        assertSound(Altered.plateHistory().with("/accepted/0/on", "\"" + known + "\""));
      }
      assertObjections(Altered.plateHistory().with("/accepted/0/on", "\"plate-1\""))
          .containsExactly("error /accepted/0/on");
    }

    private static String plate(String id) {
      return "{\"id\": \"" + id + "\", \"kind\": \"plate\"}";
    }
  }

  @Nested
  class Removals {

    @Test
    void name_what_an_earlier_operation_put_in() {
      assertSound(Altered.minimal().with(OP_1 + "/removed", "[]"));
      assertObjections(Altered.minimal().with(OP_1 + "/removed", removal("op-0/plate-1", "")))
          .containsExactly("error " + OP_1 + "/removed/0/of");
    }

    @Test
    void in_the_operation_that_put_it_in_are_doubted() {
      assertObjections(Altered.minimal().with(OP_1 + "/removed", removal("op-1/plate-1", "")))
          .contains("warning " + OP_1 + "/removed/0/of");
    }

    @Test
    void of_another_plan_or_of_a_later_stage_are_refused() {
      assertObjections(
              Altered.plateHistory().with("/plans/1/stages/0/removed", removal("a-2/plate-1", "")))
          .containsExactly("error /plans/1/stages/0/removed/0/of");
      assertObjections(
              Altered.plateHistory().with("/plans/0/stages/0/removed", removal("a-2/plate-1", "")))
          .containsExactly("error /plans/0/stages/0/removed/0/of");
    }

    @Test
    void of_the_same_metal_may_stand_in_two_plans() {
      assertSound(
          Altered.plateHistory().with("/plans/1/stages/0/removed/-", "{\"of\": \"op-1/lag-1\"}"));
    }

    @Test
    void of_single_screws_may_come_before_the_whole_and_not_after() {
      assertSound(
          Altered.plateHistory()
              .with("/plans/1/stages/0/removed", removal("op-3/plate-1", "1, 2")));
      assertObjections(
              Altered.plateHistory()
                  .with("/plans/1/stages/0/removed", removal("op-1/plate-1", "1, 2")))
          .containsExactly("error /plans/1/stages/0/removed/0/of");
    }

    @Test
    void of_single_screws_and_the_whole_may_stand_in_any_order_in_one_operation() {
      assertSound(
          Altered.plateHistory()
              .with(OP_3 + "/removed/-", "{\"of\": \"op-1/plate-1\", \"holes\": [1]}"));
    }

    @Test
    void of_single_screws_need_a_screw_where_the_screws_are_known() {
      String holes = OP_2 + "/removed/0/holes";
      assertObjections(Altered.plateHistory().replacing(holes, "[5]"))
          .containsExactly("error " + holes + "/0");
      assertSound(Altered.plateHistory().replacing(holes, "[6]"));
      assertSound(Altered.plateHistory().without(PLATE + "/screws").replacing(holes, "[5]"));
      assertObjections(Altered.plateHistory().without(PLATE + "/screws").replacing(holes, "[11]"))
          .containsExactly("error " + holes + "/0");
    }

    @Test
    void reach_the_metal_of_the_bone_beside() {
      Altered file = Altered.nailAndFixator();
      assertObjections(file.with(OP_3 + "/removed/-", "{\"of\": \"fib-1/plate-1\"}"))
          .containsExactly("error " + OP_3 + "/removed/2/of");
      assertObjections(file.with(OP_1 + "/removed", removal("fib-1/plate-1", "")))
          .contains("error " + OP_1 + "/removed/0/of");
    }

    private static String removal(String of, String holes) {
      return "[{\"of\": \"" + of + "\", \"holes\": [" + holes + "]}]";
    }
  }

  @Nested
  class Outcomes {

    @Test
    void agree_with_the_interval_that_is_stated_to_a_week() {
      String weeks = OP_2 + "/outcome/weeksAfter";
      Altered dated =
          Altered.plateHistory().with("/operations/1/day", "90").with(OP_2 + "/outcome/day", "160");
      assertSound(dated.with(weeks, "11"));
      assertObjections(dated.with(weeks, "11.5")).containsExactly("error " + weeks);
      assertObjections(dated.with(weeks, "8.5")).containsExactly("error " + weeks);
    }

    @Test
    void blame_metal_that_was_in_the_bone() {
      String mode = OP_2 + "/outcome/mode";
      assertSound(Altered.plateHistory().with(mode, "\"plate-bent\""));
      assertSound(Altered.plateHistory().with(mode, "\"screw-broken\""));
      assertObjections(Altered.plateHistory().with(mode, "\"cerclage-cut-through\""))
          .containsExactly("error " + mode);
      assertObjections(Altered.plateHistory().with(mode, "\"nail-broken-mid-shaft\""))
          .containsExactly("error " + mode);
      assertSound(Altered.plateHistory().with(mode, "\"plate-broken\""));
      assertSound(Altered.plateHistory().with(mode, "\"screws-pulled-out\""));
      assertObjections(Altered.plateHistory().with(mode, "\"nail-broken\""))
          .containsExactly("error " + mode);
    }

    @Test
    void are_believed_where_the_file_leaves_open_what_was_put_in() {
      assertSound(
          Altered.minimal()
              .without(OP_1 + "/fixation")
              .with(OP_1 + "/outcome/mode", "\"nail-broken-mid-shaft\""));
      assertSound(
          Altered.minimal()
              .with("/bone/otherImplants", "[{\"what\": \"nail\", \"fromMm\": 1, \"toMm\": 300}]")
              .with(OP_1 + "/outcome/mode", "\"nail-broken-mid-shaft\""));
    }

    @Test
    void name_a_hole_of_a_plate_that_was_in_the_bone() {
      String hole = OP_2 + "/outcome/hole";
      assertSound(Altered.plateHistory().with(hole, "10"));
      assertObjections(Altered.plateHistory().with(hole, "11")).containsExactly("error " + hole);
      String afterNail = OP_2 + "/outcome/hole";
      assertSound(Altered.nailAndFixator().with(afterNail, "7"));
      assertObjections(Altered.nailAndFixator().with(afterNail, "8"))
          .containsExactly("error " + afterNail);
    }

    @Test
    void agree_with_the_screws_about_the_hole() {
      String outcome = OP_1 + "/outcome";
      assertObjections(Altered.plateHistory().with(outcome + "/hole", "6"))
          .containsExactly("warning " + outcome + "/hole");
      assertObjections(
              Altered.plateHistory().with(outcome + "/mode", "\"plate-broken-at-filled-hole\""))
          .containsExactly("warning " + outcome + "/hole");
      assertSound(Altered.plateHistory().with(outcome + "/mode", "\"plate-broken\""));
      assertSound(
          Altered.plateHistory()
              .with(
                  OP_2 + "/outcome",
                  "{\"result\": \"failed\", \"day\": 105, \"mode\": \"plate-broken-at-empty-hole\","
                      + " \"hole\": 9}"));
    }

    @Test
    void of_union_may_name_a_deformity_and_no_nonunion() {
      String outcome = "{\"result\": \"united\", \"mode\": \"%s\"}";
      assertSound(Altered.minimal().with(OP_1 + "/outcome", String.format(outcome, "deformity")));
      assertObjections(
              Altered.minimal().with(OP_1 + "/outcome", String.format(outcome, "callus-line-open")))
          .containsExactly("error " + OP_1 + "/outcome/mode");
    }
  }

  @Nested
  class PlansAndAftercare {

    @Test
    void have_one_chosen_plan_at_most() {
      assertSound(Altered.plateHistory().with("/plans/0/chosen", "false"));
      assertObjections(Altered.plateHistory().with("/plans/1/chosen", "true"))
          .containsExactly("error /plans/1/chosen");
    }

    @Test
    void have_stages() {
      assertObjections(Altered.nailAndFixator().replacing("/plans/0/stages", "[]"))
          .containsExactly("error /plans/0/stages");
    }

    @Test
    void say_nothing_about_what_became_of_planned_metal() {
      String row = "/plans/0/stages/1/fixation/0/screws/0";
      assertObjections(
              Altered.plateHistory().with(row + "/state", "\"sound\"").with(row + "/stateDay", "9"))
          .containsExactly("error " + row + "/state", "error " + row + "/stateDay");
    }

    @Test
    void raise_load_limits_from_day_to_day() {
      String until = OP_1 + "/aftercare/load/1/untilDay";
      assertSound(Altered.plateHistory().with(until, "43"));
      assertSound(Altered.plateHistory().with(until, "{\"min\": 30, \"max\": 60}"));
      assertObjections(Altered.plateHistory().with(until, "42")).containsExactly("error " + until);
    }

    @Test
    void may_plan_two_visits_in_one_week() {
      String visits = OP_1 + "/aftercare/visitsWeeks";
      assertSound(Altered.plateHistory().replacing(visits, "[2, 2, 6]"));
      assertObjections(Altered.plateHistory().replacing(visits, "[2, 1, 6]"))
          .containsExactly("warning " + visits + "/1");
    }
  }

  @Nested
  class TheSize {

    @Test
    void of_a_history_is_limited_before_anything_else_is_looked_at() {
      assertSound(Altered.minimal().with("/operations", operations(200)));
      assertObjections(Altered.minimal().with("/operations", operations(201)))
          .containsExactly("error ");
    }

    private static String operations(int count) {
      return IntStream.range(0, count)
          .mapToObj(i -> "{\"id\": \"op-" + i + "\", \"day\": " + i + "}")
          .collect(Collectors.joining(",", "[", "]"));
    }
  }

  @Test
  void reports_problems_in_the_order_of_their_pointers() {
    String visits = OP_1 + "/aftercare/visitsWeeks";
    assertObjections(
            Altered.plateHistory()
                .without("/source")
                .replacing(visits, "[20, 19, 30, 31, 32, 33, 34, 35, 36, 37, 38, 1]")
                .with("/findings/1/infection/samples/sameOrganism", "9"))
        .containsExactly(
            "error /findings/1/infection/samples/sameOrganism",
            "warning " + visits + "/1",
            "warning " + visits + "/11",
            "error /source");
  }
}
