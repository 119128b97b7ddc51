package org.bonewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bonewright.casefile.CaseFile;
import org.junit.jupiter.api.Test;

/**
 * By hand, for the demo: a femur of 425 mm at 3 units a mm, its near end at 190 units. So 209 mm
 * stand at 190 + 3 × 209 = 817.
 */
class ToScaleTest {

  private static final CaseFile DEMO = CaseDrawings.read(CaseDrawings.DEMO);
  private static final double CLOSE = 0.01;

  private static Picture strip(String subject) {
    return CaseDrawings.draw(DEMO, subject, View.STRIP).picture();
  }

  private static Picture map(String subject) {
    return CaseDrawings.draw(DEMO, subject, View.MAP).picture();
  }

  @Test
  void a_hole_stands_at_its_level() {
    // Holes 16 mm apart from 209: hole 1 at 817, hole 8 at 190 + 3 × 321 = 1153.
    assertThat(middle(box(strip("op-1"), "hole", "op-1/plate-1 hole 1")))
        .isEqualTo(817, within(CLOSE));
    assertThat(middle(box(strip("op-1"), "hole", "op-1/plate-1 hole 8")))
        .isEqualTo(1153, within(CLOSE));
  }

  @Test
  void a_hole_is_as_wide_as_its_screw_and_a_little_more() {
    // 4.5 mm × 1.15 × 3
    assertThat(box(strip("op-1"), "hole", "op-1/plate-1 hole 3").width())
        .isEqualTo(15.525, within(CLOSE));
  }

  @Test
  void a_plate_is_as_long_and_as_thick_as_recorded() {
    // 128 mm, of which 7 × 16 = 112 between the outer holes, so 8 mm beyond each: 201 to 329 mm.
    Mark.Outline plate = outline(strip("op-1"), "plate", "op-1/plate-1");
    assertThat(plate.points().stream().mapToDouble(Mark.Point::x).min().orElseThrow())
        .isEqualTo(190 + 3 * 201, within(CLOSE));
    assertThat(plate.points().stream().mapToDouble(Mark.Point::x).max().orElseThrow())
        .isEqualTo(190 + 3 * 329, within(CLOSE));
    // Thickness of the family, 3.6 mm, on a lateral plate seen edge-on.
    Mark.Point top = plate.points().get(0);
    Mark.Point bottom = plate.points().get(plate.points().size() - 1);
    assertThat(bottom.y() - top.y()).isEqualTo(3 * 3.6, within(CLOSE));
  }

  @Test
  void a_bolt_is_as_thick_as_recorded_and_crosses_the_bone() {
    // 5 mm at 30 mm: from 272.5 to 287.5 units.
    Mark.Outline bolt = outline(strip("op-3"), "bolt", "op-3/nail-1 bolt 1");
    assertThat(bolt.points().stream().mapToDouble(Mark.Point::x).min().orElseThrow())
        .isEqualTo(272.5, within(CLOSE));
    assertThat(bolt.points().stream().mapToDouble(Mark.Point::x).max().orElseThrow())
        .isEqualTo(287.5, within(CLOSE));
  }

  @Test
  void a_nail_is_as_long_and_as_thick_as_recorded() {
    // 320 mm from the near end, 9 mm thick.
    Mark.Outline nail = outline(strip("op-3"), "nail", "op-3/nail-1");
    double left = nail.points().stream().mapToDouble(Mark.Point::x).min().orElseThrow();
    double right = nail.points().stream().mapToDouble(Mark.Point::x).max().orElseThrow();
    double top = nail.points().stream().mapToDouble(Mark.Point::y).min().orElseThrow();
    double bottom = nail.points().stream().mapToDouble(Mark.Point::y).max().orElseThrow();
    assertThat(left).isEqualTo(190, within(CLOSE));
    assertThat(right - left).isEqualTo(960, within(CLOSE));
    assertThat(bottom - top).isEqualTo(27, within(CLOSE));
  }

  @Test
  void a_screw_ends_where_its_length_does() {
    // plan-a hole 1: 34 mm long, square to the bone, so 102 units from the top of the plate.
    Mark.Outline shaft =
        CaseDrawings.flat(CaseDrawings.thing(strip("plan-a"), "screw", "stage-1/plate-1 hole 1"))
            .filter(Mark.Outline.class::isInstance)
            .map(Mark.Outline.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(shaft.points().get(3).y() - shaft.points().get(0).y()).isEqualTo(102, within(CLOSE));
  }

  @Test
  void the_scale_bar_is_fifty_millimetres() {
    double length =
        CaseDrawings.flat(CaseDrawings.thing(strip("op-1"), "scale-bar", ""))
            .filter(Mark.Box.class::isInstance)
            .mapToDouble(box -> ((Mark.Box) box).width())
            .sum();
    assertThat(length).isEqualTo(150, within(CLOSE));
  }

  @Test
  void on_the_map_a_quarter_of_a_turn_is_a_quarter_of_the_circumference() {
    // Outer diameter at the zone 29 mm (section at 265 mm): around it π × 29 × 3 = 273.3 units.
    Mark.Disc entry = disc(map("op-1"), "plate-screw", "op-1/plate-1 hole 4", 0);
    Mark.Disc exit = disc(map("op-1"), "plate-screw", "op-1/plate-1 hole 4", 1);
    assertThat(entry.x()).isEqualTo(190 + 3 * 257, within(CLOSE));
    assertThat(exit.x()).isEqualTo(entry.x(), within(CLOSE));
    assertThat(exit.y() - entry.y()).isEqualTo(Math.PI * 29 * 3 / 2, within(CLOSE));
    assertThat(entry.rx()).isEqualTo(4.5 * 3 / 2, within(CLOSE));
  }

  @Test
  void on_the_map_old_tracks_lie_on_the_surface_that_they_entered() {
    // Old lateral screws and a new anterolateral plate: an eighth of a turn apart.
    Mark.Disc old = disc(map("plan-a"), "old-track", "op-1/plate-1 hole 1", 0);
    Mark.Disc fresh = disc(map("plan-a"), "plate-screw", "stage-1/plate-1 hole 1", 0);
    assertThat(old.y() - fresh.y()).isEqualTo(Math.PI * 29 * 3 / 8, within(CLOSE));
  }

  private static double middle(Mark.Box box) {
    return box.x() + box.width() / 2;
  }

  private static Mark.Box box(Picture picture, String kind, String name) {
    return (Mark.Box) CaseDrawings.thing(picture, kind, name).marks().get(0);
  }

  private static Mark.Outline outline(Picture picture, String kind, String name) {
    return (Mark.Outline) CaseDrawings.thing(picture, kind, name).marks().get(0);
  }

  private static Mark.Disc disc(Picture picture, String kind, String name, int place) {
    return CaseDrawings.thing(picture, kind, name).marks().stream()
        .filter(Mark.Disc.class::isInstance)
        .map(Mark.Disc.class::cast)
        .toList()
        .get(place);
  }
}
