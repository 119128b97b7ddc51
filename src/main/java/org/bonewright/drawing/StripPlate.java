package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.drawing.words.Standing;

/** A plate in the side strip, with its holes and screws. */
final class StripPlate {

  private final Profile profile;
  private final StripScrew screws;
  private final Standing standing;
  private final Standing.Laid laid;
  private final PlateForm form;

  StripPlate(Profile profile, Standing standing, Standing.Laid laid) {
    this.profile = profile;
    this.screws = new StripScrew(profile);
    this.standing = standing;
    this.laid = laid;
    this.form = new PlateForm(standing, laid);
  }

  private Direction surface() {
    return laid.placed().plate().surface().orElse(profile.up());
  }

  private double standOff() {
    return laid.placed().plate().standOffMm().map(Quantity::middle).orElse(0.0);
  }

  private double outside(double level) {
    return profile.radius(level) + standOff() + form.thickness();
  }

  /** Return the plate with holes and screws; nothing where its level is not known. */
  List<Mark> marks() {
    Optional<PlateForm.Span> span = form.span();
    if (span.isEmpty()) {
      return List.of();
    }
    boolean behind = profile.depth(surface()) < -0.3 && Math.abs(profile.rise(surface())) < 0.9;
    Ink ink = behind ? Ink.PLATE_BEHIND : laid.metal().own() ? Ink.PLATE : Ink.PLATE_OLD;
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Thing(
            "plate",
            laid.metal().path(),
            laid.metal().path(),
            List.of(new Mark.Outline(outline(span.get()), true, ink))));
    standing.eachHole(laid, (level, hole) -> marks.add(hole(hole, level.middle(), behind)));
    standing.eachHole(
        laid,
        (level, hole) ->
            laid.placed()
                .screwIn(hole)
                .ifPresent(row -> marks.add(screw(hole, level.middle(), row))));
    laid.broken()
        .flatMap(hole -> standing.level(laid, hole))
        .ifPresent(level -> marks.add(crack(level)));
    return marks;
  }

  private Mark crack(Dimension level) {
    double[] edges = edges(level.middle());
    double top = Math.min(profile.y(edges[0]), profile.y(edges[1]));
    double bottom = Math.max(profile.y(edges[0]), profile.y(edges[1]));
    return new Mark.Thing(
        "break",
        laid.metal().path(),
        "broken here",
        Key.zigzag(profile.x(level.middle()), top - 8, bottom + 4));
  }

  private List<Mark.Point> outline(PlateForm.Span span) {
    List<Double> levels = Profile.levels(span.from(), span.to());
    List<Mark.Point> points = new ArrayList<>();
    levels.forEach(l -> points.add(new Mark.Point(profile.x(l), profile.y(edges(l)[0]))));
    for (int i = levels.size() - 1; i >= 0; i--) {
      double l = levels.get(i);
      points.add(new Mark.Point(profile.x(l), profile.y(edges(l)[1])));
    }
    return points;
  }

  /** Return the two edges of the plate in mm above the axis, as projected. */
  private double[] edges(double level) {
    double rise = profile.rise(surface());
    double across = Math.sqrt(Math.max(0, 1 - rise * rise));
    double centre = (outside(level) - form.thickness() / 2) * rise;
    double half = form.width() / 2 * across + form.thickness() / 2 * Math.abs(rise);
    return new double[] {centre + half, centre - half};
  }

  private Mark hole(int hole, double level, boolean behind) {
    double rise = profile.rise(surface());
    double across = Math.sqrt(Math.max(0, 1 - rise * rise));
    double half = profile.scale().units(form.screw() * 1.15) / 2;
    double[] edges = edges(level);
    double middle = profile.y((edges[0] + edges[1]) / 2);
    double top = Math.min(profile.y(edges[0]), profile.y(edges[1]));
    double height = Math.abs(profile.y(edges[0]) - profile.y(edges[1]));
    Ink ink = behind ? Ink.PLATE_BEHIND : Ink.HOLE;
    List<Mark> marks = new ArrayList<>();
    if (across < 0.4) {
      marks.add(new Mark.Box(profile.x(level) - half, top, 2 * half, height, ink));
    } else {
      marks.add(new Mark.Disc(profile.x(level), middle, half, Math.max(1.5, half * across), ink));
    }
    boolean plugged = laid.placed().plate().plugged().contains(hole);
    if (plugged) {
      marks.add(
          Mark.Outline.line(
              Ink.HOLE, profile.x(level) - half, top, profile.x(level) + half, top + height));
      marks.add(
          Mark.Outline.line(
              Ink.HOLE, profile.x(level) - half, top + height, profile.x(level) + half, top));
    }
    String what = laid.placed().isFilled(hole) ? ", filled" : plugged ? ", plugged" : ", open";
    return new Mark.Thing("hole", laid.holeName(hole), laid.holeName(hole) + what, marks);
  }

  private Mark screw(int hole, double level, ScrewRow row) {
    double radius = profile.radius(level);
    double outside = outside(level);
    double diameter = row.diameterMm().map(Quantity::middle).orElse(form.screw());
    double tilt = row.tiltDeg().map(Quantity::middle).orElse(0.0);
    Track.Reach reach = reach(hole);
    double tip =
        row.lengthMm()
            .map(length -> outside - length.middle() * Math.cos(Math.toRadians(tilt)))
            .or(() -> row.tipBeyondMm().map(beyond -> -radius - beyond.middle()))
            .orElse(
                reach == Track.Reach.NEAR_CORTEX ? radius - profile.wall(level) - 1 : -radius - 1);
    StripScrew.Rod rod = new StripScrew.Rod(level, surface(), tilt, outside, tip, diameter);
    List<Mark> marks = new ArrayList<>();
    boolean guessed = reach == Track.Reach.UNSURE && row.lengthMm().isEmpty();
    if (guessed && !screws.isEndOn(surface())) {
      double sure = radius - profile.wall(level);
      marks.add(screws.part(rod, outside, sure, StripScrew.ink(row.type())));
      marks.add(screws.part(rod, sure, tip, Ink.UNSURE));
    } else {
      marks.add(screws.rod(rod, StripScrew.ink(row.type())));
    }
    marks.addAll(screws.head(rod, row.type(), form.thickness()));
    return new Mark.Thing("screw", laid.holeName(hole), "screw in " + laid.holeName(hole), marks);
  }

  private Track.Reach reach(int hole) {
    return standing.tracks().stream()
        .map(drilled -> drilled.old().track())
        .filter(track -> track.name().equals(laid.holeName(hole)))
        .map(Track::reach)
        .findFirst()
        .orElse(Track.Reach.UNSURE);
  }
}
