package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.ledger.Corridor;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;
import org.bonewright.drawing.words.FreeBone;
import org.bonewright.drawing.words.FreeText;
import org.bonewright.drawing.words.InWords;
import org.bonewright.drawing.words.Standing;

/** What covers the unrolled surface: zone, free corridors, plates, struts, loops. */
final class MapSurface {

  private final Unrolled map;
  private final Standing standing;
  private final FreeBone free;
  private final Set<Key> used = EnumSet.noneOf(Key.class);

  MapSurface(Unrolled map, Standing standing, FreeBone free) {
    this.map = map;
    this.standing = standing;
    this.free = free;
  }

  Set<Key> used() {
    return used;
  }

  /** Return what is free on a surface. */
  List<Mark> corridors(Direction surface) {
    List<Mark> marks = new ArrayList<>();
    double half = map.height() / 8 * 0.36;
    for (Corridor corridor : free.on(surface)) {
      used.add(Key.FREE);
      marks.add(
          new Mark.Box(
              map.scale().x(corridor.from()),
              map.y(surface) - half,
              map.scale().units(corridor.to() - corridor.from()),
              2 * half,
              Ink.FREE));
    }
    return marks.isEmpty()
        ? List.of()
        : List.of(new Mark.Thing("corridor", "", new FreeText(free, standing).on(surface), marks));
  }

  /** Return the zone, all round the bone. */
  Optional<Mark> zone() {
    FractureZone zone = standing.zone();
    if (zone.centre().isEmpty()) {
      return Optional.empty();
    }
    used.add(Key.ZONE);
    Dimension centre = zone.centre().get();
    double most = zone.length().map(Dimension::max).orElse(0.0) / 2;
    double least = zone.length().map(Dimension::min).orElse(0.0) / 2;
    double from = centre.max() - least;
    double to = centre.min() + least;
    List<Mark> marks = new ArrayList<>();
    if (to >= from) {
      double width = Math.max(2.4, map.scale().units(to - from));
      marks.add(
          new Mark.Box(
              map.scale().x((from + to) / 2) - width / 2,
              map.top(),
              width,
              map.height(),
              Ink.ZONE));
    }
    double outerFrom = centre.min() - most;
    double outerTo = centre.max() + most;
    if (outerTo - outerFrom > to - from + 0.1) {
      marks.add(
          new Mark.Box(
              map.scale().x(outerFrom),
              map.top(),
              map.scale().units(outerTo - outerFrom),
              map.height(),
              Ink.ZONE_VAGUE));
    }
    return Optional.of(new Mark.Thing("zone", "", new InWords(standing).zone(), marks));
  }

  /** Return the room that open holes take, which no label should cover. */
  List<TextBox> openHoles() {
    List<TextBox> rooms = new ArrayList<>();
    for (Standing.Laid laid : standing.plates()) {
      double r = map.scale().units(new PlateForm(standing, laid).screw()) / 2;
      laid.placed()
          .plate()
          .surface()
          .ifPresent(
              surface ->
                  laid.placed()
                      .allHoles()
                      .filter(hole -> !laid.placed().isFilled(hole))
                      .mapToObj(hole -> standing.level(laid, hole))
                      .flatMap(Optional::stream)
                      .forEach(level -> rooms.add(room(level, surface, r))));
    }
    return rooms;
  }

  private TextBox room(Dimension level, Direction surface, double r) {
    double x = map.x(level.middle());
    double y = map.y(surface);
    return new TextBox(x - r, y - r, x + r, y + r);
  }

  /** Return plates, onlay struts and loops as they cover the surface. */
  List<Mark> footprints() {
    List<Mark> inside = new ArrayList<>();
    for (Standing.Laid laid : standing.plates()) {
      PlateForm form = new PlateForm(standing, laid);
      Optional<Direction> surface = laid.placed().plate().surface();
      if (surface.isPresent() && form.span().isPresent()) {
        PlateForm.Span span = form.span().get();
        inside.add(
            strip(
                "plate",
                laid.metal().path(),
                surface.get(),
                new double[] {span.from(), span.to(), form.width()},
                Ink.FOOTPRINT));
        used.add(Key.FOOTPRINT);
        holes(laid, form, surface.get(), inside);
        crack(laid, form, surface.get()).ifPresent(inside::add);
      }
    }
    for (Standing.Metal metal : standing.metal()) {
      if (metal.implant() instanceof Strut strut && strut.where() == Strut.Where.ONLAY) {
        Optional<Dimension> from = standing.level(strut.fromMm(), metal.round());
        Optional<Dimension> to = standing.level(strut.toMm(), metal.round());
        if (strut.surface().isPresent() && from.isPresent() && to.isPresent()) {
          used.add(Key.STRUT);
          double[] place = {
            from.get().middle(),
            to.get().middle(),
            strut.outerMm().map(Quantity::middle).orElse(10.0)
          };
          inside.add(strip("strut", metal.path(), strut.surface().get(), place, Ink.STRUT));
        }
      } else if (metal.implant() instanceof Cerclage cerclage) {
        loops(metal, cerclage).ifPresent(inside::add);
      }
    }
    return inside;
  }

  private Mark strip(String kind, String path, Direction surface, double[] place, Ink ink) {
    double half = map.scale().units(place[2]) / 2;
    return new Mark.Thing(
        kind,
        path,
        path,
        map.around(
            map.y(surface),
            half,
            y ->
                List.of(
                    new Mark.Box(
                        map.x(place[0]),
                        y - half,
                        map.scale().units(place[1] - place[0]),
                        2 * half,
                        ink))));
  }

  private Optional<Mark> crack(Standing.Laid laid, PlateForm form, Direction surface) {
    double half = map.scale().units(form.width()) / 2 + 4;
    return laid.broken()
        .flatMap(hole -> standing.level(laid, hole))
        .map(
            level -> {
              used.add(Key.BROKEN);
              return new Mark.Thing(
                  "break",
                  laid.metal().path(),
                  "broken here",
                  map.around(
                      map.y(surface),
                      half,
                      y -> Key.zigzag(map.x(level.middle()), y - half, y + half)));
            });
  }

  private void holes(Standing.Laid laid, PlateForm form, Direction surface, List<Mark> inside) {
    double r = map.scale().units(form.screw() * 1.15) / 2;
    standing.eachHole(
        laid,
        (level, hole) ->
            inside.add(
                new Mark.Thing(
                    "hole",
                    laid.holeName(hole),
                    laid.holeName(hole),
                    map.around(
                        map.y(surface),
                        r,
                        y -> List.of(new Mark.Disc(map.x(level.middle()), y, r, r, Ink.HOLE))))));
    if (laid.placed().allHoles().anyMatch(hole -> !laid.placed().isFilled(hole))) {
      used.add(Key.OPEN);
    }
  }

  private Optional<Mark> loops(Standing.Metal metal, Cerclage cerclage) {
    List<Mark> marks = new ArrayList<>();
    cerclage
        .atMm()
        .forEach(
            at ->
                standing
                    .level(at, metal.round())
                    .ifPresent(
                        level -> {
                          double x = map.x(level.middle());
                          for (int side : new int[] {-2, 2}) {
                            marks.add(
                                Mark.Outline.line(
                                    Ink.CERCLAGE, x + side, map.top(), x + side, map.bottom()));
                          }
                        }));
    if (marks.isEmpty()) {
      return Optional.empty();
    }
    used.add(Key.CERCLAGE);
    return Optional.of(new Mark.Thing("cerclage", metal.path(), metal.path(), marks));
  }
}
