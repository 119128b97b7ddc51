package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.Plate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PlateSizeTest {

  /** Table T3; the semitubular plate is not in it and stands from memory. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "LARGE_FRAGMENT_BROAD,          16.0, 4.5, 16, 4.5, 8",
    "LARGE_FRAGMENT_BROAD_LOCKING,  17.5, 5.2, 18, 5.0, 9",
    "LARGE_FRAGMENT_NARROW,         12.0, 3.6, 16, 4.5, 8",
    "LARGE_FRAGMENT_NARROW_LOCKING, 13.5, 4.6, 18, 5.0, 9",
    "SMALL_FRAGMENT,                10.0, 3.0, 12, 3.5, 6.5",
    "SMALL_FRAGMENT_LOCKING,        11.0, 3.3, 13, 3.5, 7",
    "RECONSTRUCTION,                10.0, 2.7, 12, 3.5, 6",
    "ONE_THIRD_TUBULAR,              9.0, 1.0, 12, 3.5, 6",
    "SEMI_TUBULAR,                  11.0, 1.0, 16, 4.5, 8",
    "SHAFT_STRENGTH_2_7,             8.0, 2.5, 10, 2.7, 5"
  })
  void follows_the_table(
      Plate.Family family,
      double width,
      double thickness,
      double spacing,
      double screw,
      double endOffset) {
    PlateSize size = PlateSize.of(family);
    assertThat(size.width()).isEqualTo(width);
    assertThat(size.thickness()).isEqualTo(thickness);
    assertThat(size.spacing()).isEqualTo(spacing);
    assertThat(size.screw()).isEqualTo(screw);
    assertThat(size.endOffset()).isEqualTo(endOffset);
  }

  @ParameterizedTest
  @EnumSource(Plate.Family.class)
  void only_a_locking_family_takes_locking_screws(Plate.Family family) {
    assertThat(PlateSize.of(family).locking()).isEqualTo(family.name().endsWith("LOCKING"));
  }

  @ParameterizedTest
  @EnumSource(Plate.Family.class)
  void holes_are_farther_apart_than_a_screw_is_thick(Plate.Family family) {
    assertThat(PlateSize.of(family).spacing()).isGreaterThan(2 * PlateSize.of(family).screw());
  }
}
