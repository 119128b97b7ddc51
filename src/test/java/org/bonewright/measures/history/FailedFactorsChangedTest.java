package org.bonewright.measures.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.FailureMode;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The plan does the same as the plate that failed, over the same gap of 3 mm, unless changed. */
class FailedFactorsChangedTest {

  private static final String ID = "failed-factors-changed";
  private static final String STAGE = "/plans/0/stages/0";
  private static final String PLATE = STAGE + "/fixation/0";

  private static CaseText redone(String mode) {
    return CaseText.plated().at("/operations/0/reduction", "{gapFarMm: 3}").redone(mode);
  }

  /** A change of the plan that touches one factor only. */
  private enum Change {
    CONCEPT(STAGE, "{concept: 'relative'}"),
    /** Eight cortices each side for six. */
    HOLD(
        PLATE,
        "{screws: [{at: [1, 2, 3, 5, 6, 8, 9, 10], type: 'cortical', cortices: 2, track:"
            + " 'fresh'}]}"),
    LENGTH(PLATE, "{lengthMm: 176}"),
    GAP(STAGE + "/reduction", "{gapFarMm: 1}"),
    BIOLOGY(STAGE, "{biology: [{kind: 'autograft-cancellous'}]}"),
    INFECTION(
        STAGE,
        "{infectionCare: {debridement: 'yes', antibioticWeeks: 6}, samples: {deepSamples: 5}}"),
    ALIGNMENT(STAGE + "/reduction", "{coronalDeg: 2}"),
    LOAD(STAGE + "/aftercare", "{load: [{untilDay: 42, limitKg: 15}]}");

    private final String pointer;
    private final String patch;

    Change(String pointer, String patch) {
      this.pointer = pointer;
      this.patch = patch;
    }

    String reads(String mode) {
      return Taken.of(ID, redone(mode).at(pointer, patch));
    }
  }

  /** The reading of failures, once more by hand. */
  private static final Map<String, Set<String>> POINTS_TO = new LinkedHashMap<>();

  static {
    POINTS_TO.put("plate-broken-at-empty-hole", Set.of("GAP", "LENGTH"));
    POINTS_TO.put("plate-broken-at-filled-hole", Set.of("GAP", "LENGTH", "LOAD"));
    POINTS_TO.put("plate-bent", Set.of("IMPLANT", "LENGTH", "LOAD"));
    POINTS_TO.put("screws-pulled-out-in-sequence", Set.of("HOLD", "LENGTH"));
    POINTS_TO.put("plate-pulled-off-as-block", Set.of("HOLD"));
    POINTS_TO.put("screw-broken", Set.of("GAP", "HOLD"));
    POINTS_TO.put("bolt-broken", Set.of("NAIL", "CONCEPT"));
    POINTS_TO.put("bolt-backed-out", Set.of("NAIL", "CONCEPT"));
    POINTS_TO.put("nail-broken-at-bolt-hole", Set.of("NAIL", "GAP", "LOAD"));
    POINTS_TO.put("nail-broken-mid-shaft", Set.of("NAIL", "GAP", "LOAD"));
    POINTS_TO.put("cerclage-cut-through", Set.of("HOLD"));
    POINTS_TO.put("strut-resorbed", Set.of("INFECTION", "BIOLOGY", "GAP"));
    POINTS_TO.put("pins-loose", Set.of("INFECTION", "HOLD", "IMPLANT"));
    POINTS_TO.put("all-screws-lucent", Set.of("INFECTION"));
    POINTS_TO.put("fracture-at-implant-end", Set.of("LENGTH", "HOLD"));
    POINTS_TO.put("no-union-metal-intact", Set.of("BIOLOGY", "GAP", "CONCEPT"));
    POINTS_TO.put("callus-line-open", Set.of("CONCEPT", "HOLD", "LENGTH", "NAIL"));
    POINTS_TO.put("infection", Set.of("INFECTION"));
    POINTS_TO.put("deformity", Set.of("ALIGNMENT", "HOLD"));
  }

