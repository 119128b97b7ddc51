package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Zone;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The plate has ten holes 16 mm apart; a screw of it is 4.5 mm thick. */
class PlacedPlateTest {

  private static final String PLATE = "/operations/0/fixation/0";
  private static final FractureZone TWO_MM = zone(Quantity.of(179), Quantity.of(181));
  private static final FractureZone FORTY_MM = zone(Quantity.of(160), Quantity.of(200));

  private static FractureZone zone(Quantity from, Quantity to) {
    return FractureZone.of(new Zone(Optional.of(from), Optional.of(to), Optional.empty()));
  }

  private static PlacedPlate placed(String patch, FractureZone zone) {
    return new PlacedPlate(CaseText.plated().at(PLATE, patch).plate(), zone);
  }

  private static PlacedPlate between(int near, int far, FractureZone zone) {
    return placed("{place: {zoneBetweenHoles: [" + near + ", " + far + "]}}", zone);
  }

  private static PlacedPlate firstHole(String level, FractureZone zone) {
    return placed("{place: {zoneBetweenHoles: null, firstHoleMm: " + level + "}}", zone);
  }

  private static void spans(Optional<Dimension> dimension, double min, double max) {
    assertThat(dimension).isPresent();
    assertThat(dimension.get().min()).isCloseTo(min, within(1e-9));
    assertThat(dimension.get().max()).isCloseTo(max, within(1e-9));
  }

  @Nested
  class ByBoth {

    private final PlacedPlate between = between(5, 6, TWO_MM);

    @Test
    void a_first_hole_that_is_a_range_is_narrowed_by_the_holes_either_side_of_the_zone() {
      // hole 5 at 179 at most and hole 6 at 181 at least: hole 1 from 101 to 115
      spans(between.level(1), 101, 115);
      PlacedPlate both =
          placed("{place: {zoneBetweenHoles: [5, 6], firstHoleMm: {min: 110, max: 130}}}", TWO_MM);
      spans(both.level(1), 110, 115);
      spans(both.distance(1), -70, -65);
      assertThat(both.level(1).orElseThrow().assumed()).isTrue();
    }

    @Test
    void a_first_hole_that_contradicts_them_counts() {
      PlacedPlate both =
          placed("{place: {zoneBetweenHoles: [5, 6], firstHoleMm: {min: 120, max: 130}}}", TWO_MM);
      spans(both.level(1), 120, 130);
      assertThat(both.level(1).orElseThrow().assumed()).isFalse();
    }
  }

  @Nested
  class ByTheFirstHole {

    @Test
    void each_hole_is_one_spacing_farther_on() {
      // hole 1 at 108, the middle of the zone at 180
      PlacedPlate plate = firstHole("108", TWO_MM);
      spans(plate.distance(1), -72, -72);
      spans(plate.distance(5), -8, -8);
      spans(plate.distance(6), 8, 8);
      spans(plate.distance(10), 72, 72);
    }

    @Test
    void a_level_read_as_a_range_stays_one() {
      spans(firstHole("{min: 106, max: 109}", TWO_MM).distance(5), -10, -7);
    }

    @Test
    void a_spacing_stated_as_a_range_widens_with_every_hole() {
      PlacedPlate plate =
          placed(
              "{spacingMm: {min: 15, max: 17}, place: {zoneBetweenHoles: null, firstHoleMm: 108}}",
              TWO_MM);
      spans(plate.distance(1), -72, -72);
      spans(plate.distance(3), -42, -38);
    }

    @Test
    void a_spacing_from_the_family_makes_it_assumed() {
      assertThat(firstHole("108", TWO_MM).distance(5).orElseThrow().assumed()).isTrue();
      PlacedPlate stated =
          placed("{spacingMm: 16, place: {zoneBetweenHoles: null, firstHoleMm: 108}}", TWO_MM);
      assertThat(stated.distance(5).orElseThrow().assumed()).isFalse();
    }

    @Test
    void nothing_can_be_told_without_spacing_or_zone() {
      PlacedPlate noFamily =
          placed("{family: null, place: {zoneBetweenHoles: null, firstHoleMm: 108}}", TWO_MM);
      assertThat(noFamily.distance(5)).isEmpty();
      assertThat(firstHole("108", FractureZone.UNKNOWN).distance(5)).isEmpty();
    }
  }

  @Nested
  class ByTheHolesEitherSide {

