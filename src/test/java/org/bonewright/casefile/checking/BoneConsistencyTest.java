package org.bonewright.casefile.checking;

import static org.bonewright.casefile.checking.Limits.LAG;
import static org.bonewright.casefile.checking.Limits.OP_1;
import static org.bonewright.casefile.checking.Limits.OP_3;
import static org.bonewright.casefile.checking.Limits.PLATE;
import static org.bonewright.casefile.checking.Limits.assertObjections;
import static org.bonewright.casefile.checking.Limits.assertSound;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the checks of patient, bone, levels and zones accept just inside each limit, and object to
 * just beyond.
 */
class BoneConsistencyTest {

  @Nested
  class ThePatient {

    @Test
    void may_follow_a_published_report_only_when_it_is_named() {
      assertSound(Altered.plateHistory().with("/provenance", "\"invented\"").without("/source"));
      assertObjections(Altered.minimal().with("/provenance", "\"published\""))
          .containsExactly("error /source");
    }

    @Test
    void is_taken_for_grown_from_sixteen_on() {
      assertSound(Altered.minimal().with("/patient/ageYears", "16"));
      assertSound(Altered.minimal().with("/patient/ageYears", "{\"min\": 10, \"max\": 16}"));
      assertObjections(Altered.minimal().with("/patient/ageYears", "15"))
          .containsExactly("warning /patient/ageYears");
    }

    @Test
    void is_believed_to_be_grown_when_the_file_says_so() {
      assertSound(
          Altered.minimal()
              .with("/patient/ageYears", "15")
              .with("/patient/skeletallyMature", "\"yes\""));
    }

    @Test
    void may_have_stopped_smoking_on_the_day_of_the_finding_and_may_smoke_again() {
      String host = "/findings/1/host";
      assertSound(Altered.plateHistory().with(host + "/smokingStoppedDay", "200"));
      assertSound(Altered.plateHistory().with(host + "/smoking", "\"current\""));
      assertObjections(Altered.plateHistory().with(host + "/smokingStoppedDay", "201"))
          .containsExactly("error /findings/1/host/smokingStoppedDay");
    }
  }

  @Nested
  class TheBone {

    @Test
    void has_a_wall_however_thin() {
      assertSound(Altered.plateHistory().with("/bone/sections/0/canalMm", "22.9"));
      assertSound(
          Altered.plateHistory().with("/bone/sections/0/canalMm", "{\"min\": 22, \"max\": 25}"));
      assertObjections(Altered.plateHistory().with("/bone/sections/0/canalMm", "23"))
          .containsExactly("error /bone/sections/0/canalMm");
    }

    @Test
    void has_sections_that_follow_each_other() {
      String second = "/bone/sections/1/atMm";
      assertSound(Altered.plateHistory().with(second, "110.1"));
      assertSound(Altered.plateHistory().with(second, "{\"min\": 100, \"max\": 160}"));
      assertObjections(Altered.plateHistory().with(second, "110"))
          .containsExactly("error /bone/sections/1/atMm");
    }

    @ParameterizedTest
    @CsvSource({"humerus, 216, 420", "femur, 302, 591", "clavicle, 103, 204"})
    void has_a_length_that_occurs_in_adults(String bone, int shortest, int longest) {
      Altered file = Altered.minimal().with("/bone/name", "\"" + bone + "\"");
      assertSound(file.with("/bone/lengthMm", "" + shortest));
      assertSound(file.with("/bone/lengthMm", "" + longest));
      assertObjections(file.with("/bone/lengthMm", "" + (shortest - 1)))
          .contains("warning /bone/lengthMm");
      if (longest < 600) {
        assertObjections(file.with("/bone/lengthMm", "" + (longest + 1)))
            .containsExactly("warning /bone/lengthMm");
      }
    }

    @ParameterizedTest
    @CsvSource({
      "deltoid-tuberosity-index, 1.2, 14",
      "combined-cortical-thickness, 4.4, 44",
      "dxa-t-score, -3.5, 250",
      "ct-hounsfield, 1200, 2800"
    })
    void has_a_quality_that_its_method_can_give(String method, double usual, double slip) {
      String measured = "[{\"method\": \"" + method + "\", \"value\": %s}]";
      assertSound(Altered.minimal().with("/bone/quality", String.format(measured, usual)));
      assertObjections(Altered.minimal().with("/bone/quality", String.format(measured, slip)))
          .containsExactly("warning /bone/quality/0/value");
    }

    @ParameterizedTest
    @CsvSource({"tibia, fibula", "radius, ulna", "ulna, radius"})
    void has_its_companion(String bone, String companion) {
      assertSound(withCompanion(bone, companion));
    }

    @ParameterizedTest
    @CsvSource({"tibia, ulna", "radius, radius", "ulna, fibula", "femur, fibula", "clavicle, ulna"})
    void has_no_companion_of_another_limb(String bone, String companion) {
      assertObjections(withCompanion(bone, companion)).containsExactly("error /companion/bone");
    }

    private static Altered withCompanion(String bone, String companion) {
      return Altered.minimal()
          .with("/bone/name", "\"" + bone + "\"")
          .with("/companion", "{\"bone\": \"" + companion + "\", \"state\": \"intact\"}");
    }

    @Test
    void may_carry_an_implant_from_before() {
      String implant = "[{\"what\": \"knee stem\", \"fromMm\": %s, \"toMm\": 90}]";
      String pointer = "/bone/otherImplants";
      assertSound(Altered.minimal().with(pointer, String.format(implant, 0)));
      assertObjections(Altered.minimal().with(pointer, String.format(implant, 91)))
          .containsExactly("error /bone/otherImplants/0/toMm");
    }
  }

