package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ScrewRow;

/** Screws, bolts, pins and tracks in the side strip: rods that cross the bone. */
final class StripScrew {

  /** Below this rise a rod is seen end-on. */
  private static final double END_ON = 0.25;

  private final Profile profile;

  StripScrew(Profile profile) {
    this.profile = profile;
  }

  /**
   * A rod that enters at a level.
   *
   * @param level level of its entry in the near cortex, mm
   * @param direction where it enters
   * @param tilt degrees along the bone
   * @param outside how far it stands out of the bone on the entry side, mm from the axis
   * @param tip where it ends, mm from the axis, below zero beyond it
   * @param diameter mm
   */
  record Rod(
      double level,
      Direction direction,
      double tilt,
      double outside,
      double tip,
      double diameter) {}

  /** Return the rod in one ink. */
  Mark rod(Rod rod, Ink ink) {
    return part(rod, rod.outside(), rod.tip(), ink);
  }

  /** Return the part of a rod between two distances from the axis, counted on the entry side. */
  Mark part(Rod rod, double from, double to, Ink ink) {
    double rise = profile.rise(rod.direction());
    double half = profile.scale().units(rod.diameter()) / 2;
    if (Math.abs(rise) < END_ON) {
      double radius = profile.radius(rod.level());
      return new Mark.Disc(profile.x(rod.level()), profile.y(radius * rise), half, half, ink);
    }
    double a = x(rod, from);
    double b = x(rod, to);
    double top = profile.y(from * rise);
    double bottom = profile.y(to * rise);
    return new Mark.Outline(
        List.of(
            new Mark.Point(a - half, top),
            new Mark.Point(a + half, top),
            new Mark.Point(b + half, bottom),
            new Mark.Point(b - half, bottom)),
        true,
        ink);
  }

  private double x(Rod rod, double fromAxis) {
    double inwards = profile.radius(rod.level()) - fromAxis;
    return profile.x(rod.level() + inwards * Math.tan(Math.toRadians(rod.tilt())));
  }

  boolean isEndOn(Direction direction) {
    return Math.abs(profile.rise(direction)) < END_ON;
  }

  /** Return the head of a plate screw: round for a conventional one, a block for a locking one. */
  List<Mark> head(Rod rod, ScrewRow.Type type, double thickness) {
    double rise = profile.rise(rod.direction());
    double half = profile.scale().units(rod.diameter()) / 2;
    double x = x(rod, rod.outside());
    if (isEndOn(rod.direction())) {
      double y = profile.y(profile.radius(rod.level()) * rise);
      double wide = half * 1.5;
      return type == ScrewRow.Type.LOCKING
          ? List.of(new Mark.Box(x - wide, y - wide, 2 * wide, 2 * wide, Ink.SCREW_LOCKING))
          : List.of(
              new Mark.Disc(x, y, wide, wide, Ink.SMOOTH),
              new Mark.Disc(x, y, half, half, ink(type)));
    }
    List<Mark> head = new ArrayList<>();
    double base = profile.y(rod.outside() * rise);
    double top = profile.y((rod.outside() + 1.6) * rise);
    double inside = profile.y((rod.outside() - thickness) * rise);
    if (type == ScrewRow.Type.LOCKING) {
      double wide = half * 1.45;
      double upper = profile.y((rod.outside() + 0.7) * rise);
      head.add(
          new Mark.Box(
              x - wide,
              Math.min(upper, inside),
              2 * wide,
              Math.abs(inside - upper),
              Ink.SCREW_LOCKING));
    } else {
      double wide = half * 1.8;
      head.add(
          new Mark.Outline(
              List.of(
                  new Mark.Point(x - wide, base),
                  new Mark.Point(x - wide * 0.7, top),
                  new Mark.Point(x + wide * 0.7, top),
                  new Mark.Point(x + wide, base)),
              true,
              Ink.SMOOTH));
    }
    return head;
  }

  static Ink ink(ScrewRow.Type type) {
    return switch (type) {
      case CORTICAL -> Ink.SCREW;
      case CANCELLOUS -> Ink.SCREW_COARSE;
      case LOCKING -> Ink.SCREW_LOCKING;
    };
  }
}
