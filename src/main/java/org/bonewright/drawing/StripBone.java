package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;

/** The bone itself in the side strip: outline, canal, zone. */
final class StripBone {

  private static final double ROUND = 5;

  /** The zone is never narrower than this on the sheet, so that it is seen. */
  private static final double LEAST = 2.4;

  private final Profile profile;
  private final double from;
  private final double to;
  private final boolean wholeBone;

  /**
   * Make one.
   *
   * @param wholeBone whether it is drawn from end to end; else it goes on beyond
   */
  StripBone(Profile profile, double from, double to, boolean wholeBone) {
    this.profile = profile;
    this.from = from;
    this.to = to;
    this.wholeBone = wholeBone;
  }

  /** Return the tube; beyond the measured sections its outline is dashed. */
  Mark tube(List<Section> sections) {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Outline(
            ring(from, to, this::half), true, Ink.BONE.withoutStroke(Ink.BONE.fill())));
    List<Mark.Point> canal = ring(from, to, this::canal);
    marks.add(new Mark.Outline(canal, true, Ink.CANAL.withoutStroke(Ink.CANAL.fill())));
    List<Double> canals = levels(sections, Section::canalMm);
    edges(marks, canals, this::canal, Ink.CANAL, Ink.CANAL_GUESSED);
    edges(marks, levels(sections, Section::outerMm), this::half, Ink.BONE, Ink.BONE_GUESSED);
    if (wholeBone) {
      marks.add(end(from));
      marks.add(end(to));
    }
    return new Mark.Thing("bone", "", "the bone; dashed where its width is not measured", marks);
  }

  private static List<Double> levels(
      List<Section> sections, Function<Section, Optional<Quantity>> width) {
    return sections.stream()
        .filter(section -> width.apply(section).isPresent())
        .map(section -> section.atMm().middle())
        .sorted()
        .toList();
  }

  private double canal(double level) {
    return Math.max(0.2, half(level) - profile.wall(level));
  }

  private double half(double level) {
    double end = Math.min(level - from, to - level);
    double radius = profile.radius(level);
    return wholeBone && end < ROUND ? radius - (ROUND - end) * 0.5 : radius;
  }

  private List<Mark.Point> ring(double a, double b, DoubleUnaryOperator half) {
    List<Mark.Point> points = new ArrayList<>();
    List<Double> levels = Profile.levels(a, b);
    levels.forEach(
        l ->
            points.add(
                new Mark.Point(profile.x(l), profile.y(Math.max(0.2, half.applyAsDouble(l))))));
    for (int i = levels.size() - 1; i >= 0; i--) {
      double l = levels.get(i);
      points.add(new Mark.Point(profile.x(l), profile.y(-Math.max(0.2, half.applyAsDouble(l)))));
    }
    return points;
  }

  /** Add both edges: one ink between the first and the last measured level, another beyond. */
  private void edges(
      List<Mark> marks, List<Double> measured, DoubleUnaryOperator half, Ink sure, Ink guessed) {
    double known = measured.isEmpty() ? from : Math.max(from, measured.get(0));
    double last = measured.isEmpty() ? from : Math.min(to, measured.get(measured.size() - 1));
    edges(marks, from, known, half, guessed);
    edges(marks, known, last, half, sure);
    edges(marks, last, to, half, guessed);
  }

  private void edges(List<Mark> marks, double a, double b, DoubleUnaryOperator half, Ink ink) {
    if (b - a <= 0) {
      return;
    }
    for (int sign : new int[] {1, -1}) {
      marks.add(
          new Mark.Outline(
              Profile.levels(a, b).stream()
                  .map(l -> new Mark.Point(profile.x(l), profile.y(sign * half.applyAsDouble(l))))
                  .toList(),
              false,
              ink));
    }
  }

  private Mark end(double level) {
    double half = half(level);
    return Mark.Outline.line(
        Ink.BONE_GUESSED, profile.x(level), profile.y(half), profile.x(level), profile.y(-half));
  }

  /** Return the zone: hatched where it certainly is, a dotted outline where it may be. */
  Optional<Mark> zone(FractureZone zone) {
    if (zone.centre().isEmpty()) {
      return Optional.empty();
    }
    Dimension centre = zone.centre().get();
    double reach = profile.radius(centre.middle()) + 2;
    List<Mark> marks = new ArrayList<>();
    if (zone.length().isEmpty()) {
      marks.add(
          new Mark.Box(
              profile.x(centre.middle()) - LEAST / 2,
              profile.y(reach),
              LEAST,
              profile.scale().units(2 * reach),
              Ink.ZONE));
      return Optional.of(new Mark.Thing("zone", "", "zone, length not recorded", marks));
    }
    Dimension length = zone.length().get();
    double outerFrom = centre.min() - length.max() / 2;
    double outerTo = centre.max() + length.max() / 2;
    double innerFrom = centre.max() - length.min() / 2;
    double innerTo = centre.min() + length.min() / 2;
    if (innerTo >= innerFrom) {
      double left = profile.x(innerFrom);
      double width = profile.x(innerTo) - left;
      double grown = Math.max(width, LEAST);
      marks.add(
          new Mark.Box(
              left - (grown - width) / 2,
              profile.y(reach),
              grown,
              profile.scale().units(2 * reach),
              Ink.ZONE));
    }
    if (outerTo - outerFrom > innerTo - innerFrom + 0.1) {
      marks.add(
          new Mark.Box(
              profile.x(outerFrom),
              profile.y(reach),
              profile.scale().units(outerTo - outerFrom),
              profile.scale().units(2 * reach),
              Ink.ZONE_VAGUE));
    }
    return Optional.of(new Mark.Thing("zone", "", "zone: broken or not united", marks));
  }
}
