package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Words;

/** The openings of all tracks on the unrolled surface. */
final class MapTracks {

  private static final int ARC = 14;

  private final Unrolled map;
  private final Standing standing;
  private final LabelPlacer labels;
  private final Set<Key> used = EnumSet.noneOf(Key.class);

  MapTracks(Unrolled map, Standing standing, LabelPlacer labels) {
    this.map = map;
    this.standing = standing;
    this.labels = labels;
  }

  Set<Key> used() {
    return used;
  }

  private double outer(Track track) {
    double level = track.level().map(Dimension::middle).orElse(0.0);
    return standing.levels().fromLandmark()
        ? standing.scene().bone().outerAt(level).middle()
        : standing.scene().bone().outerAtShaft().middle();
  }

  private List<Opening> openings(Track track) {
    return Opening.of(track, outer(track));
  }

  private double radius(Track track) {
    return map.scale().units(track.diameter().middle()) / 2;
  }

  /** Return the marks of all tracks, old ones first, and lay their labels. */
  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    List<Standing.Drilled> all = new ArrayList<>();
    standing.tracks().stream().filter(d -> !d.own()).forEach(all::add);
    standing.tracks().stream().filter(Standing.Drilled::own).forEach(all::add);
    for (Standing.Drilled drilled : all) {
      for (Opening opening : openings(drilled.old().track())) {
        labels.avoid(
            map.x(opening.level()), map.y(opening.direction()), radius(drilled.old().track()));
      }
    }
    for (Standing.Drilled drilled : all) {
      List<Mark> parts = new ArrayList<>();
      for (Opening opening : openings(drilled.old().track())) {
        parts.addAll(opening(drilled, opening));
      }
      if (!parts.isEmpty()) {
        marks.add(thing(drilled, parts));
      }
    }
    all.stream().filter(Standing.Drilled::own).forEach(d -> marks.addAll(overlaps(d)));
    return marks;
  }

  /** Lay the numbers; those of the subject's own screws first. */
  void label() {
    standing.tracks().stream().filter(Standing.Drilled::own).forEach(this::label);
    standing.tracks().stream().filter(d -> !d.own()).forEach(this::label);
  }

  static Mark.Thing thing(Standing.Drilled drilled, List<Mark> parts) {
    Track track = drilled.old().track();
    String kind = drilled.old().filled() ? Words.written(track.kind()) : "old-track";
    return new Mark.Thing(
        kind, track.name(), (drilled.own() ? "" : "old track ") + track.name(), parts);
  }

  private List<Mark> opening(Standing.Drilled drilled, Opening opening) {
    Track track = drilled.old().track();
    double r = radius(track);
    double x = map.x(opening.level());
    List<Mark> marks =
        new ArrayList<>(
            map.around(map.y(opening.direction()), r + 2, y -> sign(drilled, opening, x, y, r)));
    Dimension level = track.level().orElseThrow();
    if (opening.near() && map.scale().units(level.max() - level.min()) > 3) {
      used.add(Key.RANGE);
      marks.addAll(Key.whisker(map.x(level.min()), map.x(level.max()), map.y(opening.direction())));
    }
    return marks;
  }

  private List<Mark> sign(Standing.Drilled drilled, Opening opening, double x, double y, double r) {
    Track track = drilled.old().track();
    if (!drilled.own()) {
      used.add(Key.old(track.round()));
      List<Mark> old = new ArrayList<>();
      Ink ink = Ink.old(track.round());
      old.add(new Mark.Disc(x, y, r, r, opening.sure() ? ink : Ink.OLD));
      if (drilled.old().filled()) {
        used.add(Key.FILLED);
        old.add(new Mark.Disc(x, y, r * 0.35, r * 0.35, Ink.SOLID));
      }
      return old;
    }
    if (!opening.near()) {
      used.add(Key.EXIT);
      if (!opening.sure()) {
        used.add(Key.UNSURE);
      }
      double arm = r * 0.7;
      return List.of(
          new Mark.Disc(x, y, r, r, opening.sure() ? Ink.RING : Ink.UNSURE),
          Mark.Outline.line(Ink.RING, x - arm, y - arm, x + arm, y + arm),
          Mark.Outline.line(Ink.RING, x - arm, y + arm, x + arm, y - arm));
    }
    Key key = key(drilled);
    used.add(key);
    return List.of(entry(key, x, y, r));
  }

  /** Return the sign of a screw, bolt or pin that the subject put in. */
  Key key(Standing.Drilled drilled) {
    Track track = drilled.old().track();
    return switch (track.kind()) {
      case LOCKING_PLATE_SCREW -> Key.LOCKING;
      case BOLT -> Key.BOLT;
      case PIN -> Key.PIN;
      case LAG_SCREW -> Key.LAG;
      case PLATE_SCREW -> isCancellous(track) ? Key.CANCELLOUS : Key.CONVENTIONAL;
    };
  }

  private boolean isCancellous(Track track) {
    return standing.plates().stream()
        .filter(laid -> laid.metal().path().equals(track.implant()))
        .flatMap(
            laid ->
                laid.placed()
                    .allHoles()
                    .filter(hole -> laid.holeName(hole).equals(track.name()))
                    .mapToObj(hole -> laid.placed().screwIn(hole))
                    .flatMap(Optional::stream))
        .anyMatch(row -> row.type() == ScrewRow.Type.CANCELLOUS);
  }

  /** The signs of the rows, at their true diameter. */
  private static Mark entry(Key key, double x, double y, double r) {
    return switch (key) {
      case LOCKING -> new Mark.Box(x - r, y - r, 2 * r, 2 * r, Ink.SCREW_LOCKING);
      case BOLT -> new Mark.Disc(x, y, r, r, Ink.BOLT);
      case PIN -> polygon(Ink.PIN, x - r, y - r, x + r, y - r, x, y + r);
      case LAG -> polygon(Ink.SCREW, x, y - r, x + r, y, x, y + r, x - r, y);
      case CANCELLOUS -> new Mark.Disc(x, y, r, r, Ink.SCREW_COARSE);
      default -> new Mark.Disc(x, y, r, r, Ink.SCREW);
    };
  }

  private static Mark polygon(Ink ink, double... xy) {
    List<Mark.Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Mark.Point(xy[i], xy[i + 1]));
    }
    return new Mark.Outline(points, true, ink);
  }

  /** Return what the openings of a new screw share with those of old tracks. */
  private List<Mark> overlaps(Standing.Drilled drilled) {
    List<Mark> marks = new ArrayList<>();
    for (Opening mine : openings(drilled.old().track())) {
      if (!ThreadLeft.isTaken(drilled, mine.near())) {
        continue;
      }
      for (Standing.Drilled other : standing.tracks()) {
        if (other.own()) {
          continue;
        }
        for (Opening theirs : openings(other.old().track())) {
          lens(drilled.old().track(), mine, other.old().track(), theirs).ifPresent(marks::add);
        }
      }
    }
    return marks.isEmpty()
        ? List.of()
        : List.of(
            new Mark.Thing(
                "overlap", drilled.old().track().name(), "thread in an old track", marks));
  }

  private Optional<Mark> lens(Track a, Opening mine, Track b, Opening theirs) {
    double x = map.x(mine.level());
    double y = map.y(mine.direction());
    double dx = map.x(theirs.level()) - x;
    double dy = map.down(y, map.y(theirs.direction()));
    double r = radius(a);
    double q = radius(b);
    double apart = Math.hypot(dx, dy);
    if (apart >= r + q) {
      return Optional.empty();
    }
    used.add(Key.OVERLAP);
    if (apart <= Math.abs(r - q) + 1e-9) {
      boolean mineWithin = r <= q;
      return Optional.of(
          mineWithin
              ? new Mark.Disc(x, y, r, r, Ink.OVERLAP)
              : new Mark.Disc(x + dx, y + dy, q, q, Ink.OVERLAP));
    }
    double towards = Math.atan2(dy, dx);
    double alpha = Math.acos((apart * apart + r * r - q * q) / (2 * apart * r));
    double beta = Math.acos((apart * apart + q * q - r * r) / (2 * apart * q));
    List<Mark.Point> points = new ArrayList<>();
    arc(points, x, y, r, towards - alpha, towards + alpha);
    arc(points, x + dx, y + dy, q, towards + Math.PI - beta, towards + Math.PI + beta);
    return Optional.of(new Mark.Outline(points, true, Ink.OVERLAP));
  }

  private static void arc(
      List<Mark.Point> points, double x, double y, double r, double from, double to) {
    for (int i = 0; i <= ARC; i++) {
      double angle = from + (to - from) * i / ARC;
      points.add(new Mark.Point(x + r * Math.cos(angle), y + r * Math.sin(angle)));
    }
  }

  private void label(Standing.Drilled drilled) {
    Track track = drilled.old().track();
    for (Opening opening : openings(track)) {
      String number = StripRows.number(track);
      String name =
          number.isEmpty() ? track.name().substring(track.name().indexOf('/') + 1) : number;
      String text =
          ThreadLeft.isTaken(drilled, opening.near())
              ? name + ": " + ThreadLeft.in(drilled, opening.near())
              : name;
      labels.put(
          map.x(opening.level()),
          map.y(opening.direction()),
          radius(track)
              * (drilled.own() && track.kind() == Track.Kind.LOCKING_PLATE_SCREW ? 1.1 : 1),
          text,
          drilled.own() ? 11 : 9.5,
          drilled.own());
    }
  }
}
