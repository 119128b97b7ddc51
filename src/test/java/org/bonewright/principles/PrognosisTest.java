package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.BoneName;
import org.bonewright.principles.Prognosis.Way;
import org.junit.jupiter.api.Test;

/** Which published result is shown beside a plan. */
class PrognosisTest {

  private static final Prognosis PROGNOSIS =
      Prognosis.read(
          """
          caution: Not a forecast.
          published:
            - {bone: femur, way: exchange-nail, say: "Nails.", source: {text: "A", read: excerpt}}
            - {bone: ulna, way: plate, graft: true, say: "Graft.", source: {text: "B", read: excerpt}}
            - {bone: ulna, way: plate, graft: false, say: "None.", source: {text: "C", read: excerpt}}
            - {bone: ulna, say: "Any.", source: {text: "D", read: excerpt}}
          """);

  private static String of(BoneName bone, Way way, boolean graft) {
    return PROGNOSIS.of(bone, way, graft).orElse("nothing");
  }

  @Test
  void it_is_one_of_the_same_bone_way_and_graft_with_caution_and_source() {
    assertThat(of(BoneName.ULNA, Way.PLATE, true))
        .startsWith("Graft. Not a forecast. Source: B")
        .endsWith(".");
    assertThat(of(BoneName.ULNA, Way.PLATE, false)).startsWith("None.");
  }

  @Test
  void one_that_names_no_way_and_no_graft_fits_any() {
    assertThat(of(BoneName.ULNA, Way.NAIL, true)).startsWith("Any.");
    assertThat(of(BoneName.FEMUR, Way.EXCHANGE_NAIL, true)).startsWith("Nails.");
    assertThat(of(BoneName.FEMUR, Way.EXCHANGE_NAIL, false)).startsWith("Nails.");
  }

  @Test
  void nothing_is_told_of_another_bone_or_way() {
    assertThat(of(BoneName.FEMUR, Way.NAIL, false)).isEqualTo("nothing");
    assertThat(of(BoneName.TIBIA, Way.EXCHANGE_NAIL, false)).isEqualTo("nothing");
  }
}