  private static String word(FailureMode mode) {
    return mode.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  @ParameterizedTest
  @EnumSource(FailureMode.class)
  void the_same_once_more_changes_nothing(FailureMode mode) {
    assertThat(Taken.of(ID, redone(word(mode)))).isEqualTo("0 fact");
  }

  @ParameterizedTest
  @EnumSource(
      value = FailureMode.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"SCREWS_PULLED_OUT", "PLATE_BROKEN", "NAIL_BROKEN"})
  void a_change_counts_when_the_failure_points_to_it(FailureMode mode) {
    Set<String> factors = POINTS_TO.get(word(mode));
    for (Change change : Change.values()) {
      assertThat(change.reads(word(mode)))
          .as("%s after %s", change, mode)
          .isEqualTo(factors.contains(change.name()) ? "1 fact" : "0 fact");
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = FailureMode.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"SCREWS_PULLED_OUT", "PLATE_BROKEN", "NAIL_BROKEN"})
  void another_kind_of_implant_changes_concept_hold_length_strength_and_nail_at_once(
      FailureMode mode) {
    CaseText text =
        redone(word(mode)).at(STAGE, "{fixation: [{id: 'nail-1', kind: 'nail', outerMm: 10}]}");
    long changed =
        POINTS_TO.get(word(mode)).stream()
            .filter(List.of("CONCEPT", "HOLD", "LENGTH", "IMPLANT", "NAIL")::contains)
            .count();
    assertThat(Taken.of(ID, text)).isEqualTo(changed + " fact");
  }

