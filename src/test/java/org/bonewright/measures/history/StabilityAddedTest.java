package org.bonewright.measures.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan does the same as the operation that failed, unless changed. */
class StabilityAddedTest {

  private static final String ID = "stability-added";
  private static final String STAGE = "/plans/0/stages/0";

  @Test
  void the_first_implant_adds_it_and_none_adds_nothing() {
    assertThat(Taken.of(ID, CaseText.plated())).isEqualTo("more fact");
    assertThat(Taken.of(ID, CaseText.plated().at("/operations/0", "{fixation: []}")))
        .isEqualTo("nothing fact");
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("more or nothing fact, ask op-1/fixation");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {}                                     | nothing fact
          {lengthMm: 176}                        | more fact
          {family: 'large-fragment-broad'}       | more fact
          {family: 'small-fragment', holes: 10}  | nothing fact
          """)
  void a_plate_adds_it_by_length_or_thickness(String plate, String reads) {
    CaseText text = CaseText.plated().redone("plate-bent");
    // fresh bone for every screw, so that hold stays as it was
    assertThat(
            Taken.of(
                ID,
                text.at(
                        STAGE + "/fixation/0",
                        "{screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2, track:"
                            + " 'fresh'}]}")
                    .at(STAGE + "/fixation/0", plate)))
        .isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {outerMm: 10}   | nothing fact
          {outerMm: 11}   | more fact
          {outerMm: null} | more or nothing fact, ask plan-a/stage-1/fixation
          """)
  void a_nail_adds_it_by_its_diameter_and_its_plate_is_not_asked_for(String nail, String reads) {
    CaseText text = CaseText.nailed().redone("bolt-broken").at(STAGE + "/fixation/0", nail);
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void another_concept_adds_it_where_both_are_stated() {
    CaseText text = CaseText.nailed().redone("bolt-broken").at(STAGE, "{concept: 'absolute'}");
    assertThat(Taken.of(ID, text)).isEqualTo("more fact");
    assertThat(Taken.of(ID, text.at("/operations/0", "{concept: null}")))
        .isEqualTo("more or nothing fact, ask plan-a/stage-1/fixation");
  }

  @Test
  void bolts_taken_out_make_it_dynamic_and_no_more() {
    CaseText text =
        CaseText.nailed()
            .redone("bolt-broken")
            .without(STAGE + "/reduction")
            .at(STAGE, "{fixation: [], removed: [{of: 'op-1/nail-1', bolts: [3]}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("dynamised fact");
    CaseText whole = text.at(STAGE, "{removed: [{of: 'op-1/nail-1'}]}");
    assertThat(Taken.of(ID, whole)).isEqualTo("nothing fact");
  }
}
