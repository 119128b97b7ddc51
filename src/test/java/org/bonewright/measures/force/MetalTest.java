package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MetalTest {

  private static final Metal UNTOLD = Metal.of(Optional.empty());

  @ParameterizedTest(name = "{0}: {1}, endurance {2} to {3}, strength {4} MPa")
  @CsvSource({
    "STEEL_ANNEALED,      193000, 180, 250, 490",
    "STEEL_COLD_WORKED,   193000, 300, 400, 860",
    "STEEL_HIGH_NITROGEN, 193000, 300, 400, 860",
    "COBALT_CHROMIUM,     193000, 300, 400, 860",
    "TITANIUM_UNALLOYED,  103000, 250, 300, 550",
    "TITANIUM_ALLOY,      110000, 450, 550, 860"
  })
  void bears_what_the_table_says(
      Material material, double young, double least, double most, double strength) {
    Metal metal = Metal.of(Optional.of(material));
    assertThat(metal.young().min()).isEqualTo(young);
    assertThat(metal.young().max()).isEqualTo(young);
    assertThat(metal.endurance().min()).isEqualTo(least);
    assertThat(metal.endurance().max()).isEqualTo(most);
    assertThat(metal.strength()).isEqualTo(strength);
    assertThat(metal.told()).isTrue();
  }

  @Test
  void that_is_not_told_lies_between_titanium_alloy_and_steel() {
    assertThat(UNTOLD.told()).isFalse();
    assertThat(UNTOLD.young().min()).isEqualTo(110_000);
    assertThat(UNTOLD.young().max()).isEqualTo(193_000);
    assertThat(UNTOLD.young().assumed()).isTrue();
    assertThat(UNTOLD.endurance().min()).isEqualTo(300);
    assertThat(UNTOLD.endurance().max()).isEqualTo(550);
  }

  @ParameterizedTest
  @EnumSource(names = {"STEEL_COLD_WORKED", "TITANIUM_ALLOY"})
  void that_is_not_told_spans_both(Material material) {
    Metal told = Metal.of(Optional.of(material));
    assertThat(UNTOLD.young().min()).isLessThanOrEqualTo(told.young().min());
    assertThat(UNTOLD.young().max()).isGreaterThanOrEqualTo(told.young().max());
    assertThat(UNTOLD.endurance().min()).isLessThanOrEqualTo(told.endurance().min());
    assertThat(UNTOLD.endurance().max()).isGreaterThanOrEqualTo(told.endurance().max());
    assertThat(UNTOLD.strength()).isLessThanOrEqualTo(told.strength());
  }

  @Test
  void is_placed_within_its_ranges_by_the_assumptions() {
    Draw stiff = new Draw(Map.of(Assumption.PLATE, 1.0, Assumption.METAL, 0.0));
    assertThat(UNTOLD.elastic(stiff).young()).isEqualTo(193_000);
    assertThat(UNTOLD.fatigue(stiff).endurance()).isEqualTo(300);
    assertThat(UNTOLD.elastic(Draw.MIDDLE).young()).isEqualTo(151_500);
    assertThat(UNTOLD.fatigue(Draw.MIDDLE).strength()).isEqualTo(860);
  }
}
