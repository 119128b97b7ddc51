package org.bonewright.drawing;

import java.util.List;

/** Something on the sheet, in its units: x to the right, y down. */
public sealed interface Mark {

  /** A rectangle. */
  record Box(double x, double y, double width, double height, Ink ink) implements Mark {}

  /** A line through points, or the shape that they enclose. */
  record Outline(List<Point> points, boolean closed, Ink ink) implements Mark {
    public Outline {
      points = List.copyOf(points);
    }

    static Outline line(Ink ink, double x1, double y1, double x2, double y2) {
      return new Outline(List.of(new Point(x1, y1), new Point(x2, y2)), false, ink);
    }
  }

  /** An ellipse about its middle. */
  record Disc(double x, double y, double rx, double ry, Ink ink) implements Mark {}

  /** A text on one line; {@code y} is its base line. */
  record Label(double x, double y, String text, double size, Anchor anchor, boolean bold)
      implements Mark {}

  /**
   * Marks that stand for one thing.
   *
   * @param kind what it is: bone, zone, plate, hole, screw, bolt, pin, lag, track …
   * @param name its name in the history, empty where it has none
   * @param says it in words, for whoever points at it
   */
  record Thing(String kind, String name, String says, List<Mark> marks) implements Mark {
    public Thing {
      marks = List.copyOf(marks);
    }
  }

  /** Marks of which only what lies in a rectangle is seen. */
  record Window(double x, double y, double width, double height, List<Mark> marks) implements Mark {
    public Window {
      marks = List.copyOf(marks);
    }
  }

  /** A point on the sheet. */
  record Point(double x, double y) {}

  /** Which part of a text stands at its place. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
