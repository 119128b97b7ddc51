package org.bonewright.casefile.checking;

import static org.bonewright.casefile.checking.Limits.LAG;
import static org.bonewright.casefile.checking.Limits.OP_1;
import static org.bonewright.casefile.checking.Limits.OP_2;
import static org.bonewright.casefile.checking.Limits.OP_3;
import static org.bonewright.casefile.checking.Limits.PLATE;
import static org.bonewright.casefile.checking.Limits.assertObjections;
import static org.bonewright.casefile.checking.Limits.assertSound;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the checks of plates, screws, nails and struts accept just inside each limit, and object to
 * just beyond.
 */
class MetalConsistencyTest {

  @Nested
  class Holes {

    @Test
    void are_those_that_the_plate_has() {
      assertSound(Altered.plateHistory().with(PLATE + "/plugged", "[7]"));
      assertObjections(Altered.plateHistory().with(PLATE + "/plugged", "[11]"))
          .containsExactly("error " + PLATE + "/plugged/0");
    }

    @Test
    void are_believed_where_their_number_is_not_known() {
      assertSound(Altered.minimal().without(PLATE + "/holes"));
      assertSound(
          Altered.minimal()
              .without(PLATE + "/holes")
              .with(PLATE + "/place/zoneBetweenHoles", "[14, 15]"));
    }

    @Test
    void either_side_of_the_zone_may_leave_others_between_them() {
      assertSound(Altered.minimal().with(PLATE + "/place/zoneBetweenHoles", "[3, 6]"));
      assertObjections(Altered.minimal().with(PLATE + "/place/zoneBetweenHoles", "[4, 4]"))
          .containsExactly("error " + PLATE + "/place/zoneBetweenHoles");
      assertObjections(Altered.minimal().with(PLATE + "/place/zoneBetweenHoles", "[4]"))
          .containsExactly("error " + PLATE + "/place/zoneBetweenHoles");
      assertObjections(Altered.minimal().with(PLATE + "/place/zoneBetweenHoles", "[8, 9]"))
          .containsExactly("error " + PLATE + "/place/zoneBetweenHoles/1");
    }

    @Test
    void hold_one_screw_or_one_plug() {
      assertObjections(Altered.minimal().with(PLATE + "/screws/0/at", "[1, 2, 2]"))
          .containsExactly("error " + PLATE + "/screws/0/at/2");
      assertObjections(Altered.minimal().with(PLATE + "/plugged", "[4, 5, 4]"))
          .containsExactly("error " + PLATE + "/plugged/2");
    }

    @Test
    void are_named_by_a_row_of_screws() {
      assertSound(Altered.minimal().without(PLATE + "/screws"));
      assertSound(Altered.minimal().with(PLATE + "/screws", "[]"));
      assertObjections(Altered.minimal().with(PLATE + "/screws/0/at", "[]"))
          .containsExactly("error " + PLATE + "/screws/0/at");
    }

    @Test
    void take_a_lag_screw_that_is_not_listed_twice() {
      assertObjections(Altered.plateHistory().with(LAG + "/hole", "3"))
          .containsExactly("warning " + LAG + "/hole");
      assertSound(Altered.plateHistory().with(LAG + "/hole", "7"));
      assertObjections(Altered.plateHistory().with(LAG + "/hole", "11"))
          .containsExactly("error " + LAG + "/hole");
    }

    @Test
    void of_an_older_plate_may_take_a_lag_screw() {
      String lag = "{\"id\": \"lag-2\", \"kind\": \"lag-screw\", \"throughPlate\": \"%s\"}";
      String fixation = OP_2 + "/fixation/-";
      assertSound(Altered.plateHistory().with(fixation, String.format(lag, "plate-1")));
      assertObjections(Altered.plateHistory().with(fixation, String.format(lag, "plate-2")))
          .containsExactly("error " + OP_2 + "/fixation/0/throughPlate");
    }

