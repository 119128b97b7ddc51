package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetalsMixedTest {

  private static final String PLATE = "{id: '%s', kind: 'plate'%s}";

  @ParameterizedTest(name = "plates of {0} and {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          steel-cold-worked  | titanium-alloy    | yes fact
          titanium-unalloyed | titanium-alloy    | no fact
          steel-cold-worked  | steel-annealed    | no fact
          steel-cold-worked  |                   | no or yes fact, ask op-1/b/material
          """)
  void steel_beside_titanium_is_mixed(String one, String two, String reads) {
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{fixation: [" + plate("a", one) + ", " + plate("b", two) + "]}");
    assertThat(Taken.of("metals-mixed", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "one plate of {0}")
  @CsvSource(delimiter = '|', textBlock = "titanium-alloy\n''\n")
  void one_piece_mixes_nothing(String metal) {
    CaseText text =
        CaseText.plated().at("/operations/0", "{fixation: [" + plate("a", metal) + "]}");
    assertThat(Taken.of("metals-mixed", text)).isEqualTo("no fact");
  }

  @ParameterizedTest(name = "plate of steel, nail of {0}: {1}")
  @CsvSource({
    "titanium-alloy, yes fact",
    "steel-cold-worked, no fact",
    "'', 'no or yes fact, ask op-1/b/material'"
  })
  void a_nail_counts_beside_a_plate(String metal, String reads) {
    String nail = plate("b", metal).replace("'plate'", "'nail'");
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0",
                "{fixation: [" + plate("a", "steel-annealed") + ", " + nail + "]}");
    assertThat(Taken.of("metals-mixed", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} plates: {1}")
  @CsvSource({"1, one piece at most", "2, one metal"})
  void one_piece_is_told_from_one_metal(int plates, String working) {
    String second = plates == 2 ? ", " + plate("b", "steel-annealed") : "";
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{fixation: [" + plate("a", "steel-annealed") + second + "]}");
    assertThat(Taken.reading("metals-mixed", Taken.subject(text.file(), "op-1")).working())
        .isEqualTo(working);
  }

  private static String plate(String id, String metal) {
    boolean told = metal != null && !metal.isEmpty();
    return PLATE.formatted(id, told ? ", material: '" + metal + "'" : "");
  }
}