    @Test
    void neighbouring_holes_leave_what_the_zone_does_not_fill() {
      // holes at -8 and 8 when centred; 16 mm less a zone of 2 mm: 7 mm each way
      spans(between(5, 6, TWO_MM).distance(5), -15, -1);
      spans(between(5, 6, TWO_MM).distance(6), 1, 15);
    }

    @Test
    void a_hole_between_must_touch_the_zone() {
      // hole 5 centred on 0; fits: (32 - 2) / 2 = 15 mm; touches: 1 + 2.25 - 0 = 3.25 mm
      spans(between(4, 6, TWO_MM).distance(5), -3.25, 3.25);
      spans(between(4, 6, TWO_MM).distance(4), -19.25, -12.75);
    }

    @Test
    void a_zone_as_long_as_the_room_for_it_leaves_no_shift() {
      // holes 3 and 6 are 48 mm apart; 40 mm zone: (48 - 40) / 2 = 4 mm each way;
      // the holes between lie at -8 and 8, 14 mm within the edge, so they always touch it
      spans(between(3, 6, FORTY_MM).distance(3), -28, -20);
      spans(between(5, 6, FORTY_MM).distance(5), -8, -8);
    }

    @Test
    void a_zone_of_unknown_length_leaves_half_the_room_each_way() {
      spans(between(5, 6, FractureZone.UNKNOWN).distance(5), -16, 0);
    }

    @Test
    void the_widest_spacing_gives_the_widest_shift() {
      // exactly 18 mm: hole 6 at 9 plus or minus (18 - 2) / 2 = 8, so 1 to 17;
      // exactly 16 mm: 1 to 15; a range of both must hold both
      PlacedPlate vague = placed("{spacingMm: {min: 16, max: 18}}", TWO_MM);
      Dimension hole6 = vague.distance(6).orElseThrow();
      assertThat(hole6.min()).isLessThanOrEqualTo(1);
      assertThat(hole6.max()).isGreaterThanOrEqualTo(17);
    }

    @Test
    void a_level_counts_before_the_holes() {
      PlacedPlate both = placed("{place: {zoneBetweenHoles: [5, 6], firstHoleMm: 109}}", TWO_MM);
      spans(both.distance(5), -7, -7);
    }

    @Test
    void the_zone_has_room_between_them_and_reaches_the_holes_within() {
      spans(between(5, 6, FractureZone.UNKNOWN).roomForZone(), 0, 16);
      spans(between(4, 7, FractureZone.UNKNOWN).roomForZone(), 16, 48);
      assertThat(firstHole("108", TWO_MM).roomForZone()).isEmpty();
    }
  }

  @Nested
  class Sides {

    @Test
    void follow_the_holes_named_either_side() {
      PlacedPlate plate = between(4, 7, FORTY_MM);
      assertThat(plate.holes(HoleSide.NEAR)).containsExactly(1, 2, 3, 4);
      assertThat(plate.holes(HoleSide.OVER)).containsExactly(5, 6);
      assertThat(plate.holes(HoleSide.FAR)).containsExactly(7, 8, 9, 10);
      assertThat(plate.holes(HoleSide.UNSURE)).isEmpty();
    }

    @Test
    void follow_the_levels_where_no_hole_is_named() {
      // holes at -72 to 72; the zone from -20 to 20: holes 4 (-24) and 7 (24) are just outside
      PlacedPlate plate = firstHole("108", FORTY_MM);
      assertThat(plate.holes(HoleSide.NEAR)).containsExactly(1, 2, 3, 4);
      assertThat(plate.holes(HoleSide.OVER)).containsExactly(5, 6);
      assertThat(plate.holes(HoleSide.FAR)).containsExactly(7, 8, 9, 10);
    }

    @Test
    void a_hole_that_may_lie_on_either_side_is_unsure() {
      // hole 5 at -8 plus 0 to 9 mm, the line from -1 to 1
      PlacedPlate plate = firstHole("{min: 108, max: 117}", TWO_MM);
      assertThat(plate.side(5)).isEqualTo(HoleSide.UNSURE);
      assertThat(plate.side(4)).isEqualTo(HoleSide.NEAR);
      assertThat(plate.side(6)).isEqualTo(HoleSide.FAR);
    }

    @Test
    void all_holes_are_unsure_without_a_place() {
      PlacedPlate plate = placed("{place: null}", TWO_MM);
      assertThat(plate.holes(HoleSide.UNSURE)).hasSize(10);
    }
  }

  @Nested
  class Holes {

    @Test
    void are_numbered_from_one() {
      assertThat(between(5, 6, TWO_MM).allHoles()).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    }

