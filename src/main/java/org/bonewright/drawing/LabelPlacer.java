package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts small texts beside what they name, so that no two of them overlap and as little as possible
 * is covered. A text that had to move away gets a thin line to its mark.
 */
final class LabelPlacer {

  private static final double GAP = 2;
  private static final int DIRECTIONS = 16;
  private static final int RINGS = 14;

  private final TextBox area;
  private final List<TextBox> texts = new ArrayList<>();
  private final List<TextBox> obstacles = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /** Make one that stays within an area. */
  LabelPlacer(TextBox area) {
    this.area = area;
  }

  /** Keep texts off this place where possible. */
  void avoid(double x, double y, double reach) {
    obstacles.add(new TextBox(x - reach, y - reach, x + reach, y + reach));
  }

  /** Keep texts off this area where possible. */
  void avoid(TextBox box) {
    obstacles.add(box);
  }

  /** Put a text beside a mark that reaches {@code reach} units about its middle. */
  void put(double x, double y, double reach, String text, double size, boolean bold) {
    double half = TextBox.width(text, size) * (bold ? 1.1 : 1) / 2;
    double best = Double.MAX_VALUE;
    Mark.Label chosen = null;
    double away = 0;
    for (int ring = 0; ring < RINGS; ring++) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = Math.PI / 2 - 2 * Math.PI * i / DIRECTIONS;
        double dx = Math.cos(angle) * (reach + GAP + half + ring * 7);
        double dy = Math.sin(angle) * (reach + GAP + size / 2 + ring * 7);
        Mark.Label label =
            new Mark.Label(x + dx, y - dy + size * 0.3, text, size, Mark.Anchor.MIDDLE, bold);
        double cost =
            cost(TextBox.of(label)) + ring * 25 + (i == 0 ? 0 : i % 4 == 0 ? 2 : 4) + i * 0.01;
        if (cost < best) {
          best = cost;
          chosen = label;
          away = ring;
        }
      }
    }
    if (chosen == null) {
      return;
    }
    texts.add(TextBox.of(chosen));
    if (away > 1) {
      double toX = chosen.x() - x;
      double toY = chosen.y() - size * 0.3 - y;
      double length = Math.hypot(toX, toY);
      marks.add(
          Mark.Outline.line(
              Ink.LEADER,
              x + toX / length * reach,
              y + toY / length * reach,
              x + toX * (1 - size / 2 / length),
              y + toY * (1 - size / 2 / length)));
    }
    TextBox box = TextBox.of(chosen);
    marks.add(
        new Mark.Box(
            box.left(),
            box.top(),
            box.right() - box.left(),
            box.bottom() - box.top(),
            Ink.SMOOTH.withoutStroke("#ffffff")));
    marks.add(chosen);
  }

  private double cost(TextBox box) {
    double cost = 0;
    if (!box.within(area.left(), area.top(), area.right(), area.bottom())) {
      cost += 1e6;
    }
    for (TextBox text : texts) {
      if (text.overlaps(box)) {
        cost += 1e5 + text.common(box);
      }
    }
    for (TextBox obstacle : obstacles) {
      cost += 3 * obstacle.common(box);
    }
    return cost;
  }

  List<Mark> marks() {
    return marks;
  }
}
