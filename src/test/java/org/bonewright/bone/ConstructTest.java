package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConstructTest {

  private static final String PLATE =
      "{id: 'plate-1', kind: 'plate', screws: [{at: [1, 2, 3], type: 'cortical'}]}";
  private static final String NAIL = "{id: 'nail-1', kind: 'nail'}";
  private static final String CERCLAGE = "{id: 'cerclage-1', kind: 'cerclage'}";

  /** Return what holds the bone after operations op-1, op-2 … with these fields. */
  private static Construct after(String... operations) {
    StringBuilder list = new StringBuilder();
    for (int i = 0; i < operations.length; i++) {
      String id = "{id: 'op-" + (i + 1) + "'" + (operations[i].isEmpty() ? "" : ", ");
      list.append(i == 0 ? "" : ", ").append(id).append(operations[i]).append("}");
    }
    return Construct.after(
        CaseText.bare().with("{operations: [" + list + "]}").file().operations());
  }

  private static List<String> held(Construct construct) {
    return construct.implants().stream()
        .map(h -> h.operation() + "/" + h.implant().id() + (h.retained() ? " retained" : ""))
        .toList();
  }

  private static String fixation(String... implants) {
    return "fixation: [" + String.join(", ", implants) + "]";
  }

  @Nested
  class WhatStays {

    @Test
    void an_operation_holds_what_it_put_in() {
      assertThat(held(after(fixation(PLATE, CERCLAGE))))
          .containsExactly("op-1/plate-1", "op-1/cerclage-1");
    }

    @Test
    void graft_alone_leaves_the_plate_in_place() {
      assertThat(held(after(fixation(PLATE), "fixation: []")))
          .containsExactly("op-1/plate-1 retained");
    }

    @Test
    void a_plate_beside_a_nail_that_was_left_needs_an_empty_list() {
      assertThat(held(after(fixation(NAIL), fixation(PLATE) + ", removed: []")))
          .containsExactly("op-1/nail-1 retained", "op-2/plate-1");
    }

    @Test
    void a_new_plate_without_a_word_of_removal_replaces_the_old_one() {
      assertThat(held(after(fixation(PLATE), fixation(PLATE)))).containsExactly("op-2/plate-1");
      assertThat(held(after(fixation(NAIL), fixation(PLATE)))).containsExactly("op-2/plate-1");
    }

    @Test
    void a_plate_is_not_counted_after_an_operation_that_says_nothing_of_implants() {
      Construct left = after(fixation(PLATE), "");
      assertThat(held(left)).isEmpty();
      assertThat(left.known()).isFalse();
      assertThat(held(after(fixation(PLATE), "removed: []")))
          .containsExactly("op-1/plate-1 retained");
    }

    @Test
    void a_cerclage_stays_until_it_is_removed() {
      assertThat(held(after(fixation(PLATE, CERCLAGE), fixation(NAIL))))
          .containsExactly("op-1/cerclage-1 retained", "op-2/nail-1");
    }
  }

  @Nested
  class Removal {

    @Test
    void takes_out_what_it_names_and_nothing_else() {
      Construct left =
          after(fixation(PLATE, CERCLAGE), "fixation: [], removed: [{of: 'op-1/cerclage-1'}]");
      assertThat(held(left)).containsExactly("op-1/plate-1 retained");
    }

    @Test
    void names_the_operation_that_put_it_in() {
      Construct left =
          after(
              fixation(PLATE),
              fixation(PLATE) + ", removed: []",
              "fixation: [], removed: [{of: 'op-1/plate-1'}]");
      assertThat(held(left)).containsExactly("op-2/plate-1 retained");
    }

    @Test
    void of_single_screws_leaves_the_plate_without_them() {
      Construct left =
          after(fixation(PLATE), "fixation: [], removed: [{of: 'op-1/plate-1', holes: [2]}]");
      Plate plate = left.of(Plate.class).get(0);
      assertThat(plate.screws().orElseThrow().get(0).at()).containsExactly(1, 3);
      assertThat(held(left)).containsExactly("op-1/plate-1 retained");
    }

    @Test
    void of_something_unheard_of_changes_nothing() {
      assertThat(held(after(fixation(PLATE), "fixation: [], removed: [{of: 'op-9/plate-1'}]")))
          .containsExactly("op-1/plate-1 retained");
    }

    @Test
    void comes_before_the_new_metal_of_the_same_operation() {
      assertThat(
              held(after(fixation(PLATE), fixation(PLATE) + ", removed: [{of: 'op-1/plate-1'}]")))
          .containsExactly("op-2/plate-1");
    }
  }

  @Nested
  class BrokenMetal {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "screws-pulled-out",
          "screws-pulled-out-in-sequence",
          "plate-pulled-off-as-block",
          "plate-broken",
          "plate-broken-at-empty-hole",
          "plate-broken-at-filled-hole"
        })
    void a_plate_that_gave_way_holds_nothing_for_the_next_operation(String mode) {
      assertThat(held(after(fixation(PLATE) + failed(mode), "fixation: []"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"nail-broken", "nail-broken-at-bolt-hole", "nail-broken-mid-shaft"})
    void nor_does_a_broken_nail(String mode) {
      assertThat(held(after(fixation(NAIL) + failed(mode), "fixation: []"))).isEmpty();
    }

    @Test
    void nor_does_a_fixator_with_loose_pins() {
      String fixator = "{id: 'fixator-1', kind: 'external-fixator'}";
      assertThat(held(after(fixation(fixator) + failed("pins-loose"), "fixation: []"))).isEmpty();
    }

    @Test
    void a_nail_beside_a_broken_plate_still_holds() {
      Construct left =
          after(
              fixation(NAIL, PLATE, CERCLAGE) + failed("plate-broken-at-empty-hole"),
              "fixation: []");
      assertThat(held(left)).containsExactly("op-1/nail-1 retained", "op-1/cerclage-1 retained");
    }

    @Test
    void the_operation_itself_is_judged_by_the_metal_it_put_in() {
      assertThat(held(after(fixation(PLATE) + failed("plate-broken-at-empty-hole"))))
          .containsExactly("op-1/plate-1");
    }

    @ParameterizedTest
    @EnumSource(
        value = FailureMode.class,
        names = {
          "NO_UNION_METAL_INTACT",
          "CALLUS_LINE_OPEN",
          "INFECTION",
          "DEFORMITY",
          "PLATE_BENT"
        })
    void whole_metal_still_holds(FailureMode mode) {
      String word = mode.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      assertThat(held(after(fixation(PLATE) + failed(word), "fixation: []")))
          .containsExactly("op-1/plate-1 retained");
    }

    private static String failed(String mode) {
      return ", outcome: {result: 'failed', mode: '" + mode + "'}";
    }
  }

  @Nested
  class Known {

    @Test
    void when_every_operation_says_what_it_put_in() {
      assertThat(after(fixation(PLATE), "fixation: []").known()).isTrue();
    }

    @Test
    void not_when_the_last_one_does_not_say() {
      assertThat(after(fixation(PLATE), "").known()).isFalse();
    }

    @Test
    void again_once_a_new_plate_has_replaced_whatever_there_was() {
      assertThat(after("", fixation(PLATE)).known()).isTrue();
    }

    @Test
    void not_when_whatever_there_was_is_said_to_have_been_left() {
      assertThat(after("", fixation(PLATE) + ", removed: []").known()).isFalse();
    }

    @Test
    void not_when_nothing_was_put_in_since() {
      assertThat(after("", "fixation: []").known()).isFalse();
    }
  }

  @Test
  void gives_the_implants_of_one_kind_in_order() {
    Construct both = after(fixation(NAIL), fixation(PLATE) + ", removed: []");
    assertThat(both.of(Nail.class)).extracting(Implant::id).containsExactly("nail-1");
    assertThat(both.of(Cerclage.class)).isEmpty();
  }
}
