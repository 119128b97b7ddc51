package org.bonewright.drawing;

import java.util.Optional;

/**
 * How a shape is drawn.
 *
 * @param fill colour inside, or {@code none}
 * @param stroke colour of the outline, or {@code none}
 * @param width width of the outline
 * @param dash dashes of the outline, empty for a full line
 * @param hatch pattern laid over the fill, in the colour of the outline
 */
public record Ink(String fill, String stroke, double width, String dash, Optional<Hatch> hatch) {

  static final Ink BONE = line("#f3ecdd", "#2b2b2b", 1.4);
  static final Ink BONE_GUESSED = line("#f8f4ea", "#6b6b6b", 1.1).dashed("6 4");
  static final Ink CANAL = line("#ffffff", "#8a8069", 0.8);
  static final Ink CANAL_GUESSED = line("#ffffff", "#9a917d", 0.7).dashed("7 3");
  static final Ink ZONE = line("none", "#8a1538", 1.2).hatched(Hatch.ZONE);
  static final Ink ZONE_VAGUE = line("none", "#8a1538", 0.9).dashed("2 3");
  static final Ink PLATE = line("#a9c1d9", "#173a5e", 1.3);
  static final Ink PLATE_BEHIND = line("none", "#173a5e", 1.1).dashed("5 3");
  static final Ink PLATE_OLD = line("#e4e9ee", "#5b6b7a", 1);
  static final Ink HOLE = line("#ffffff", "#173a5e", 1);
  static final Ink SCREW = line("#ffffff", "#111111", 1).hatched(Hatch.THREAD);
  static final Ink SCREW_COARSE = line("#ffffff", "#111111", 1).hatched(Hatch.COARSE_THREAD);
  static final Ink SCREW_LOCKING = line("#222222", "#111111", 0.8);
  static final Ink SMOOTH = line("#ffffff", "#111111", 1);
  static final Ink UNSURE = line("none", "#111111", 0.9).dashed("2 2");
  static final Ink NAIL = line("#c9cfd6", "#34404d", 1.2).hatched(Hatch.NAIL);
  static final Ink BOLT = line("#5d6b79", "#1c242c", 1);
  static final Ink PIN = line("#ffffff", "#1c242c", 1.2);
  static final Ink BAR = line("#ececec", "#1c242c", 1.1);
  static final Ink STRUT = line("#e8dcb8", "#6a5518", 1.2).hatched(Hatch.STRUT);
  static final Ink CERCLAGE = line("none", "#222222", 2);
  static final Ink OTHER = line("#f1f1f1", "#555555", 1).hatched(Hatch.OTHER);
  static final Ink OLD = line("none", "#a34a00", 1).dashed("3 2");
  static final Ink FREE = line("#fbfffb", "#2c7a4b", 0.7).dashed("1 3").hatched(Hatch.FREE);
  static final Ink OVERLAP = line("#ffffff", "#b00020", 1).hatched(Hatch.OVERLAP);
  static final Ink TAKEN = line("none", "#b00020", 1.8);
  static final Ink BREAK_GAP = line("none", "#ffffff", 4.5);
  static final Ink GOES_ON = line("none", "#ffffff", 3);
  static final Ink BREAK = line("none", "#b00020", 1.8);
  static final Ink CUT = line("none", "#8a1538", 1.6).dashed("9 3 2 3");
  static final Ink AXIS = line("none", "#333333", 1);
  static final Ink GRID = line("none", "#dddddd", 0.7);
  static final Ink LEADER = line("none", "#888888", 0.6);
  static final Ink WHISKER = line("none", "#444444", 1.1);
  static final Ink RING = line("none", "#111111", 1.2);
  static final Ink FRAME = line("none", "#2b2b2b", 1.2);
  static final Ink SURFACE = line("none", "#b9b09a", 0.7);
  static final Ink FOOTPRINT = line("none", "#173a5e", 1.2);
  static final Ink SOLID = line("#222222", "#222222", 0.8);

  private static Ink line(String fill, String stroke, double width) {
    return new Ink(fill, stroke, width, "", Optional.empty());
  }

  Ink dashed(String pattern) {
    return new Ink(fill, stroke, width, pattern, hatch);
  }

  Ink hatched(Hatch with) {
    return new Ink(fill, stroke, width, dash, Optional.of(with));
  }

  /** Return a bare area of this colour. */
  Ink withoutStroke(String colour) {
    return new Ink(colour, "none", 0, "", Optional.empty());
  }

  Ink withoutFill() {
    return new Ink("none", stroke, width, dash, Optional.empty());
  }

  /** Return the ink for the old tracks of an operation, counted from 0. */
  static Ink old(int round) {
    return line("#fff7ee", OLD.stroke, 1).dashed("3 2").hatched(Hatch.old(round));
  }
}
