package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.stream.Stream;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.fhir.ucum.UcumService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Units are written in UCUM, by its own table of units. */
class UnitsTest {

  private static final UcumService UCUM = service();

  private static UcumService service() {
    try (InputStream table = UcumService.class.getResourceAsStream("/ucum-essence.xml")) {
      return new UcumEssenceService(Objects.requireNonNull(table));
    } catch (IOException | UcumException e) {
      throw new IllegalStateException(e);
    }
  }

  static Stream<Arguments> units() {
    return AllCells.RULES.definitions().stream()
        .filter(definition -> definition.domain() instanceof Numbers)
        .map(UnitsTest::unit);
  }

  private static Arguments unit(Definition definition) {
    return Arguments.of(definition.id(), ((Numbers) definition.domain()).unit());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("units")
  void every_number_has_a_unit_of_ucum(String measure, String unit) {
    assertThat(unit).as(measure).isNotBlank();
    assertThat(UCUM.validate(unit)).as(measure).isNull();
  }

  @Test
  void an_invented_unit_is_refused() {
    assertThat(UCUM.validate("furlongs")).isNotNull();
  }
}
