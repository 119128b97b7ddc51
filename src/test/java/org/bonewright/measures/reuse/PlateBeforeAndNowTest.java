package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The new plate beside the old one: surface, holes, length, locking. */
class PlateBeforeAndNowTest {

  @Nested
  class ShareOfScrewsAtOldHoles {
    private static final String ID = "new-screws-at-old-holes";

    @Test
    void counts_entries_within_one_and_a_half_diameters() {
      // 1.5 x 4.5 = 6.75
      assertThat(Taken.of(ID, Revised.same())).isEqualTo("100 fact");
      assertThat(Taken.of(ID, Revised.shifted(6))).isEqualTo("100 fact");
      assertThat(Taken.of(ID, Revised.shifted(7))).isEqualTo("0 fact");
      assertThat(Taken.of(ID, Revised.turned())).isEqualTo("0 fact");
    }

    @Test
    void is_a_share_of_all_new_screws() {
      // 124 mm lies 16 from 108 and 140: one of four
      CaseText text =
          Revised.same()
              .at(Revised.PLATE, "{screws: [{at: [1, 2, 6, 7], type: 'cortical'}]}")
              .at(Revised.OLD_PLATE, "{screws: [{at: [1], type: 'cortical'}]}");
      assertThat(Taken.of(ID, text)).isEqualTo("25 fact");
    }

    @Test
    void is_a_range_where_the_place_of_the_new_plate_is_one() {
      // 6 to 8 mm off, 6.75 is close
      CaseText text =
          Revised.same().at(Revised.PLATE, "{place: {firstHoleMm: {min: 114, max: 116}}}");
      assertThat(Taken.of(ID, text))
          .isEqualTo("0–100 fact, ask plan-a/stage-1/fixation/plate-1/place");
      assertThat(Taken.reading(ID, Taken.subject(text.file(), "plan-a")).working())
          .isEqualTo("0 to 6 of 6");
      CaseText edge = Revised.same().at(Revised.PLATE, "{place: {firstHoleMm: 114.75}}");
      assertThat(Taken.of(ID, edge)).isEqualTo("100 fact");
      assertThat(Taken.reading(ID, Taken.subject(edge.file(), "plan-a")).working())
          .isEqualTo("6 of 6");
      CaseText beyond = Revised.same().at(Revised.PLATE, "{place: {firstHoleMm: 114.8}}");
      assertThat(Taken.of(ID, beyond)).isEqualTo("0 fact");
    }

    @Test
    void leaves_out_holes_that_the_same_operation_drills() {
      CaseText text =
          Revised.turned()
              .at(
                  "/plans/0/stages/0",
                  "{fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',"
                      + " surface: 'anterior', holes: 10, lengthMm: 160, place: {firstHoleMm: 108},"
                      + " screws: [{at: [1], type: 'cortical'}]}, {id: 'lag-1', kind: 'lag-screw',"
                      + " atMm: 109, diameterMm: 4.5, direction: 'anterior'}]}");
      assertThat(Taken.of(ID, text)).isEqualTo("0 fact");
    }

    @Test
    void a_plate_left_in_place_puts_in_no_screw() {
      CaseText kept = Revised.same().at("/plans/0/stages/0", "{fixation: [], removed: []}");
      assertThat(Taken.of(ID, kept)).isEqualTo("none: no new plate");
    }

    @Test
    void needs_the_place_of_the_old_plate() {
      assertThat(Taken.of(ID, Revised.unmapped()))
          .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
      assertThat(Taken.of(ID, Revised.takenOut())).isEqualTo("none: no new plate");
    }
  }

  @Nested
  class Surface {
    private static final String ID = "same-surface-as-before";