  @Nested
  class Levels {

    @Test
    void are_doubted_beyond_the_stated_length_and_refused_a_twentieth_beyond() {
      String far = OP_3 + "/fixation/1/toMm";
      assertSound(Altered.plateHistory().with(far, "300"));
      assertObjections(Altered.plateHistory().with(far, "300.5")).containsExactly("warning " + far);
      assertObjections(Altered.plateHistory().with(far, "315")).containsExactly("warning " + far);
      assertObjections(Altered.plateHistory().with(far, "315.5")).containsExactly("error " + far);
      assertSound(Altered.plateHistory().with(far, "{\"min\": 295, \"max\": 320}"));
    }

    @Test
    void are_only_doubted_where_no_length_is_stated() {
      Altered file = Altered.minimal().without(PLATE + "/place");
      assertSound(file.with("/injury/zone", "{\"fromMm\": 470, \"toMm\": 486}"));
      assertObjections(file.with("/injury/zone", "{\"fromMm\": 480, \"toMm\": 599}"))
          .containsExactly("warning /injury/zone/toMm");
    }

    @Test
    void move_with_the_landmark() {
      Altered above = Altered.plateHistory().with("/bone/landmarkOffsetMm", "-30");
      String near = OP_3 + "/fixation/1/fromMm";
      String far = OP_3 + "/fixation/1/toMm";
      assertSound(above.with(far, "330"));
      assertSound(above.with(near, "30"));
      assertObjections(above.with(near, "29")).containsExactly("warning " + near);
      assertObjections(above.with(near, "14")).containsExactly("error " + near);
    }

    @Test
    void allow_for_the_curve_of_the_clavicle() {
      Altered file =
          Altered.minimal()
              .without(PLATE + "/place")
              .with("/bone/name", "\"clavicle\"")
              .with("/bone/lengthMm", "150");
      assertSound(file.with("/injury/zone", "{\"fromMm\": 150, \"toMm\": 164}"));
      assertObjections(file.with("/injury/zone", "{\"fromMm\": 150, \"toMm\": 166}"))
          .containsExactly("warning /injury/zone/toMm");
    }

    @Test
    void of_pins_and_bolts_may_lie_beyond_a_joint() {
      Altered spanning = Altered.nailAndFixator().with(OP_1 + "/fixation/0/pins/3/atMm", "430");
      assertObjections(spanning).containsExactly("warning " + OP_1 + "/fixation/0/pins/3/atMm");
    }

    @Test
    void of_the_bone_beside_are_its_own() {
      Altered file = Altered.nailAndFixator();
      assertSound(file.with("/companion/zone/toMm", "410"));
      assertObjections(file.with("/companion/zone/toMm", "490"))
          .containsExactly("warning /companion/zone/toMm");
    }

    @Test
    void of_every_kind_of_metal_are_looked_at() {
      Altered file =
          Altered.plateHistory()
              .with(LAG + "/atMm", "320")
              .with(LAG + "/exitMm", "320")
              .with(OP_3 + "/removed/0/left/0/atMm", "320")
              .with(OP_3 + "/fixation/0/place/firstHoleMm", "320")
              .with(OP_3 + "/resection/1/toMm", "320");
      assertObjections(file)
          .containsExactly(
              "error " + LAG + "/atMm",
              "error " + LAG + "/exitMm",
              "error " + OP_3 + "/fixation/0/place/firstHoleMm",
              "error " + OP_3 + "/removed/0/left/0/atMm",
              "error " + OP_3 + "/resection/1/toMm");
    }
  }

  @Nested
  class Zones {

    @Test
    void may_be_a_line() {
      assertSound(Altered.plateHistory().with("/injury/zone/toMm", "150"));
      assertObjections(Altered.plateHistory().with("/injury/zone/toMm", "149.9"))
          .containsExactly("error /injury/zone/toMm");
    }

    @Test
    void may_have_levels_that_overlap_as_ranges() {
      assertSound(
          Altered.plateHistory()
              .with("/injury/zone/fromMm", "{\"min\": 150, \"max\": 175}")
              .with("/injury/zone/toMm", "{\"min\": 160, \"max\": 180}"));
    }

    @Test
    void may_be_read_twice_with_a_few_millimetres_between() {
      Altered file = Altered.plateHistory();
      assertSound(file.with("/injury/zone/lengthMm", "29"));
      assertObjections(file.with("/injury/zone/lengthMm", "35"))
          .containsExactly("warning /injury/zone/lengthMm");
    }

    @Test
    void of_the_bone_beside_count_as_well() {
      assertObjections(Altered.nailAndFixator().with("/companion/zone/toMm", "299"))
          .containsExactly("error /companion/zone/toMm");
    }
  }

  @Nested
  class FindingsAndFilms {

    @Test
    void may_grow_the_same_organism_in_every_sample() {
      String samples = "/findings/1/infection/samples";
      assertSound(Altered.plateHistory().with(samples + "/sameOrganism", "5"));
      assertSound(Altered.nailAndFixator().with(samples + "/sameOrganism", "5"));
      assertObjections(Altered.nailAndFixator().with(samples + "/sameOrganism", "6"))
          .containsExactly("error " + samples + "/sameOrganism");
    }

    @Test
    void score_four_cortices_or_none() {
      String cortices = "/findings/1/films/0/cortices";
      assertSound(Altered.plateHistory().replacing(cortices, "[]"));
      assertObjections(Altered.plateHistory().replacing(cortices, "[1, 1, 1, 1, 1]"))
          .containsExactly("error " + cortices);
    }
  }
}
