package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class BoneGradeMethodTest {

  private static CaseText quality(String quality) {
    return CaseText.plated().at("/bone", "{quality: " + quality + "}");
  }

  private static CaseText stripped(String quality) {
    return quality(quality)
        .at(
            "/operations/0/fixation/0",
            "{screws: [{at: [1, 3], type: 'cortical', state: 'stripped'}]}")
        .redone("plate-bent");
  }

  @Test
  void a_measurement_known_by_then_is_measured() {
    CaseText text = quality("[{method: 'cortical-thickness', value: 5, day: 100}]");
    assertThat(Taken.of("bone-grade-method", text.redone("plate-bent")))
        .isEqualTo("measured record");
    assertThat(Taken.of("bone-grade-method", text.redone("plate-bent"), "op-1"))
        .isEqualTo("not-measured record");
  }

  @Test
  void the_measurements_that_grade_it_are_named_and_no_others() {
    CaseText text =
        quality(
            "[{method: 'cortical-thickness', value: 5, day: 1}, {method: 'ct-hounsfield', value:"
                + " 300, day: 1}, {method: 'dxa-t-score', value: -1.5}, {method:"
                + " 'cortical-thickness', value: 3, day: 100}]");
    assertThat(Taken.reading("bone-grade-method", Taken.subject(text.file(), "op-1")).working())
        .isEqualTo("cortical thickness 5, dxa t score -1.5");
  }

  @Test
  void hounsfield_units_do_not_grade_the_bone() {
    assertThat(Taken.of("bone-grade-method", quality("[{method: 'ct-hounsfield', value: 300}]")))
        .isEqualTo("not-measured record");
  }

  @Test
  void two_stripped_screws_let_it_be_inferred_unless_it_was_measured() {
    assertThat(Taken.of("bone-grade-method", stripped("[]"))).isEqualTo("inferred record");
    assertThat(
            Taken.of("bone-grade-method", stripped("[{method: 'cortical-thickness', value: 5}]")))
        .isEqualTo("measured record");
  }
}
