package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/** A plate of ten holes 16 mm apart about a zone with its middle at 180 mm; hole 5 at -8 mm. */
class PlateOverZoneTest {

  private static final String PLATE = "/operations/0/fixation/0";

  private static PlacedPlate placed(String place, double shortest, double longest) {
    FractureZone zone =
        new FractureZone(
            Optional.of(new Dimension(shortest, longest, false, "")),
            Optional.of(new Dimension(180, 180, false, "")));
    return new PlacedPlate(
        CaseText.plated().at(PLATE, "{place: " + place + "}").plate(), zone, Set.of(4));
  }

  private static PlacedPlate byLevel(double shortest, double longest) {
    return placed("{zoneBetweenHoles: null, firstHoleMm: 108}", shortest, longest);
  }

  @Test
  void a_hole_on_the_very_edge_of_the_zone_lies_over_it() {
    // the zone from -8 to 8: holes 5 and 6 stand on its edges
    assertThat(byLevel(16, 16).holes(HoleSide.OVER)).containsExactly(5, 6);
    assertThat(byLevel(15.9, 15.9).holes(HoleSide.OVER)).isEmpty();
  }

  @Test
  void a_hole_between_the_shortest_and_the_longest_zone_is_unsure() {
    // 5 mm to 20 mm either way
    PlacedPlate plate = byLevel(10, 40);
    assertThat(plate.holes(HoleSide.UNSURE)).containsExactly(5, 6);
    assertThat(plate.holes(HoleSide.OVER)).isEmpty();
    assertThat(plate.holes(HoleSide.NEAR)).containsExactly(1, 2, 3, 4);
  }

  @Test
  void a_plate_can_be_moved_only_as_long_as_both_holes_between_touch_the_zone() {
    // holes 4 and 7 are 48 mm apart: room for (48 - 20) / 2 = 14 mm each way; but hole 5, 8 mm
    // from the middle, touches with its radius of 2.25 for 10 + 2.25 - 8 = 4.25 mm only
    Dimension fifth = placed("{zoneBetweenHoles: [4, 7]}", 20, 20).distance(5).orElseThrow();
    assertThat(fifth.min()).isCloseTo(-12.25, within(1e-9));
    assertThat(fifth.max()).isCloseTo(-3.75, within(1e-9));
  }

  @Test
  void one_hole_alone_places_no_plate() {
    PlacedPlate plate = placed("{zoneBetweenHoles: [4]}", 2, 2);
    assertThat(plate.side(4)).isEqualTo(HoleSide.UNSURE);
    assertThat(plate.roomForZone()).isEmpty();
  }

  @Test
  void a_hole_is_filled_by_a_screw_of_the_plate_or_a_lag_screw_through_it() {
    PlacedPlate plate = byLevel(2, 2);
    assertThat(plate.isFilled(3)).isTrue();
    assertThat(plate.isFilled(4)).isTrue();
    assertThat(plate.isFilled(2)).isFalse();
  }
}
