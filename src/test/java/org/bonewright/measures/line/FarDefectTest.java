package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FarDefectTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          farDefectPercent: 30, contactPercent: 60                         | 30 fact
          farDefectPercent: {min: 10, max: 30}                             | 10–30 fact, ask op-1/reduction/farDefectPercent
          # 100 - 60 = 40
          farDefectPercent: null, contactPercent: 60                       | 0–40 assumed, ask op-1/reduction/farDefectPercent
          farDefectPercent: null, contactPercent: {min: 50, max: 70}       | 0–50 assumed, ask op-1/reduction/farDefectPercent
          farDefectPercent: null, contactPercent: 100                      | 0 assumed
          farDefectPercent: null, contactPercent: null                     | unknown, ask op-1/reduction/farDefectPercent
          """)
  void is_as_stated_or_bounded_by_the_contact(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/reduction", "{" + stated + "}");
    assertThat(Taken.of("far-defect-percent", text)).isEqualTo(reads);
  }
}