    @Test
    void crossed_by_a_nerve_may_be_those_of_the_plate_that_comes_out() {
      String crossed = "{\"holesCrossed\": [%s]}";
      String nerve = OP_2 + "/nerve";
      assertSound(Altered.plateHistory().with(nerve, String.format(crossed, 10)));
      assertObjections(Altered.plateHistory().with(nerve, String.format(crossed, 11)))
          .containsExactly("error " + nerve + "/holesCrossed/0");
      assertSound(
          Altered.plateHistory().without(PLATE + "/holes").with(nerve, String.format(crossed, 11)));
    }
  }

  @Nested
  class Plates {

    @Test
    void may_be_as_long_as_the_bone() {
      Altered file =
          Altered.plateHistory().without(PLATE + "/spacingMm").without(PLATE + "/family");
      assertSound(file.with(PLATE + "/lengthMm", "300"));
      assertObjections(file.with(PLATE + "/lengthMm", "301"))
          .containsExactly("warning " + PLATE + "/lengthMm");
      assertObjections(file.with(PLATE + "/lengthMm", "316"))
          .containsExactly("error " + PLATE + "/lengthMm");
    }

    @Test
    void are_only_doubted_when_their_length_comes_from_a_table() {
      Altered longBone = Altered.minimal().with("/bone/lengthMm", "280");
      assertSound(longBone.with(PLATE + "/holes", "20"));
      assertObjections(longBone.with(PLATE + "/holes", "24"))
          .contains("warning " + PLATE + "/holes")
          .noneMatch(objection -> objection.startsWith("error"));
      assertObjections(longBone.with(PLATE + "/holes", "24").with(PLATE + "/spacingMm", "16"))
          .contains("error " + PLATE + "/holes");
    }

    @Test
    void end_on_the_bone_where_a_level_places_them() {
      String first = OP_3 + "/fixation/0/place/firstHoleMm";
      Altered stated = Altered.plateHistory().with(OP_3 + "/fixation/0/spacingMm", "18");
      assertSound(stated.with(first, "120"));
      assertObjections(stated.with(first, "121")).containsExactly("warning " + first);
      assertObjections(stated.with(first, "136")).containsExactly("error " + first);
      assertSound(Altered.plateHistory().with(first, "136"));
      assertObjections(Altered.plateHistory().with(first, "200"))
          .containsExactly("warning " + first);
    }

    @Test
    void end_on_the_bone_where_the_zone_places_them() {
      String between = PLATE + "/place/zoneBetweenHoles";
      Altered file =
          Altered.plateHistory()
              .without("/findings/1/zone")
              .with("/plans", "[]")
              .with("/accepted", "[]");
      Altered near = file.with("/injury/zone", "{\"fromMm\": 40, \"toMm\": 50}");
      assertSound(near.with(between, "[3, 4]"));
      assertObjections(near.with(between, "[4, 5]")).contains("warning " + between);
      assertObjections(near.with(between, "[6, 7]")).contains("error " + between);
      Altered far = file.with("/injury/zone", "{\"fromMm\": 240, \"toMm\": 250}");
      assertSound(far.with(between, "[6, 7]"));
      assertObjections(far.with(between, "[5, 6]")).contains("warning " + between);
      assertObjections(far.with(between, "[3, 4]")).contains("error " + between);
    }

    @Test
    void placed_both_ways_have_the_zone_between_the_holes_named() {
      String first = PLATE + "/place/firstHoleMm";
      assertSound(Altered.plateHistory().with(first, "85"));
      assertSound(Altered.plateHistory().with(first, "99"));
      assertSound(Altered.plateHistory().with(first, "79"));
      assertObjections(Altered.plateHistory().with(first, "100"))
          .containsExactly("warning " + first);
      assertObjections(Altered.plateHistory().with(first, "78"))
          .containsExactly("warning " + first);
      assertObjections(Altered.plateHistory().with(first, "113"))
          .containsExactly("warning " + first);
      assertObjections(Altered.plateHistory().with(first, "114")).containsExactly("error " + first);
      assertObjections(Altered.plateHistory().with(first, "64")).containsExactly("error " + first);
    }

