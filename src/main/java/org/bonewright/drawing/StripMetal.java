package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.OtherImplant;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Words;

/** Everything but plates in the side strip: nails, bolts, pins, lag screws, struts, old tracks. */
final class StripMetal {

  /** How far a fixator's bar is drawn from the bone, mm; its real distance is not recorded. */
  static final double BAR = 32;

  private static final double BAR_APART = 9;

  private final Profile profile;
  private final StripScrew rods;
  private final Standing standing;

  StripMetal(Profile profile, Standing standing) {
    this.profile = profile;
    this.rods = new StripScrew(profile);
    this.standing = standing;
  }

  /** Return a nail, from where to where {@link NailSpan} puts it. */
  Optional<Mark> nail(Standing.Metal metal, NailSpan span) {
    double half = ((Nail) metal.implant()).outerMm().map(Quantity::middle).orElse(9.0) / 2;
    double left = profile.x(span.from());
    double right = profile.x(span.to());
    double tip = Math.min(8, (right - left) / 4);
    double top = profile.y(half);
    double bottom = profile.y(-half);
    if (span.goesOn()) {
      // Its ends are not known: no line closes it.
      return Optional.of(
          new Mark.Thing(
              "nail",
              metal.path(),
              metal.path() + ", its ends not shown",
              List.of(
                  new Mark.Box(left, top, right - left, bottom - top, Ink.NAIL),
                  Mark.Outline.line(Ink.GOES_ON, left, top - 2, left, bottom + 2),
                  Mark.Outline.line(Ink.GOES_ON, right, top - 2, right, bottom + 2))));
    }
    boolean farTip = span.entersNear();
    List<Mark.Point> points =
        farTip
            ? List.of(
                new Mark.Point(left, top),
                new Mark.Point(right - tip, top),
                new Mark.Point(right, profile.y(0)),
                new Mark.Point(right - tip, bottom),
                new Mark.Point(left, bottom))
            : List.of(
                new Mark.Point(left, profile.y(0)),
                new Mark.Point(left + tip, top),
                new Mark.Point(right, top),
                new Mark.Point(right, bottom),
                new Mark.Point(left + tip, bottom));
    return Optional.of(
        new Mark.Thing(
            "nail", metal.path(), metal.path(), List.of(new Mark.Outline(points, true, Ink.NAIL))));
  }

  /** Return a bolt, pin or lag screw that is in the bone, or an empty old track. */
  Optional<Mark> track(Standing.Drilled drilled) {
    Track track = drilled.old().track();
    if (track.level().isEmpty()) {
      return Optional.empty();
    }
    double level = track.level().get().middle();
    Direction direction = track.direction().orElse(profile.up());
    double radius = profile.radius(level);
    boolean filled = drilled.old().filled();
    double out = !filled ? radius : outside(track, radius);
    double tip =
        track.reach() == Track.Reach.NEAR_CORTEX
            ? radius - profile.wall(level)
            : filled ? -radius - 1.5 : -radius;
    StripScrew.Rod rod =
        new StripScrew.Rod(level, direction, track.tilt(), out, tip, track.diameter().middle());
    String kind = filled ? Words.written(track.kind()) : "old-track";
    return Optional.of(new Mark.Thing(kind, track.name(), says(drilled), rod(drilled, rod)));
  }

  private double outside(Track track, double radius) {
    return switch (track.kind()) {
      case PIN -> bars(pins(track.implant())) + BAR_APART + 4;
      case BOLT -> radius + 3;
      default -> radius + 1.5;
    };
  }

  private List<Mark> rod(Standing.Drilled drilled, StripScrew.Rod rod) {
    Track track = drilled.old().track();
    if (!drilled.old().filled()) {
      return List.of(rods.rod(rod, Ink.OLD));
    }
    if (track.direction().isEmpty()) {
      return List.of(rods.rod(rod, Ink.UNSURE));
    }
    return switch (track.kind()) {
      case BOLT -> List.of(rods.rod(rod, Ink.BOLT));
      case PIN -> List.of(rods.rod(rod, Ink.PIN));
      default -> lag(rod);
    };
  }

  /** A lag screw holds by its thread beyond the line: smooth first, then threaded. */
  private List<Mark> lag(StripScrew.Rod rod) {
    List<Mark> marks = new ArrayList<>();
    if (rods.isEndOn(rod.direction())) {
      marks.add(rods.rod(rod, Ink.SCREW));
    } else {
      marks.add(rods.part(rod, rod.outside(), 0, Ink.SMOOTH));
      marks.add(rods.part(rod, 0, rod.tip(), Ink.SCREW));
    }
    return marks;
  }

  private static String says(Standing.Drilled drilled) {
    return (drilled.old().filled() ? "" : "old track ") + drilled.old().track().name();
  }

  private List<Track> pins(String implant) {
    return standing.tracks().stream()
        .filter(d -> d.old().filled() && d.old().track().implant().equals(implant))
        .map(d -> d.old().track())
        .filter(track -> track.level().isPresent())
        .toList();
  }

  /** Return how far from the axis the inner bar is drawn: the same for all pins. */
  private double bars(List<Track> pins) {
    return BAR
        + pins.stream()
            .mapToDouble(pin -> profile.radius(pin.level().orElseThrow().middle()))
            .max()
            .orElse(0);
  }