    @Test
    void are_those_with_a_screw_or_plug_where_their_number_is_not_stated() {
      PlacedPlate plate = placed("{holes: null, plugged: [7]}", TWO_MM);
      assertThat(plate.allHoles()).containsExactly(1, 3, 5, 6, 7, 8, 10);
    }

    @Test
    void hold_the_screw_of_the_row_that_names_them() {
      PlacedPlate plate = between(5, 6, TWO_MM);
      assertThat(plate.screwIn(3)).isPresent();
      assertThat(plate.screwIn(4)).isEmpty();
    }
  }

  @Nested
  class Length {

    @Test
    void is_as_stated() {
      spans(between(5, 6, TWO_MM).length(), 160, 160);
      assertThat(between(5, 6, TWO_MM).length().orElseThrow().assumed()).isFalse();
    }

    @Test
    void is_that_of_the_family_a_tenth_either_way() {
      // 9 x 16 + 2 x 8 = 160
      PlacedPlate plate = placed("{lengthMm: null}", TWO_MM);
      spans(plate.length(), 144, 176);
      assertThat(plate.length().orElseThrow().assumed()).isTrue();
    }

    @Test
    void is_unknown_without_family_or_number_of_holes() {
      assertThat(placed("{lengthMm: null, family: null}", TWO_MM).length()).isEmpty();
      assertThat(placed("{lengthMm: null, holes: null}", TWO_MM).length()).isEmpty();
    }
  }

  @Property(tries = 200)
  void all_holes_are_equally_far_apart(
      @ForAll @IntRange(min = 1, max = 8) int near,
      @ForAll @IntRange(min = 1, max = 2) int apart,
      @ForAll @DoubleRange(min = 1, max = 60) double length) {
    FractureZone zone = zone(Quantity.of(180 - length / 2), Quantity.of(180 + length / 2));
    for (PlacedPlate plate : List.of(between(near, near + apart, zone), firstHole("108", zone))) {
      List<Dimension> distances =
          plate.allHoles().mapToObj(hole -> plate.distance(hole).orElseThrow()).toList();
      IntStream.range(1, distances.size())
          .forEach(
              i -> {
                Dimension before = distances.get(i - 1);
                Dimension here = distances.get(i);
                assertThat(here.min() - before.min()).isCloseTo(16, within(1e-9));
                assertThat(here.max() - before.max()).isCloseTo(16, within(1e-9));
              });
    }
  }

  @Property(tries = 200)
  void a_plate_moved_by_some_way_has_every_hole_moved_by_it(
      @ForAll @DoubleRange(min = 0, max = 250) double level,
      @ForAll @DoubleRange(min = 0, max = 250) double way) {
    PlacedPlate plate = firstHole(String.valueOf(level), TWO_MM);
    PlacedPlate moved = firstHole(String.valueOf(level + way), TWO_MM);
    plate
        .allHoles()
        .forEach(
            hole -> {
              double from = plate.distance(hole).orElseThrow().min();
              assertThat(moved.distance(hole).orElseThrow().min())
                  .isCloseTo(from + way, within(1e-6));
            });
  }

  @Property(tries = 200)
  void a_range_of_spacings_and_zones_holds_what_any_of_them_gives(
      @ForAll @DoubleRange(min = 10, max = 18) double spacing,
      @ForAll @DoubleRange(min = 0, max = 5) double more,
      @ForAll @DoubleRange(min = 0, max = 20) double length,
      @ForAll @DoubleRange(min = 0, max = 10) double longer,
      @ForAll @IntRange(min = 1, max = 3) int apart) {
    String vague = "{min: " + spacing + ", max: " + (spacing + more) + "}";
    FractureZone vagueZone =
        FractureZone.UNKNOWN.withLength(Dimension.assumed(length, length + longer, ""));
    FractureZone exactZone =
        FractureZone.UNKNOWN.withLength(
            Dimension.assumed(length + longer / 2, length + longer / 2, ""));
    String place = ", place: {zoneBetweenHoles: [5, " + (5 + apart) + "]}}";
    PlacedPlate wide = placed("{spacingMm: " + vague + place, vagueZone);
    PlacedPlate narrow = placed("{spacingMm: " + (spacing + more / 2) + place, exactZone);
    for (int hole : List.of(1, 5, 6, 10)) {
      Dimension far = wide.distance(hole).orElseThrow();
      Dimension near = narrow.distance(hole).orElseThrow();
      assertThat(near.min()).isGreaterThanOrEqualTo(far.min() - 1e-9);
      assertThat(near.max()).isLessThanOrEqualTo(far.max() + 1e-9);
    }
  }
}
