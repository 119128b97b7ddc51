package org.bonewright.drawing;

/** Patterns of lines and dots that fill a shape, so that it is known without its colour. */
public enum Hatch {
  /** Broken bone. */
  ZONE("M0 8 L4 2 L8 8", 8, 8, 1.1),
  /** Thread of a screw. */
  THREAD("M0 0 L3 3", 3, 3, 0.9),
  /** Thread of a cancellous screw. */
  COARSE_THREAD("M0 0 L5 5", 5, 5, 1.3),
  /** Nail. */
  NAIL("M0 2 L10 2", 10, 4, 0.8),
  /** Graft bone. */
  STRUT("M1 1 L2 1 M5 4 L6 4", 8, 6, 1.4),
  /** Metal that is not part of the history. */
  OTHER("M0 0 L6 6 M6 0 L0 6", 6, 6, 0.7),
  /** Old tracks of the first, second, third and any further operation. */
  OLD_1("M-1 1 L1 -1 M0 4 L4 0 M3 5 L5 3", 4, 4, 0.9),
  OLD_2("M-1 3 L1 5 M0 0 L4 4 M3 -1 L5 1", 4, 4, 0.9),
  OLD_3("M2 0 L2 4", 4, 4, 0.9),
  OLD_4("M0 2 L4 2", 4, 4, 0.9),
  /** Free bone. */
  FREE("M5 3 L5 6", 10, 9, 0.8),
  /** Thread in an old track. */
  OVERLAP("M0 0 L3 3 M3 0 L0 3", 3, 3, 1);

  final String path;
  final double width;
  final double height;
  final double line;

  Hatch(String path, double width, double height, double line) {
    this.path = path;
    this.width = width;
    this.height = height;
    this.line = line;
  }

  /** Return the hatch for the old tracks of an operation, counted from 0. */
  static Hatch old(int round) {
    return switch (round) {
      case 0 -> OLD_1;
      case 1 -> OLD_2;
      case 2 -> OLD_3;
      default -> OLD_4;
    };
  }
}
