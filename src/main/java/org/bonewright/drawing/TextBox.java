package org.bonewright.drawing;

/**
 * The room that a text or a mark takes on the sheet. The width of a text is an estimate on the wide
 * side, since the font differs from machine to machine.
 */
record TextBox(double left, double top, double right, double bottom) {

  static TextBox of(Mark.Label label) {
    double width = width(label.text(), label.size()) * (label.bold() ? 1.1 : 1);
    double left =
        switch (label.anchor()) {
          case START -> label.x();
          case MIDDLE -> label.x() - width / 2;
          case END -> label.x() - width;
        };
    return new TextBox(
        left, label.y() - 0.8 * label.size(), left + width, label.y() + 0.22 * label.size());
  }

  /** Return about how wide a text is. */
  static double width(String text, double size) {
    double ems = 0;
    for (int i = 0; i < text.length(); i++) {
      ems += ems(text.charAt(i));
    }
    return ems * size;
  }

  private static double ems(char c) {
    if ("ilj|.,:;'! ".indexOf(c) >= 0) {
      return 0.34;
    }
    if ("ftr-()/[]".indexOf(c) >= 0) {
      return 0.42;
    }
    if ("mwMW%".indexOf(c) >= 0) {
      return 0.98;
    }
    return Character.isUpperCase(c) ? 0.74 : 0.63;
  }

  boolean overlaps(TextBox other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Return the area in common. */
  double common(TextBox other) {
    double w = Math.min(right, other.right) - Math.max(left, other.left);
    double h = Math.min(bottom, other.bottom) - Math.max(top, other.top);
    return w > 0 && h > 0 ? w * h : 0;
  }

  boolean within(double x1, double y1, double x2, double y2) {
    return left >= x1 && right <= x2 && top >= y1 && bottom <= y2;
  }
}
