package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndsInDoubtTest {

  private static final String ID = "ends-in-doubt";

  private static CaseText found(String type, String sinus) {
    return CaseText.plated()
        .redone("plate-bent")
        .with(
            "{findings: [{day: 190, vitality: '%s', infection: {sinus: '%s', woundBreakdown: 'absent', pus: 'absent', samples: {taken: 5, sameOrganism: 0}, histology: 'negative'}}]}"
                .formatted(type, sinus));
  }

  @ParameterizedTest(name = "{0}, sinus {1}: {2}")
  @CsvSource({
    "atrophic, absent, yes fact",
    "atrophic, unknown, yes fact",
    "oligotrophic, absent, no fact",
    "hypertrophic, absent, no fact",
    "hypertrophic, present, yes fact",
    "oligotrophic, unknown, 'no or yes fact, ask findings/infection/sinus'"
  })
  void rests_on_type_and_infection(String type, String sinus, String reads) {
    assertThat(Taken.of(ID, found(type, sinus))).isEqualTo(reads);
  }

  @Test
  void asks_for_the_type() {
    assertThat(Taken.of(ID, found("atrophic", "absent").at("/findings/0", "{vitality: null}")))
        .isEqualTo("no or yes fact, ask findings/vitality");
  }
}
