package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Patient;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A man's tibia of 360 mm: its middle half from 90 to 270 mm; from the table 10 to 12 mm. */
class IsthmusTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {atMm: 90, canalMm: 9}                        | 9
          {atMm: 270, canalMm: 9}                       | 9
          {atMm: 89, canalMm: 14}                       | 10–14 assumed
          {atMm: 271, canalMm: 14}                      | 10–14 assumed
          {atMm: 40, canalMm: 8}                        | 8 assumed
          {atMm: 40, canalMm: 8}, {atMm: 180, outerMm: 24}  | 8 assumed
          {atMm: 40, canalMm: 14}, {atMm: 180, canalMm: 11} | 11
          {atMm: 180, outerMm: 24}                      | 10–12 assumed
          """)
  void is_measured_only_where_a_canal_was_measured_in_the_middle_half(
      String sections, String expected) {
    BoneShape bone =
        new BoneShape(
            CaseText.plated().at("/bone", "{sections: [" + sections + "]}").file().bone(),
            Optional.of(Patient.Sex.MALE),
            Set.of(BoneGrade.GOOD));
    Dimension isthmus = bone.isthmus();
    assertThat(isthmus.numbers() + (isthmus.assumed() ? " assumed" : "")).isEqualTo(expected);
  }
}
