package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Direction;
import org.bonewright.drawing.words.FreeBone;
import org.bonewright.drawing.words.FreeText;
import org.bonewright.drawing.words.InWords;
import org.bonewright.drawing.words.Levels;
import org.bonewright.drawing.words.Standing;
import org.bonewright.drawing.words.Surfaces;

/** Draws the outer surface unrolled: level across, direction around the bone down. */
final class CortexMap {

  private final Standing standing;
  private final Extent extent;
  private final Scale scale;
  private final Sheet sheet;
  private final FreeBone free;
  private final double outer;

  CortexMap(Standing standing) {
    this.standing = standing;
    this.extent = Extent.of(standing);
    this.scale = Scale.of(Sheet.LEFT, extent.from(), extent.to());
    this.sheet = new Sheet(scale);
    this.free = FreeBone.of(standing, standing.scene().subject().steps());
    Optional<Double> centre = standing.zone().centre().map(Dimension::middle);
    Dimension diameter =
        centre.isPresent() && standing.levels().fromLandmark()
            ? standing.scene().bone().outerAt(centre.get())
            : standing.scene().bone().outerAtShaft();
    this.outer = diameter.middle();
  }

  Picture picture() {
    String title = Captions.title(standing.scene().subject(), "Cortex map");
    sheet.heading(title, view() + "; " + Drawing.origin(standing), standing.scene().subject());
    double gridTop = sheet.y();
    Unrolled map = new Unrolled(scale, gridTop + 12, outer);
    MapTracks tracks = draw(map);
    double axis = map.bottom() + 10;
    Rows below = new Rows(scale, axis + 28);
    undirected(tracks).forEach(below::add);
    boolean rows = !below.marks().isEmpty();
    sheet.goTo(axis);
    sheet.axis(gridTop, rows ? below.bottom() : map.bottom());
    if (rows) {
      sheet.add(below.marks());
      sheet.uses(below.used());
      sheet.goTo(below.bottom());
    }
    notes();
    sheet.foot();
    return sheet.picture(
        Drawing.id(standing, View.MAP),
        title,
        Drawing.words(
            standing, title + ". " + view() + "; " + Drawing.origin(standing), sheet.notes()));
  }

  private String view() {
    return "near end left, outer surface unrolled; around the bone to scale for an outer diameter of "
        + Dimension.number(outer)
        + " mm";
  }

  private List<Standing.Drilled> undirected() {
    return standing.tracks().stream()
        .filter(d -> d.old().track().level().isPresent())
        .filter(d -> d.old().track().direction().isEmpty())
        .toList();
  }

  private MapTracks draw(Unrolled map) {
    List<Mark> inside = new ArrayList<>();
    inside.add(
        new Mark.Box(
            scale.x(extent.from()),
            map.top(),
            scale.units(extent.to() - extent.from()),
            map.height(),
            Ink.BONE.withoutStroke(Ink.BONE.fill())));
    MapSurface covers = new MapSurface(map, standing, free);
    for (Direction surface : Surfaces.all()) {
      inside.addAll(covers.corridors(surface));
    }
    for (Direction surface : Surfaces.all()) {
      double y = map.y(surface);
      inside.add(Mark.Outline.line(Ink.SURFACE, scale.left(), y, scale.right(), y));
    }
    covers.zone().ifPresent(inside::add);
    LabelPlacer labels =
        new LabelPlacer(
            new TextBox(scale.left() + 2, map.top() + 2, scale.right() - 2, map.bottom() - 2));
    covers.openHoles().forEach(labels::avoid);
    inside.addAll(covers.footprints());
    MapTracks tracks = new MapTracks(map, standing, labels);
    inside.addAll(tracks.marks());
    tracks.label();
    sheet.add(
        List.of(
            new Mark.Window(
                scale.left(),
                map.top(),
                scale.units(scale.to() - scale.from()),
                map.height(),
                inside),
            new Mark.Box(
                scale.left(),
                map.top(),
                scale.units(scale.to() - scale.from()),
                map.height(),
                Ink.FRAME)));
    sheet.add(labels.marks());
    sheet.uses(tracks.used());
    sheet.uses(covers.used());
    for (Direction surface : Surfaces.all()) {
      sheet.add(
          List.of(
              new Mark.Label(
                  scale.left() - 10,
                  map.y(surface) + 4,
                  standing.surfaces().name(surface),
                  10.5,
                  Mark.Anchor.END,
                  surface.degrees() % 90 == 0)));
    }
    ends(map);
    if (inside.stream().noneMatch(CortexMap::isPlaced) && isIncomplete()) {
      sheet.add(empty(map));
    }
    return tracks;
  }

