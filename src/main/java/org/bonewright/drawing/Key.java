package org.bonewright.drawing;

import java.util.List;

/** The signs that stand in rows and legend, each with its meaning. */
enum Key {
  CONVENTIONAL("screw"),
  CANCELLOUS("cancellous screw"),
  LOCKING("locking screw"),
  OPEN("open hole"),
  PLUGGED("plugged hole"),
  LAG("lag screw"),
  BOLT("locking bolt"),
  PIN("pin or wire of a fixator"),
  CERCLAGE("cerclage"),
  STRUT("strut"),
  NAIL("nail"),
  OTHER("metal from outside this history"),
  PIECE("piece left behind"),
  OLD_ROD("old track, empty"),
  OLD_1("old tracks of the first operation"),
  OLD_2("of the second"),
  OLD_3("of the third"),
  OLD_4("of later ones"),
  FILLED("metal still in it"),
  ZONE("zone: broken or not united"),
  BROKEN("broken here"),
  CUT("bone cut out here"),
  RANGE("place known only within this"),
  EXIT("exit: ring with a cross"),
  OVERLAP("thread in an old track"),
  TAKEN("thread partly in an old track; % of it left"),
  UNSURE("dotted: not recorded whether so far"),
  GUESSED("width of the bone not measured here"),
  FOOTPRINT("where a plate lies"),
  FREE("free for the screws named below");

  final String meaning;

  Key(String meaning) {
    this.meaning = meaning;
  }

  static Key old(int round) {
    return switch (round) {
      case 0 -> OLD_1;
      case 1 -> OLD_2;
      case 2 -> OLD_3;
      default -> OLD_4;
    };
  }

  /** Return the sign about a point, 10 units across. */
  List<Mark> at(double x, double y) {
    return switch (this) {
      case CONVENTIONAL -> List.of(new Mark.Disc(x, y, 4.5, 4.5, Ink.SCREW));
      case CANCELLOUS -> List.of(new Mark.Disc(x, y, 5, 5, Ink.SCREW_COARSE));
      case LOCKING -> List.of(new Mark.Box(x - 4, y - 4, 8, 8, Ink.SCREW_LOCKING));
      case OPEN -> List.of(new Mark.Disc(x, y, 4.5, 4.5, Ink.HOLE));
      case PLUGGED -> crossed(x, y, new Mark.Disc(x, y, 4.5, 4.5, Ink.HOLE));
      case LAG -> List.of(polygon(Ink.SCREW, x, y - 5.5, x + 5.5, y, x, y + 5.5, x - 5.5, y));
      case BOLT -> List.of(new Mark.Disc(x, y, 4.5, 4.5, Ink.BOLT));
      case PIN -> List.of(polygon(Ink.PIN, x - 4, y - 5, x + 4, y - 5, x, y + 5));
      case CERCLAGE ->
          List.of(
              Mark.Outline.line(Ink.CERCLAGE, x - 2, y - 5, x - 2, y + 5),
              Mark.Outline.line(Ink.CERCLAGE, x + 2, y - 5, x + 2, y + 5));
      case STRUT -> List.of(new Mark.Box(x - 8, y - 4, 16, 8, Ink.STRUT));
      case NAIL -> List.of(new Mark.Box(x - 8, y - 3.5, 16, 7, Ink.NAIL));
      case OTHER -> List.of(new Mark.Box(x - 8, y - 4, 16, 8, Ink.OTHER));
      case PIECE ->
          List.of(
              Mark.Outline.line(Ink.BREAK, x - 4, y - 4, x + 4, y + 4),
              Mark.Outline.line(Ink.BREAK, x - 4, y + 4, x + 4, y - 4));
      case OLD_1 -> List.of(new Mark.Disc(x, y, 4.8, 4.8, Ink.old(0)));
      case OLD_2 -> List.of(new Mark.Disc(x, y, 4.8, 4.8, Ink.old(1)));
      case OLD_3 -> List.of(new Mark.Disc(x, y, 4.8, 4.8, Ink.old(2)));
      case OLD_4 -> List.of(new Mark.Disc(x, y, 4.8, 4.8, Ink.old(3)));
      case FILLED ->
          List.of(new Mark.Disc(x, y, 4.8, 4.8, Ink.OLD), new Mark.Disc(x, y, 1.8, 1.8, Ink.SOLID));
      case ZONE -> List.of(new Mark.Box(x - 8, y - 5, 16, 10, Ink.ZONE));
      case BROKEN -> zigzag(x, y - 6, y + 6);
      case CUT -> List.of(Mark.Outline.line(Ink.CUT, x, y - 6, x, y + 6));
      case RANGE -> whisker(x - 8, x + 8, y);
      case EXIT -> crossed(x, y, new Mark.Disc(x, y, 4.5, 4.5, Ink.SMOOTH));
      case OVERLAP -> List.of(new Mark.Disc(x, y, 4.5, 4.5, Ink.OVERLAP));
      case TAKEN -> List.of(new Mark.Disc(x, y, 6.5, 6.5, Ink.TAKEN));
      case UNSURE -> List.of(new Mark.Box(x - 3, y - 5, 6, 10, Ink.UNSURE));
      case GUESSED -> List.of(Mark.Outline.line(Ink.BONE_GUESSED, x - 8, y, x + 8, y));
      case FOOTPRINT -> List.of(new Mark.Box(x - 8, y - 5, 16, 10, Ink.FOOTPRINT));
      case OLD_ROD -> List.of(new Mark.Box(x - 3, y - 5, 6, 10, Ink.OLD));
      case FREE -> List.of(new Mark.Box(x - 8, y - 5, 16, 10, Ink.FREE));
    };
  }

  private static List<Mark> crossed(double x, double y, Mark.Disc ring) {
    double arm = ring.rx() * 0.7;
    Ink thin = new Ink("none", ring.ink().stroke(), 1, "", java.util.Optional.empty());
    return List.of(
        ring,
        Mark.Outline.line(thin, x - arm, y - arm, x + arm, y + arm),
        Mark.Outline.line(thin, x - arm, y + arm, x + arm, y - arm));
  }

  /** Return a crack from top to bottom: a white gap with a jagged line in it. */
  static List<Mark> zigzag(double x, double top, double bottom) {
    List<Mark.Point> points = new java.util.ArrayList<>();
    int steps = (int) Math.max(4, Math.rint((bottom - top) / 5));
    for (int i = 0; i <= steps; i++) {
      points.add(new Mark.Point(x + (i % 2 == 0 ? -2.2 : 2.2), top + (bottom - top) * i / steps));
    }
    return List.of(
        new Mark.Outline(points, false, Ink.BREAK_GAP), new Mark.Outline(points, false, Ink.BREAK));
  }

  /** Return a bar with ends: a place known only within it. */
  static List<Mark> whisker(double from, double to, double y) {
    return List.of(
        Mark.Outline.line(Ink.WHISKER, from, y, to, y),
        Mark.Outline.line(Ink.WHISKER, from, y - 3, from, y + 3),
        Mark.Outline.line(Ink.WHISKER, to, y - 3, to, y + 3));
  }

  private static Mark polygon(Ink ink, double... xy) {
    List<Mark.Point> points = new java.util.ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Mark.Point(xy[i], xy[i + 1]));
    }
    return new Mark.Outline(points, true, ink);
  }
}