    @Test
    void is_the_same_within_thirty_degrees() {
      assertThat(Taken.of(ID, Revised.same())).isEqualTo("yes fact");
      // medial is 270
      assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, "{surface: 299}")))
          .isEqualTo("yes fact");
      assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, "{surface: 300}")))
          .isEqualTo("no fact");
    }

    @Test
    void is_asked_for() {
      assertThat(Taken.of(ID, Revised.same().at(Revised.PLATE, "{surface: null}")))
          .isEqualTo("no or yes fact, ask plan-a/stage-1/fixation/plate-1/surface");
      assertThat(Taken.of(ID, Revised.same().at(Revised.OLD_PLATE, "{surface: null}")))
          .isEqualTo("no or yes fact, ask op-1/fixation/plate-1/surface");
      assertThat(Taken.of(ID, Revised.same().at("/operations/0", "{fixation: null}")))
          .isEqualTo("no or yes fact, ask op-1/fixation");
    }

    @Test
    void of_a_first_plate_is_no_surface_used_before() {
      assertThat(Taken.of(ID, CaseText.plated())).isEqualTo("no fact");
      assertThat(Taken.of(ID, Revised.takenOut())).isEqualTo("none: no new plate");
    }
  }

  @Nested
  class Length {
    private static final String ID = "holes-beyond-old-plate";

    @Test
    void is_counted_in_holes_at_the_shorter_end() {
      assertThat(Taken.of(ID, Revised.same())).isEqualTo("0 assumed");
      // near end 108 - 116 = -8, far end 260 - 252 = 8; 8 / 16
      assertThat(Taken.of(ID, Revised.shifted(8))).isEqualTo("-0.5 assumed");
      // near end 108 - 140, far end 220 - 252: 32 / 16 too short
      assertThat(Taken.of(ID, Revised.shortened())).isEqualTo("-2 assumed");
    }

    @Test
    void counts_a_longer_plate_from_screw_to_hole() {
      // from 76 to 284: 32 mm farther at each end
      CaseText text =
          Revised.turned()
              .at(
                  Revised.PLATE,
                  "{holes: 14, lengthMm: 224, spacingMm: 16, place: {zoneBetweenHoles: [7, 8],"
                      + " firstHoleMm: 76}, screws: [{at: [1, 7, 8, 14], type: 'cortical'}]}");
      // the spacing of the old plate is assumed from its family
      assertThat(Taken.of(ID, text)).isEqualTo("2 assumed");
    }

    @Test
    void is_counted_in_spacings_that_may_be_a_range() {
      // one screw each: near end 108 - 116 = -8, by 15 to 17
      String one = "{screws: [{at: [1], type: 'cortical'}]}";
      CaseText text =
          Revised.shifted(8)
              .at(Revised.OLD_PLATE, one)
              .at(Revised.PLATE, one)
              .at(Revised.PLATE, "{spacingMm: {min: 15, max: 17}}");
      assertThat(Taken.of(ID, text)).startsWith("-0.533–-0.471 ");
    }

    @Test
    void counts_from_the_screws_of_the_longest_new_plate_alone() {
      CaseText text =
          Revised.turned()
              .at(
                  "/plans/0/stages/0",
                  "{fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',"
                      + " surface: 'anterior', holes: 10, lengthMm: 160, place: {firstHoleMm: 108},"
                      + " screws: [{at: [3, 8], type: 'cortical', cortices: 2}]}, {id: 'plate-2',"
                      + " kind: 'plate', family: 'large-fragment-narrow', surface: 'lateral', holes:"
                      + " 4, lengthMm: 64, place: {firstHoleMm: 76}, screws: [{at: [1, 4], type:"
                      + " 'cortical', cortices: 2}]}]}");
      // near end 108 - 140, far end 220 - 252
      assertThat(Taken.of(ID, text)).isEqualTo("-2 assumed");
    }

    @Test
    void counts_no_bolt_of_an_old_nail() {
      CaseText text =
          CaseText.nailed()
              .redone("deformity")
              .at(
                  "/operations/0/fixation/0",
                  "{bolts: [{end: 'near', atMm: 60, diameterMm: 5, plane: 'medial'}]}")
              .at(
                  "/plans/0/stages/0",
                  "{fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',"
                      + " surface: 'anterior', holes: 10, lengthMm: 160, place: {firstHoleMm: 108},"
                      + " screws: [{at: [3, 8], type: 'cortical', cortices: 2}]}]}");
      assertThat(Taken.of(ID, text)).isEqualTo("none: no hole of a plate or fixator before");
    }

    @Test
    void asks_for_the_spacing_of_a_plate_of_unknown_kind() {
      CaseText text =
          Revised.turned().at(Revised.PLATE, "{family: null, spacingMm: null, lengthMm: null}");
      assertThat(Taken.of(ID, text)).startsWith("unknown, ask plan-a/stage-1/fixation/plate-1/");
    }

    @Test
    void is_none_without_a_plate_before_or_now() {
      assertThat(Taken.of(ID, Revised.takenOut())).isEqualTo("none: no new plate");
      assertThat(Taken.of(ID, CaseText.plated()))
          .isEqualTo("none: no hole of a plate or fixator before");
    }
  }

  @Nested
  class Locking {

    @Test
    void counts_where_both_sides_hold_a_locking_screw() {
      assertThat(Taken.of("locking-screw-each-side", Revised.turned())).isEqualTo("no fact");
      CaseText near =
          Revised.turned()
              .at(
                  Revised.PLATE,
                  "{screws: [{at: [1, 3], type: 'locking', cortices: 2}, {at: [8, 10], type: 'cortical'}]}");
      assertThat(Taken.of("locking-screw-each-side", near)).isEqualTo("no fact");
      CaseText both =
          Revised.turned()
              .at(Revised.PLATE, "{screws: [{at: [1, 3, 8, 10], type: 'locking', cortices: 2}]}");
      assertThat(Taken.of("locking-screw-each-side", both)).isEqualTo("yes fact");
      assertThat(Taken.of("locked-with-strut", both)).isEqualTo("no fact");
    }

    @Test
    void with_a_strut_both_are_needed() {
      String strut =
          ", {id: 'strut-1', kind: 'strut', where: 'intramedullary', fromMm: 140, toMm: 220}]}";
      String plate =
          "{fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow-locking', surface: 'anterior', holes: 10, lengthMm: 180, place: {zoneBetweenHoles: [5, 6], firstHoleMm: 100}, screws: [{at: [1, 3, 8, 10], cortices: 2, type: ";
      assertThat(
              Taken.of(
                  "locked-with-strut",
                  Revised.same().at("/plans/0/stages/0", plate + "'locking'}]}" + strut)))
          .isEqualTo("yes fact");
      assertThat(
              Taken.of(
                  "locked-with-strut",
                  Revised.same().at("/plans/0/stages/0", plate + "'cortical'}]}" + strut)))
          .isEqualTo("no fact");
    }

    @Test
    void is_asked_for_where_the_screws_are_not_told() {
      assertThat(
              Taken.of(
                  "locking-screw-each-side", Revised.turned().at(Revised.PLATE, "{screws: null}")))
          .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/screws");
      assertThat(Taken.of("locking-screw-each-side", Revised.takenOut())).isEqualTo("no fact");
    }
  }

  @Nested
  class NewAndOld {

    @Test
    void a_plate_that_an_earlier_operation_left_is_not_new() {
      assertThat(Taken.of("new-plate", Revised.turned())).isEqualTo("yes fact");
      CaseText kept = Revised.same().at("/plans/0/stages/0", "{fixation: [], removed: []}");
      assertThat(Taken.of("new-plate", kept)).isEqualTo("no fact");
      assertThat(Taken.of("new-nail", Revised.turned())).isEqualTo("no fact");
      assertThat(Taken.of("new-nail", CaseText.nailed().redone("deformity"))).isEqualTo("yes fact");
      assertThat(Taken.of("new-plate", CaseText.bare()))
          .isEqualTo("no or yes fact, ask op-1/fixation");
    }

    @Test
    void old_holes_are_those_of_operations_before() {
      assertThat(Taken.of("old-holes", CaseText.plated())).isEqualTo("no fact");
      assertThat(Taken.of("old-holes", Revised.turned())).isEqualTo("yes fact");
      assertThat(Taken.of("plate-or-fixator-before", Revised.turned())).isEqualTo("yes fact");
      CaseText nail = CaseText.nailed().redone("deformity");
      assertThat(Taken.of("old-holes", nail)).isEqualTo("yes fact");
      assertThat(Taken.of("plate-or-fixator-before", nail)).isEqualTo("no fact");
    }

    @Test
    void an_untold_operation_may_have_drilled() {
      CaseText text = Revised.turned().at("/operations/0", "{fixation: null}");
      assertThat(Taken.of("old-holes", text)).isEqualTo("no or yes fact, ask op-1/fixation");
      CaseText nail =
          CaseText.nailed().redone("deformity").at("/operations/0/fixation/0", "{bolts: null}");
      assertThat(Taken.of("old-holes", nail)).isEqualTo("no or yes fact, ask op-1/fixation");
      assertThat(Taken.of("plate-or-fixator-before", nail)).isEqualTo("no fact");
    }

    @Test
    void holes_cut_out_with_their_bone_are_gone() {
      CaseText text =
          Revised.takenOut()
              .at(Revised.OLD_PLATE, "{screws: [{at: [5, 6], type: 'cortical'}]}")
              .at("/plans/0/stages/0", "{resection: [{fromMm: 160, toMm: 200}]}");
      assertThat(Taken.of("old-holes", text)).isEqualTo("no fact");
    }
  }
}