  private static boolean isPlaced(Mark mark) {
    return mark instanceof Mark.Thing thing && !thing.kind().equals("zone");
  }

  private boolean isIncomplete() {
    return !undirected().isEmpty()
        || !new InWords(standing).unplaced().isEmpty()
        || !standing.plates().isEmpty();
  }

  /** An empty map must not pass for whole bone. */
  private List<Mark> empty(Unrolled map) {
    double x = (scale.left() + scale.right()) / 2;
    double y = (map.top() + map.bottom()) / 2;
    return List.of(
        new Mark.Box(x - 140, y - 26, 280, 50, Ink.SMOOTH),
        new Mark.Label(
            x, y - 6, "No metal or track can be placed here.", 12, Mark.Anchor.MIDDLE, true),
        new Mark.Label(
            x, y + 14, "That does not make the bone free.", 12, Mark.Anchor.MIDDLE, true));
  }

  private void ends(Unrolled map) {
    if (extent.whole()) {
      List<String> name = Captions.lines(Levels.nearEnd(standing.scene().boneName()), 9.5, 74);
      double y = (map.top() + map.bottom()) / 2 - 6 * name.size();
      for (int i = 0; i < name.size(); i++) {
        sheet.add(
            List.of(new Mark.Label(6, y + 12 * i, name.get(i), 9.5, Mark.Anchor.START, false)));
      }
    }
  }

  /** Tracks whose direction is not recorded stand in rows under the map, one for each implant. */
  private List<Rows.Row> undirected(MapTracks tracks) {
    Map<String, List<Rows.Entry>> byImplant = new LinkedHashMap<>();
    for (Standing.Drilled drilled : undirected()) {
      Track track = drilled.old().track();
      boolean stays = !drilled.own() && drilled.old().filled();
      byImplant
          .computeIfAbsent(track.implant(), i -> new ArrayList<>())
          .add(
              new Rows.Entry(
                  track.level().orElseThrow(),
                  drilled.own() ? tracks.key(drilled) : Key.old(track.round()),
                  StripRows.number(track),
                  stays ? List.of(Key.FILLED) : List.of(),
                  Optional.of(drilled)));
    }
    return byImplant.entrySet().stream()
        .map(entry -> new Rows.Row(entry.getKey(), "direction not recorded", entry.getValue()))
        .toList();
  }

  private void notes() {
    if (!undirected().isEmpty()) {
      sheet.note("Below the map: tracks that may lie anywhere round the bone at their level.");
    }
    ThreadLeft.sentences(standing).forEach(text -> sheet.note(text + "."));
    sheet.note(
        free.unknown()
            .map(why -> "Where plate screws would find fresh bone cannot be told: " + why + ".")
            .orElseGet(
                () ->
                    "Free for "
                        + free.screws()
                        + ", by the levels of their axes: "
                        + new FreeText(free, standing).line()
                        + ". "
                        + FreeText.LIMITS));
    Optional.of(new InWords(standing).unplaced())
        .filter(missing -> !missing.isEmpty())
        .ifPresent(
            missing ->
                sheet.note("Not drawn, level not known: " + String.join("; ", missing) + "."));
    for (Standing.Laid laid : standing.plates()) {
      if (laid.placed().plate().surface().isEmpty()) {
        sheet.note(laid.metal().path() + ": surface not recorded; not drawn on the map.");
      }
    }
  }
}