    @Test
    void placed_both_ways_are_only_doubted_when_their_spacing_comes_from_a_table() {
      String first = PLATE + "/place/firstHoleMm";
      assertObjections(Altered.plateHistory().without(PLATE + "/spacingMm").with(first, "130"))
          .containsExactly("warning " + first);
    }

    @Test
    void placed_both_ways_are_believed_where_the_zone_has_moved_or_is_not_known() {
      String first = PLATE + "/place/firstHoleMm";
      Altered wrong = Altered.plateHistory().with(first, "130");
      assertSound(wrong.with(OP_1 + "/resection", "[{\"fromMm\": 150, \"toMm\": 170}]"));
      assertSound(wrong.with(OP_1 + "/reduction/shorteningMm", "6"));
      assertSound(wrong.without("/injury/zone"));
    }

    @Test
    void have_a_length_that_goes_with_their_holes() {
      String length = PLATE + "/lengthMm";
      assertSound(Altered.plateHistory().with(length, "144"));
      assertSound(Altered.plateHistory().with(length, "220"));
      assertObjections(Altered.plateHistory().with(length, "143"))
          .containsExactly("warning " + length);
      assertObjections(Altered.plateHistory().with(length, "221"))
          .containsExactly("warning " + length);
    }

    @ParameterizedTest
    @ValueSource(strings = {"reconstruction", "one-third-tubular", "shaft-strength-2-7"})
    void without_a_locking_sister_may_take_locking_screws(String family) {
      assertSound(
          Altered.minimal()
              .with(PLATE + "/family", "\"" + family + "\"")
              .with(PLATE + "/screws/0/type", "\"locking\""));
    }

    @Test
    void of_a_locking_family_may_take_any_screw_and_others_none_that_locks() {
      Altered locking = Altered.minimal().with(PLATE + "/screws/0/type", "\"locking\"");
      assertSound(locking.with(PLATE + "/family", "\"large-fragment-narrow-locking\""));
      assertSound(locking.without(PLATE + "/family"));
      assertObjections(locking).containsExactly("warning " + PLATE + "/screws/0/type");
    }
  }

  @Nested
  class ScrewLengths {

    @Test
    void may_reach_obliquely_through_the_end_of_the_bone() {
      String length = PLATE + "/screws/0/lengthMm";
      assertSound(Altered.plateHistory().with(length, "94"));
      assertObjections(Altered.plateHistory().with(length, "95"))
          .containsExactly("warning " + length);
      assertSound(
          Altered.plateHistory().with("/bone/metaphysealWidthMm", "80").with(length, "110"));
    }

    @Test
    void may_be_short_in_one_cortex_only() {
      String row = PLATE + "/screws/0";
      assertSound(Altered.plateHistory().with(row + "/lengthMm", "10"));
      assertObjections(Altered.plateHistory().with(row + "/lengthMm", "9"))
          .containsExactly("warning " + row + "/lengthMm");
      assertSound(Altered.plateHistory().with(row + "/lengthMm", "9").with(row + "/cortices", "1"));
      assertSound(Altered.plateHistory().with(row + "/cortices", "0"));
      assertSound(Altered.plateHistory().without(row + "/cortices"));
    }
  }

  @Nested
  class Nails {

    private static final String NAIL = "/operations/1/fixation/0";

    @Test
    void are_wider_than_their_bore() {
      assertSound(Altered.nailAndFixator().with(NAIL + "/boreMm", "9.9"));
      assertObjections(Altered.nailAndFixator().with(NAIL + "/boreMm", "10"))
          .containsExactly("error " + NAIL + "/boreMm");
    }

    @Test
    void are_no_wider_than_the_last_reamer_if_there_was_one() {
      assertSound(Altered.nailAndFixator().with(NAIL + "/reamedMm", "10"));
      assertSound(Altered.nailAndFixator().with(NAIL + "/reamedMm", "0"));
      assertSound(Altered.nailAndFixator().without(NAIL + "/reamedMm"));
      assertObjections(Altered.nailAndFixator().with(NAIL + "/reamedMm", "9.9"))
          .containsExactly("warning " + NAIL + "/outerMm");
    }

