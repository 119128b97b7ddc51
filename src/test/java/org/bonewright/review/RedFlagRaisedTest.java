package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Subject;
import org.bonewright.review.RedFlag.Kind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** When a red flag is raised, and when it is not. */
class RedFlagRaisedTest {

  private static List<RedFlag> flags(CaseText text) {
    CaseFile file = text.file();
    return RedFlags.of(file, Subject.of(file));
  }

  private static List<Kind> kinds(CaseText text) {
    return flags(text).stream().map(RedFlag::kind).toList();
  }

  private static CaseText found(String... findings) {
    return CaseText.plated().with("{findings: [" + String.join(", ", findings) + "]}");
  }

  private static String day(int day, String what) {
    return "{day: " + day + ", " + what + "}";
  }

  private static String infection(int day, String what) {
    return day(day, "infection: {" + what + "}");
  }

  @Test
  void none_is_raised_by_a_case_without_any_of_them() {
    assertThat(flags(found(infection(60, "sinus: 'absent', pus: 'absent', fever: 'absent'"))))
        .isEmpty();
  }

  @Nested
  class A_sign_of_infection {

    @ParameterizedTest
    @CsvSource({
      "sinus, SINUS, Proof of infection: sinus down to bone or implant",
      "woundBreakdown, WOUND_BREAKDOWN,"
          + " 'Proof of infection: wound broken down to bone or implant, metal may be exposed'",
      "pus, PUS, Proof of infection: pus",
      "fever, FEVER, Fever",
      "localSigns, LOCAL_SIGNS, Local signs of infection",
      "discharge, DISCHARGE, Wound discharge",
      "jointEffusion, JOINT_EFFUSION, Effusion of a joint beside",
      "sequestrum, SEQUESTRUM, Sequestrum"
    })
    void is_told_once_with_the_day_on_which_it_was_found(String sign, Kind kind, String what) {
      assertThat(flags(found(infection(60, sign + ": 'present'"))))
          .containsExactly(new RedFlag(kind, what, "found on day 60"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fever", "localSigns", "discharge", "jointEffusion", "sequestrum"})
    void that_only_points_to_it_counts_as_it_was_found_last(String sign) {
      String there = sign + ": 'present'";
      String gone = sign + ": 'absent'";
      assertThat(flags(found(infection(60, there), infection(90, gone)))).isEmpty();
      assertThat(flags(found(infection(60, gone), infection(90, there))))
          .extracting(RedFlag::since)
          .containsExactly("found on day 90");
    }

    @Test
    void that_proves_it_stands_though_it_was_not_seen_again_untreated() {
      assertThat(flags(found(infection(60, "pus: 'present'"), infection(90, "pus: 'absent'"))))
          .containsExactly(new RedFlag(Kind.PUS, "Proof of infection: pus", "in the history"));
    }

    @ParameterizedTest
    @CsvSource({
      "'samples: {taken: 5, sameOrganism: 2}', LIKE_SAMPLES",
      "histology: 'organisms', HISTOLOGY"
    })
    void of_the_laboratory_is_told_beside_those_of_the_bedside(String sign, Kind kind) {
      assertThat(kinds(found(infection(60, "sinus: 'present', " + sign))))
          .containsExactly(Kind.SINUS, kind);
    }

    @Test
    void that_failed_the_last_operation_is_told_without_a_plan() {
      assertThat(
              kinds(
                  CaseText.plated()
                      .at("/operations/0", "{outcome: {result: 'failed', mode: 'infection'}}")))
          .containsExactly(Kind.FAILED_BY_INFECTION);
    }

    @Test
    void is_that_an_operation_failed_by_it() {
      assertThat(
              flags(
                  CaseText.plated()
                      .redone("infection")
                      .with("{findings: [" + infection(1, "pus: 'absent'") + "]}")))
          .containsExactly(
              new RedFlag(
                  Kind.FAILED_BY_INFECTION,
                  "Proof of infection: an operation that failed by infection",
                  "in the history"));
    }
  }

  @Nested
  class The_c_reactive_protein {

    @ParameterizedTest
    @CsvSource({"10, false", "10.1, true", "'{min: 8, max: 60}', false"})
    void is_raised_where_it_is_certainly_above_10(String value, boolean raised) {
      assertThat(kinds(found(infection(60, "crpMgL: " + value))).contains(Kind.RAISED_CRP))
          .isEqualTo(raised);
    }

    @Test
    void is_told_with_its_value_and_day() {
      assertThat(flags(found(infection(60, "crpMgL: 48"))))
          .containsExactly(
              new RedFlag(
                  Kind.RAISED_CRP, "C-reactive protein 48 mg/L, raised", "found on day 60"));
    }

    /** The operation was on day 2. */
    @ParameterizedTest
    @CsvSource({"10, false", "15, false", "16, true"})
    void is_explained_by_an_operation_in_the_two_weeks_before(int day, boolean raised) {
      assertThat(kinds(found(infection(day, "crpMgL: 90"))).contains(Kind.RAISED_CRP))
          .isEqualTo(raised);
    }

    @Test
    void that_has_risen_again_is_not_explained_by_it() {
      assertThat(kinds(found(infection(5, "crpMgL: 60"), infection(9, "crpMgL: 90"))))
          .containsExactly(Kind.RAISED_CRP);
    }

    @Test
    void that_has_risen_again_stays_a_flag_whatever_was_operated_on_later() {
      assertThat(
              kinds(
                  found(infection(5, "crpMgL: 60"), infection(9, "crpMgL: 90"))
                      .with("{operations: [{id: 'op-1', day: 2}, {id: 'op-2', day: 30}]}")))
          .containsExactly(Kind.RAISED_CRP);
    }

    @Test
    void on_the_day_of_an_operation_is_explained_by_it() {
      assertThat(
              flags(
                  found(infection(5, "crpMgL: 60"), infection(9, "crpMgL: 90"))
                      .with("{operations: [{id: 'op-1', day: 2}, {id: 'op-2', day: 9}]}")))
          .isEmpty();
    }

    @Test
    void has_not_risen_over_another_value_of_the_same_day() {
      assertThat(flags(found(infection(9, "crpMgL: 90"), infection(9, "crpMgL: 60")))).isEmpty();
    }

    @Test
    void that_falls_or_stays_is_explained_by_it() {
      assertThat(flags(found(infection(5, "crpMgL: 120"), infection(9, "crpMgL: 90")))).isEmpty();
      assertThat(flags(found(infection(5, "crpMgL: 90"), infection(9, "crpMgL: 90")))).isEmpty();
    }

    @Test
    void has_not_risen_again_by_what_was_found_before_the_operation_or_on_its_day() {
      assertThat(flags(found(infection(1, "crpMgL: 4"), infection(9, "crpMgL: 90")))).isEmpty();
      assertThat(flags(found(infection(2, "crpMgL: 4"), infection(9, "crpMgL: 90")))).isEmpty();
    }

    @Test
    void has_certainly_risen_only_where_the_ranges_lie_apart() {
      assertThat(
              flags(found(infection(5, "crpMgL: {min: 60, max: 90}"), infection(9, "crpMgL: 90"))))
          .isEmpty();
    }
  }

  @Nested
  class The_limb {

    @Test
    void without_pulses_is_a_flag_with_pulses_none() {
      assertThat(flags(found(infection(9, "pus: 'absent'"), day(60, "pulses: 'absent'"))))
          .containsExactly(new RedFlag(Kind.NO_PULSES, "Pulses absent", "found on day 60"));
      assertThat(kinds(found(day(60, "pulses: 'absent'"), day(90, "pulses: 'present'")))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"open, true", "flap, false"})
    void with_open_skin_is_a_flag(String skin, boolean raised) {
      assertThat(kinds(found(day(60, "skin: '" + skin + "'"))).contains(Kind.OPEN_SKIN))
          .isEqualTo(raised);
    }

    @ParameterizedTest
    @CsvSource({"vessel, VESSEL", "compartmentSyndrome, COMPARTMENT_SYNDROME"})
    void that_was_in_danger_at_the_injury_is_a_flag(String what, Kind kind) {
      assertThat(flags(CaseText.plated().at("/injury", "{" + what + ": 'present'}")))
          .singleElement()
          .satisfies(flag -> assertThat(flag.kind()).isEqualTo(kind))
          .satisfies(flag -> assertThat(flag.since()).isEqualTo("at the injury"));
      assertThat(flags(CaseText.plated().at("/injury", "{" + what + ": 'absent'}"))).isEmpty();
    }
  }

  @Nested
  class A_palsy {

    private static CaseText palsy(String atInjury, String found) {
      return found(day(60, "nerve: " + found)).at("/injury", "{nerve: " + atInjury + "}");
    }

    private static String nerve(String name, String function) {
      return "{name: '" + name + "', function: '" + function + "'}";
    }

    @Test
    void that_is_complete_and_was_not_there_at_the_injury_is_a_flag() {
      assertThat(flags(palsy("null", nerve("peroneal", "complete-palsy"))))
          .containsExactly(
              new RedFlag(
                  Kind.NEW_PALSY,
                  "Complete palsy of the peroneal nerve that the injury did not cause",
                  "found on day 60"));
      assertThat(kinds(palsy(nerve("peroneal", "intact"), nerve("peroneal", "complete-palsy"))))
          .containsExactly(Kind.NEW_PALSY);
    }

    @Test
    void of_another_nerve_than_the_injury_hurt_is_a_flag() {
      assertThat(
              kinds(palsy(nerve("tibial", "complete-palsy"), nerve("peroneal", "complete-palsy"))))
          .containsExactly(Kind.NEW_PALSY);
    }

    @Test
    void that_the_injury_caused_or_that_is_not_complete_is_none() {
      String complete = nerve("peroneal", "complete-palsy");
      assertThat(flags(palsy(complete, complete))).isEmpty();
      assertThat(flags(palsy("null", nerve("peroneal", "intact")))).isEmpty();
    }
  }

  @Nested
  class The_bone {

    @ParameterizedTest
    @CsvSource({"49.9, false", "50, true", "'{min: 20, max: 60}', true"})
    void that_may_have_had_50_gray_is_a_flag(String dose, boolean raised) {
      assertThat(kinds(found(day(60, "radiationGy: " + dose))).contains(Kind.IRRADIATED))
          .isEqualTo(raised);
    }

    @Test
    void in_which_a_tumour_is_suspected_is_a_flag() {
      assertThat(kinds(found(day(60, "tumourSuspected: 'present'")))).containsExactly(Kind.TUMOUR);
      assertThat(flags(found(day(60, "tumourSuspected: 'absent'")))).isEmpty();
    }
  }

  @Nested
  class The_patient {

    @ParameterizedTest
    @CsvSource({
      "skeletallyMature, no, yes, STILL_GROWING",
      "pregnant, yes, no, PREGNANCY",
      "implantAllergy, present, absent, ALLERGY"
    })
    void is_told_by_the_one_answer_and_not_by_the_other(
        String question, String bad, String good, Kind kind) {
      assertThat(flags(CaseText.plated().at("/patient", "{" + question + ": '" + bad + "'}")))
          .singleElement()
          .satisfies(flag -> assertThat(flag.kind()).isEqualTo(kind))
          .satisfies(flag -> assertThat(flag.since()).isEqualTo("patient"));
      assertThat(flags(CaseText.plated().at("/patient", "{" + question + ": '" + good + "'}")))
          .isEmpty();
    }

    @Test
    void on_an_anticoagulant_is_told_before_an_operation_only() {
      String bleeds =
          "{findings: [{day: 60, host: {drugs: ['anticoagulant']}, "
              + "infection: {pus: 'absent'}}]}";
      assertThat(flags(CaseText.plated().with(bleeds))).isEmpty();
      assertThat(kinds(CaseText.plated().redone("plate-bent").with(bleeds)))
          .containsExactly(Kind.ANTICOAGULANT);
      assertThat(
              kinds(
                  CaseText.plated()
                      .redone("plate-bent")
                      .with(bleeds.replace("'anticoagulant'", "'nsaid'"))))
          .isEmpty();
    }
  }

  @Nested
  class Infection_that_nobody_looked_for {

    @Test
    void is_told_where_an_operation_is_planned_after_another() {
      assertThat(kinds(CaseText.plated().redone("plate-bent")))
          .containsExactly(Kind.INFECTION_NOT_LOOKED_FOR);
      assertThat(
              kinds(
                  CaseText.plated()
                      .redone("plate-bent")
                      .with("{findings: [{day: 60, infection: {lysis: 'absent'}}]}")))
          .isEmpty();
    }

    @Test
    void is_not_told_without_a_plan_or_before_the_first_operation() {
      assertThat(flags(CaseText.plated())).isEmpty();
      assertThat(flags(CaseText.plated().redone("plate-bent").with("{operations: []}"))).isEmpty();
    }
  }

  @Test
  void what_proves_infection_comes_before_what_points_to_it_and_then_limb_bone_and_patient() {
    assertThat(
            kinds(
                found(
                        infection(60, "fever: 'present', pus: 'present', sinus: 'present'"),
                        day(61, "pulses: 'absent', tumourSuspected: 'present'"))
                    .at("/patient", "{pregnant: 'yes'}")))
        .containsExactly(
            Kind.SINUS, Kind.PUS, Kind.FEVER, Kind.NO_PULSES, Kind.TUMOUR, Kind.PREGNANCY);
  }
}