  /** Return the bars of a fixator: drawn outside, at a distance that is ours. */
  List<Mark> frame(Standing.Metal metal) {
    ExternalFixator fixator = (ExternalFixator) metal.implant();
    List<Track> pins = pins(metal.path());
    if (pins.isEmpty()) {
      return List.of();
    }
    double from = pins.stream().mapToDouble(p -> p.level().orElseThrow().middle()).min().orElse(0);
    double to = pins.stream().mapToDouble(p -> p.level().orElseThrow().middle()).max().orElse(0);
    double rise = profile.rise(pins.get(0).direction().orElse(profile.up()));
    double sign = rise < -0.25 ? -1 : 1;
    List<Mark> bars = new ArrayList<>();
    if (fixator.frame().equals(Optional.of(ExternalFixator.Frame.RING))) {
      for (Track pin : pins) {
        double x = profile.x(pin.level().orElseThrow().middle());
        double reach = bars(pins);
        bars.add(
            new Mark.Box(
                x - 3,
                profile.y(reach),
                6,
                profile.scale().units(2 * reach),
                Ink.BAR.withoutFill()));
      }
    }
    for (int bar = 0; bar < Math.min(2, fixator.bars().orElse(1)); bar++) {
      double r = bars(pins) + bar * BAR_APART;
      double top = profile.y(sign * r) - 4;
      bars.add(
          new Mark.Box(
              profile.x(from) - 16, top, profile.x(to) - profile.x(from) + 32, 8, Ink.BAR));
    }
    return List.of(new Mark.Thing("frame", metal.path(), metal.path() + ", bars", bars));
  }

  /** Return a strut; nothing where its level is not known. */
  Optional<Mark> strut(Standing.Metal metal) {
    Strut strut = (Strut) metal.implant();
    Optional<Double> from = standing.level(strut.fromMm(), metal.round()).map(d -> d.middle());
    Optional<Double> to = standing.level(strut.toMm(), metal.round()).map(d -> d.middle());
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    double wide = strut.outerMm().map(Quantity::middle).orElse(10.0);
    double inner = -wide / 2;
    double outer = wide / 2;
    if (strut.where() == Strut.Where.ONLAY) {
      double thick = strut.wallMm().map(Quantity::middle).orElse(4.0);
      Direction surface =
          strut.surface().orElse(new Direction((profile.up().degrees() + 180) % 360));
      double rise = profile.rise(surface);
      double across = Math.sqrt(Math.max(0, 1 - rise * rise));
      double centre = (profile.radius((from.get() + to.get()) / 2) + thick / 2) * rise;
      double half = wide / 2 * across + thick / 2 * Math.abs(rise);
      inner = centre - half;
      outer = centre + half;
    }
    Mark box =
        new Mark.Box(
            profile.x(from.get()),
            profile.y(outer),
            profile.x(to.get()) - profile.x(from.get()),
            profile.scale().units(outer - inner),
            Ink.STRUT);
    return Optional.of(new Mark.Thing("strut", metal.path(), metal.path(), List.of(box)));
  }

  /** Return the loops of a cerclage. */
  List<Mark> cerclage(Standing.Metal metal) {
    List<Mark> loops = new ArrayList<>();
    for (Quantity at : ((Cerclage) metal.implant()).atMm()) {
      standing
          .level(at, metal.round())
          .ifPresent(
              level -> {
                double x = profile.x(level.middle());
                double reach = profile.radius(level.middle()) + 1;
                for (int side : new int[] {-2, 2}) {
                  loops.add(
                      Mark.Outline.line(
                          Ink.CERCLAGE, x + side, profile.y(reach), x + side, profile.y(-reach)));
                }
              });
    }
    return loops.isEmpty()
        ? List.of()
        : List.of(new Mark.Thing("cerclage", metal.path(), metal.path(), loops));
  }

  /** Return an implant that is not part of the history. */
  Optional<Mark> other(OtherImplant implant) {
    if (!standing.levels().fromLandmark()) {
      return Optional.empty();
    }
    double from = implant.fromMm().middle();
    double to = implant.toMm().middle();
    double half = profile.radius((from + to) / 2) * 0.6;
    Mark box =
        new Mark.Box(
            profile.x(from),
            profile.y(half),
            profile.x(to) - profile.x(from),
            profile.scale().units(2 * half),
            Ink.OTHER);
    return Optional.of(new Mark.Thing("other", "", implant.what(), List.of(box)));
  }

  /** Return the pieces left behind, in the bone. */
  List<Mark> pieces() {
    List<Mark> marks = new ArrayList<>();
    standing.eachPiece(
        (piece, level) ->
            marks.add(
                new Mark.Thing(
                    "piece",
                    piece.path(),
                    piece.path() + ", " + piece.piece().orElse(""),
                    piece(level))));
    return marks;
  }

  /** A piece stands at the axis, since its depth is not recorded, with a bar for its range. */
  private List<Mark> piece(Dimension level) {
    List<Mark> marks = new ArrayList<>();
    if (profile.scale().units(level.max() - level.min()) > 3) {
      marks.addAll(Key.whisker(profile.x(level.min()), profile.x(level.max()), profile.y(0)));
    }
    marks.addAll(Key.PIECE.at(profile.x(level.middle()), profile.y(0)));
    return marks;
  }
}
