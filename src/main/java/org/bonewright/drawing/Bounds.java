package org.bonewright.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/** How far marks reach up and down the sheet. */
record Bounds(double top, double bottom) {

  static Bounds of(List<? extends Mark> marks, double least) {
    double top = -least;
    double bottom = least;
    for (Mark mark : marks) {
      double[] ys = ys(mark).toArray();
      for (double y : ys) {
        top = Math.min(top, y);
        bottom = Math.max(bottom, y);
      }
    }
    return new Bounds(top, bottom);
  }

  private static DoubleStream ys(Mark mark) {
    if (mark instanceof Mark.Thing thing) {
      return thing.marks().stream().flatMapToDouble(Bounds::ys);
    }
    if (mark instanceof Mark.Window window) {
      return DoubleStream.of(window.y(), window.y() + window.height());
    }
    if (mark instanceof Mark.Box box) {
      return DoubleStream.of(box.y(), box.y() + box.height());
    }
    if (mark instanceof Mark.Disc disc) {
      return DoubleStream.of(disc.y() - disc.ry(), disc.y() + disc.ry());
    }
    if (mark instanceof Mark.Outline outline) {
      return outline.points().stream().mapToDouble(Mark.Point::y);
    }
    TextBox box = TextBox.of((Mark.Label) mark);
    return DoubleStream.of(box.top(), box.bottom());
  }
}