  @ParameterizedTest
  @EnumSource(
      value = FailureMode.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"SCREWS_PULLED_OUT", "PLATE_BROKEN", "NAIL_BROKEN"})
  void the_table_of_factors_is_as_written_here(FailureMode mode) {
    assertThat(Factor.mayBe(mode))
        .singleElement(org.assertj.core.api.InstanceOfAssertFactories.set(Factor.class))
        .extracting(Factor::name)
        .containsExactlyInAnyOrderElementsOf(POINTS_TO.get(word(mode)));
  }

  @ParameterizedTest(name = "{0}, {1} changed: {2}")
  @CsvSource({
    "plate-broken, GAP, 1 fact",
    "plate-broken, LENGTH, 1 fact",
    "plate-broken, LOAD, '0–1 fact, ask op-1/outcome/mode'",
    "plate-broken, BIOLOGY, 0 fact",
    "screws-pulled-out, HOLD, 1 fact",
    "screws-pulled-out, LENGTH, '0–1 fact, ask op-1/outcome/mode'",
    "nail-broken, GAP, 1 fact"
  })
  void where_one_of_two_modes_is_told_a_change_surely_counts_only_when_both_point_to_it(
      String mode, Change change, String reads) {
    assertThat(change.reads(mode)).isEqualTo(reads);
  }

  @Test
  void changes_add_up() {
    CaseText text = redone("plate-broken-at-filled-hole");
    for (Change change : Arrays.asList(Change.GAP, Change.LENGTH, Change.LOAD, Change.BIOLOGY)) {
      text = text.at(change.pointer, change.patch);
    }
    assertThat(Taken.of(ID, text)).isEqualTo("3 fact");
  }

  @Nested
  class WhatCountsAsAChange {

    private static final String OPEN = "0–1 fact, ask plan-a/stage-1/changes";

    @ParameterizedTest(name = "{0} to {1} mm: {2}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            160 | 176                  | 1 fact
            160 | 175                  | 0 fact
            160 | 140                  | 0 fact
            160 | {min: 170, max: 180} | 0–1 fact, ask plan-a/stage-1/changes
            160 | {min: 176, max: 180} | 1 fact
            160 | {min: 170, max: 176} | 0–1 fact, ask plan-a/stage-1/changes
            """)
    void a_plate_longer_by_a_tenth(String before, String after, String reads) {
      CaseText text =
          redone("plate-bent")
              .at("/operations/0/fixation/0", "{lengthMm: " + before + "}")
              .at(PLATE, "{lengthMm: " + after + "}");
      assertThat(Taken.of(ID, text)).isEqualTo(reads);
    }

    @ParameterizedTest(name = "{0} cortices to {1}: {2}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            [1, 3, 5, 6, 8, 10] | [1, 3, 5, 6, 8, 10]       | 0 fact
            [1, 3, 5, 6, 8, 10] | [1, 2, 3, 5, 6, 8, 10]    | 0 fact
            [1, 3, 5, 6, 8, 10] | [1, 2, 3, 5, 6, 8, 9, 10] | 1 fact
            """)
    void a_cortex_more_on_the_weaker_side(String before, String after, String reads) {
      String screws = "{screws: [{at: %s, type: 'cortical', cortices: 2, track: 'fresh'}]}";
      CaseText text =
          redone("plate-pulled-off-as-block")
              .at("/operations/0/fixation/0", screws.formatted(before))
              .at(PLATE, screws.formatted(after));
      assertThat(Taken.of(ID, text)).isEqualTo(reads);
    }

    @Test
    void locking_screws_for_conventional_ones() {
      CaseText text =
          redone("plate-pulled-off-as-block")
              .at(PLATE, "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'locking', cortices: 2}]}");
      assertThat(Taken.of(ID, text)).isEqualTo("1 fact");
    }

    @Test
    void a_strut_or_a_second_plate_is_more_hold() {
      CaseText text = redone("plate-pulled-off-as-block");
      String plate =
          "{id: 'plate-1', kind: 'plate', place: {zoneBetweenHoles: [5, 6]},"
              + " screws: [{at: [1, 6], type: 'cortical'}]}";
      String strut = "{id: 's', kind: 'strut', where: 'intramedullary', fromMm: 120, toMm: 240}";
      assertThat(Taken.of(ID, text.at(STAGE, "{fixation: [" + plate + ", " + strut + "]}")))
          .isEqualTo("1 fact");
      assertThat(
              Taken.of(
                  ID,
                  text.at(STAGE, "{fixation: [" + plate + ", {id: 'plate-2', kind: 'plate'}]}")))
          .isEqualTo("1 fact");
    }

    @Test
    void implants_not_stated_before_leave_hold_open() {
      CaseText text = redone("plate-pulled-off-as-block").at("/operations/0", "{fixation: null}");
      assertThat(Taken.of(ID, text)).isEqualTo(OPEN);
    }

    @ParameterizedTest(name = "gap {0} to {1} mm: {2}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            3                  | 1                  | 1 fact
            3                  | 1.5                | 0 fact
            1                  | 0                  | 0 fact
            {min: 0, max: 3}   | 1                  | 0–1 fact, ask plan-a/stage-1/changes
            3                  | {min: 0, max: 2}   | 0–1 fact, ask plan-a/stage-1/changes
            3                  | null               | 0–1 fact, ask plan-a/stage-1/changes
            {min: 1, max: 3}   | 1                  | 0–1 fact, ask plan-a/stage-1/changes
            """)
    void a_gap_of_more_than_1_mm_brought_to_1_mm_or_less(
        String before, String after, String reads) {
      CaseText text =
          redone("screw-broken")
              .at("/operations/0/reduction", "{gapFarMm: " + before + "}")
              .at(STAGE + "/reduction", "{gapFarMm: " + after + "}");
      assertThat(Taken.of(ID, text)).isEqualTo(reads);
    }

    @Test
    void a_bridged_line_that_is_now_compressed() {
      CaseText text = redone("screw-broken").at("/operations/0", "{compression: {method: 'none'}}");
      assertThat(Taken.of(ID, text)).isEqualTo("1 fact");
      assertThat(Taken.of(ID, text.at(STAGE, "{compression: {method: 'none'}}")))
          .isEqualTo("0 fact");
    }

    @Test
    void no_line_is_compressed_by_taking_the_metal_out() {
      CaseText text =
          redone("screw-broken")
              .at("/operations/0", "{compression: {method: 'none'}}")
              .at(STAGE, "{fixation: [], removed: [{of: 'op-1/plate-1'}], compression: null}");
      assertThat(Taken.of(ID, text.at(STAGE, "{biology: [{kind: 'marrow'}]}"))).isEqualTo("0 fact");
    }

    @Test
    void graft_where_there_was_none_and_not_where_there_was() {
      CaseText grafted = redone("no-union-metal-intact").at(STAGE, Change.BIOLOGY.patch);
      assertThat(Taken.of(ID, grafted)).isEqualTo("1 fact");
      assertThat(Taken.of(ID, grafted.at("/operations/0", "{biology: [{kind: 'allograft'}]}")))
          .isEqualTo("0 fact");
      assertThat(Taken.of(ID, grafted.at("/operations/0", "{biology: null}"))).isEqualTo(OPEN);
    }

    @ParameterizedTest(name = "{0} degrees: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            # 5 degrees before
            4                  | 1 fact
            -4                 | 1 fact
            5                  | 0 fact
            -8                 | 0 fact
            {min: -6, max: 2}  | 0–1 fact, ask plan-a/stage-1/changes
            {min: -4, max: 2}  | 1 fact
            null               | 0–1 fact, ask plan-a/stage-1/changes
            """)
    void a_worst_angle_smaller_than_before(String coronal, String reads) {
      CaseText text = redone("deformity").at(STAGE + "/reduction", "{coronalDeg: " + coronal + "}");
      assertThat(Taken.of(ID, text)).isEqualTo(reads);
    }

    @ParameterizedTest(name = "limit of {0} kg: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            # 30 kg before
            29                  | 1 fact
            30                  | 0 fact
            {min: 20, max: 40}  | 0–1 fact, ask plan-a/stage-1/changes
            """)
    void a_lower_first_load_limit(String limit, String reads) {
      CaseText text =
          redone("plate-bent")
              .at(STAGE, "{aftercare: {load: [{untilDay: 42, limitKg: " + limit + "}]}}");
      assertThat(Taken.of(ID, text)).isEqualTo(reads);
    }

    @Test
    void a_load_limit_that_is_not_planned_changes_nothing() {
      CaseText text = redone("plate-bent").at(STAGE, "{aftercare: null}");
      assertThat(Taken.of(ID, text)).isEqualTo("0 fact");
    }

    @Test
    void a_load_limit_not_recorded_before_leaves_it_open() {
      CaseText text = redone("plate-bent").at("/operations/0", "{aftercare: null}");
      assertThat(Taken.of(ID, text)).isEqualTo(OPEN);
    }

    @ParameterizedTest(name = "nail {0}, {1}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            outerMm: 11                                     | 1 fact
            outerMm: 10.5                                   | 0 fact
            outerMm: {min: 10.5, max: 11}                   | 0–1 fact, ask plan-a/stage-1/changes
            outerMm: {min: 11, max: 12}                     | 1 fact
            outerMm: 10                                     | 0 fact
            outerMm: null                                   | 0–1 fact, ask plan-a/stage-1/changes
            """)
    void a_nail_thicker_by_1_mm(String nail, String reads) {
      CaseText text = CaseText.nailed().redone("bolt-broken").at(PLATE, "{" + nail + "}");
      assertThat(Taken.of(ID, text)).isEqualTo(reads);
    }

    @Test
    void an_empty_list_of_load_limits_before_leaves_it_open() {
      CaseText text = redone("plate-bent").at("/operations/0/aftercare", "{load: []}");
      assertThat(Taken.of(ID, text)).isEqualTo(OPEN);
    }

    @Test
    void a_concept_that_is_only_inferred_proves_no_change() {
      CaseText text = redone("no-union-metal-intact").at(STAGE, "{concept: 'relative'}");
      assertThat(Taken.of(ID, text)).isEqualTo("1 fact");
      assertThat(Taken.of(ID, text.at("/operations/0", "{concept: null}"))).isEqualTo(OPEN);
    }

    @Test
    void bolts_taken_out_of_a_nail_change_its_concept() {
      CaseText kept =
          CaseText.nailed()
              .redone("bolt-broken")
              .without("/plans/0/stages/0/reduction")
              .at(STAGE, "{fixation: [], removed: [{of: 'op-1/nail-1', bolts: [3]}]}");
      assertThat(Taken.of(ID, kept)).isEqualTo("1 fact");
      CaseText whole =
          kept.at(STAGE, "{biology: [{kind: 'marrow'}], removed: [{of: 'op-1/nail-1'}]}");
      assertThat(Taken.of(ID, whole)).isEqualTo("0 fact");
    }

    @Test
    void what_changed_what_did_not_and_what_cannot_be_told_are_named() {
      CaseText longer = redone("plate-bent").at(PLATE, "{lengthMm: 176}");
      assertThat(working(longer))
          .isEqualTo("plate bent: length changed; implant, load not changed");
      assertThat(working(longer.at("/operations/0", "{aftercare: null}")))
          .isEqualTo("plate bent: length changed; implant not changed; load cannot be told");
    }

    private static String working(CaseText text) {
      return Taken.reading(ID, Taken.subject(text.file(), "plan-a")).working();
    }

    @Test
    void a_bolt_more_at_the_end_with_fewer() {
      CaseText text =
          CaseText.nailed()
              .redone("bolt-broken")
              .at(
                  "/operations/0/fixation/0",
                  "{bolts: [{end: 'near'}, {end: 'near'}, {end: 'far'}]}");
      assertThat(Taken.of(ID, text)).isEqualTo("1 fact");
    }
  }

  @Nested
  class PastRevision {

    private static CaseText second(String patch) {
      return CaseText.plated()
          .at("/operations/0", "{outcome: {result: 'failed', mode: 'no-union-metal-intact'}}")
          .with(
              """
              {operations: [
                {id: 'op-1', day: 2, concept: 'absolute', biology: [],
                  reduction: {gapNearMm: 0, gapFarMm: 0}, compression: {method: 'tension-device'},
                  fixation: [{id: 'p', kind: 'plate'}],
                  outcome: {result: 'failed', mode: 'no-union-metal-intact'}},
                {id: 'op-2', day: 200, concept: 'absolute', compression: {method: 'tension-device'},
                  fixation: [{id: 'p', kind: 'plate'}]}]}
              """)
          .at("/operations/1", "{" + patch + "}");
    }

    @Test
    void graft_that_is_not_recorded_may_have_been_given() {
      assertThat(Taken.of(ID, second(""))).isEqualTo("0–1 fact, ask op-2/changes");
    }

    @Test
    void graft_recorded_as_none_changes_nothing() {
      assertThat(Taken.of(ID, second("biology: []"))).isEqualTo("0 fact");
    }
  }

  @Nested
  class NothingToCount {

    @Test
    void without_an_operation_before() {
      assertThat(Taken.of(ID, CaseText.plated())).isEqualTo("none: no operation before");
    }

    @Test
    void after_an_operation_that_did_not_fail() {
      CaseText text =
          redone("plate-bent").at("/operations/0/outcome", "{result: 'united', mode: null}");
      assertThat(Taken.of(ID, text)).isEqualTo("none: op-1 did not fail");
    }

    @Test
    void while_the_mode_of_the_failure_is_unknown() {
      CaseText text = redone("plate-bent").at("/operations/0/outcome", "{mode: null}");
      assertThat(Taken.of(ID, text)).isEqualTo("unknown, ask op-1/outcome/mode");
    }
  }
}
