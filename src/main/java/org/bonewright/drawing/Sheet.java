package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.measures.Subject;

/** A sheet being filled from the top: headings, then what is drawn, axis, legend, notes. */
final class Sheet {

  static final double LEFT = 190;
  static final double RIGHT_MARGIN = 70;
  private static final double SMALL = 10.5;

  private final Scale scale;
  private final List<Mark> marks = new ArrayList<>();
  private final Set<Key> keys = EnumSet.noneOf(Key.class);
  private final Set<String> notes = new LinkedHashSet<>();
  private double y;

  Sheet(Scale scale) {
    this.scale = scale;
  }

  double width() {
    return Math.max(900, scale.right() + RIGHT_MARGIN);
  }

  double y() {
    return y;
  }

  void goTo(double newY) {
    this.y = newY;
  }

  void add(List<? extends Mark> more) {
    marks.addAll(more);
  }

  void uses(Set<Key> more) {
    keys.addAll(more);
  }

  void uses(Key key) {
    keys.add(key);
  }

  void note(String text) {
    notes.add(text);
  }

  List<String> notes() {
    return List.copyOf(notes);
  }

  void heading(String title, String under, Subject subject) {
    text(8, 22, title, 15, true);
    double room = width() - 16;
    String second = Captions.provenance(subject.caseFile()) + "; " + under;
    y = 40;
    for (String line : Captions.lines(second, 11, room)) {
      text(8, y, line, 11, false);
      y += 14;
    }
    y += 2;
  }

  private void text(double x, double base, String text, double size, boolean bold) {
    marks.add(new Mark.Label(x, base, text, size, Mark.Anchor.START, bold));
  }

  /** Draw the axis in mm, with light lines upwards to {@code gridTop} and down to the bottom. */
  void axis(double gridTop, double gridBottom) {
    double step = scale.perMm() >= 4 ? 20 : 50;
    List<Mark> grid = new ArrayList<>();
    List<Mark> axis = new ArrayList<>();
    axis.add(Mark.Outline.line(Ink.AXIS, scale.left(), y, scale.right(), y));
    for (double level = Math.ceil(scale.from() / 10) * 10; level <= scale.to(); level += 10) {
      boolean labelled = Math.IEEEremainder(level, step) == 0;
      double x = scale.x(level);
      axis.add(Mark.Outline.line(Ink.AXIS, x, y, x, y + (labelled ? 7 : 4)));
      if (labelled) {
        grid.add(Mark.Outline.line(Ink.GRID, x, gridTop, x, gridBottom));
        String number = Long.toString(Math.round(level));
        axis.add(new Mark.Label(x, y + 18, number, SMALL, Mark.Anchor.MIDDLE, false));
      }
    }
    axis.add(new Mark.Label(scale.right() + 24, y + 18, "mm", SMALL, Mark.Anchor.START, false));
    marks.addAll(0, grid);
    marks.addAll(axis);
    y += 26;
  }

  /** Close the sheet with scale bar, legend, notes and small print. */
  void foot() {
    y += 16;
    scaleBar();
    legend();
    y += 8;
    for (String note : notes) {
      for (String line : Captions.lines(note, SMALL, width() - 24)) {
        text(8, y, line, SMALL, false);
        y += 14;
      }
    }
    y += 4;
    for (String line : Captions.lines(Captions.smallPrint(), 9.5, width() - 24)) {
      text(8, y, line, 9.5, false);
      y += 12;
    }
  }

  private void scaleBar() {
    double length = scale.units(50);
    List<Mark> bar = new ArrayList<>();
    for (int part = 0; part < 5; part++) {
      double x = 12 + length * part / 5;
      bar.add(new Mark.Box(x, y, length / 5, 5, part % 2 == 0 ? Ink.SOLID : Ink.SMOOTH));
    }
    marks.add(new Mark.Thing("scale-bar", "", "scale bar of 50 mm", bar));
    text(12 + length + 8, y + 7, "50 mm", SMALL, false);
    y += 26;
  }

  private void legend() {
    double x = 18;
    for (Key key : keys) {
      double room = TextBox.width(key.meaning, SMALL) + 38;
      if (x + room > width() && x > 18) {
        x = 18;
        y += 18;
      }
      marks.addAll(key.at(x, y - 4));
      text(x + 13, y, key.meaning, SMALL, false);
      x += room;
    }
    y += 16;
  }

  Picture picture(String id, String title, String description) {
    return new Picture(id, title, description, Math.ceil(width()), Math.ceil(y), scale, marks);
  }
}
