package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One earlier operation: eccentric screws under a plate, failed. */
class CompressionsLostTest {

  private static final String ID = "compressions-lost-before";
  private static final CaseText REDONE = CaseText.plated().redone("plate-bent");

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          day: 2                                                  | 1 fact
          compression: {method: 'lag-screw'}                      | 1 fact
          compression: {method: 'none'}                           | 0 fact
          compression: {method: 'nail-backslap'}                  | 0 fact
          compression: null, concept: 'relative'                  | 0 fact
          outcome: {result: 'united', mode: null}                 | 0 fact
          fixation: []                                            | 0 fact
          compression: null                                       | 0–1 fact, ask op-1/compression/method
          outcome: null                                           | 0–1 fact, ask op-1/outcome/result
          outcome: {result: 'unknown', mode: null}                | 0–1 fact, ask op-1/outcome/result
          fixation: null                                          | 0–1 fact, ask op-1/fixation
          """)
  void counts_what_was_compressed_and_failed(String earlier, String reads) {
    CaseText text = REDONE.at("/operations/0", "{" + earlier + "}");
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void an_operation_s_own_failure_does_not_count() {
    assertThat(Taken.of(ID, REDONE, "op-1")).isEqualTo("0 fact");
  }
}