    @Test
    void are_narrower_than_the_bone() {
      Altered thin =
          Altered.nailAndFixator()
              .replacing("/bone/sections/0", "{\"atMm\": 120, \"outerMm\": 15}")
              .replacing("/bone/sections/1", "{\"atMm\": 190, \"outerMm\": 12.1}");
      assertSound(thin);
      assertObjections(thin.with("/bone/sections/1/outerMm", "12"))
          .containsExactly("warning " + OP_3 + "/fixation/0/outerMm");
      assertObjections(
              thin.with("/bone/sections/0/outerMm", "12").with("/bone/sections/1/outerMm", "12"))
          .containsExactly("error " + OP_3 + "/fixation/0/outerMm");
    }

    @Test
    void may_be_as_long_as_the_bone() {
      assertSound(Altered.nailAndFixator().with(NAIL + "/lengthMm", "380"));
      assertObjections(Altered.nailAndFixator().with(NAIL + "/lengthMm", "450"))
          .containsExactly("warning " + NAIL + "/lengthMm");
    }

    @Test
    void hold_bolts_within_their_length() {
      assertSound(Altered.nailAndFixator().with(NAIL + "/lengthMm", "305"));
      assertObjections(Altered.nailAndFixator().with(NAIL + "/lengthMm", "304"))
          .containsExactly("error " + NAIL + "/bolts/3/atMm");
    }

    @Test
    void hold_near_bolts_before_far_ones() {
      assertSound(Altered.nailAndFixator().with(NAIL + "/bolts/3/atMm", "60"));
      assertObjections(Altered.nailAndFixator().with(NAIL + "/bolts/3/atMm", "59"))
          .containsExactly("error " + NAIL + "/bolts/3/atMm");
    }

    @Test
    void are_locked_by_bolts() {
      Altered file = Altered.nailAndFixator();
      assertSound(file.without(NAIL + "/bolts").with(OP_2 + "/outcome/mode", "\"infection\""));
      assertSound(file.without(NAIL + "/locking"));
      assertSound(file.with(NAIL + "/bolts", "[]").with(NAIL + "/locking", "\"unlocked\""));
      assertObjections(file.with(NAIL + "/bolts", "[]"))
          .containsExactly("error " + NAIL + "/locking");
      assertObjections(file.with(NAIL + "/locking", "\"unlocked\""))
          .containsExactly("error " + NAIL + "/locking");
    }
  }

  @Nested
  class StrutsAndCuts {

    private static final String STRUT = "/operations/2/fixation/1";

    @Test
    void leave_a_strut_some_length_and_a_wall_up_to_solid() {
      assertSound(Altered.plateHistory().with(STRUT + "/wallMm", "4"));
      assertObjections(Altered.plateHistory().with(STRUT + "/wallMm", "4.1"))
          .containsExactly("error " + STRUT + "/wallMm");
      assertSound(Altered.plateHistory().with(STRUT + "/toMm", "110.1"));
      assertObjections(Altered.plateHistory().with(STRUT + "/toMm", "110"))
          .containsExactly("error " + STRUT + "/toMm");
    }

    @Test
    void let_an_onlay_strut_be_thick_and_wide() {
      Altered wide = Altered.plateHistory().with(STRUT + "/outerMm", "24");
      assertSound(wide.with(STRUT + "/where", "\"onlay\"").with(STRUT + "/wallMm", "12"));
      assertSound(wide.with(STRUT + "/outerMm", "23.9"));
      assertObjections(wide).containsExactly("error " + STRUT + "/outerMm");
    }

    @Test
    void take_out_some_bone_and_none_of_it_twice() {
      String cuts = OP_3 + "/resection";
      assertSound(Altered.plateHistory().with(cuts + "/0/toMm", "158.1"));
      assertObjections(Altered.plateHistory().with(cuts + "/0/toMm", "158"))
          .containsExactly("error " + cuts + "/0/toMm");
      assertObjections(Altered.plateHistory().with(cuts + "/1/fromMm", "159"))
          .containsExactly("error " + cuts + "/1");
    }
  }
}
