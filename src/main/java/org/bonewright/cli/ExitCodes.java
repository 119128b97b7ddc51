package org.bonewright.cli;

/** What the exit code says. */
final class ExitCodes {

  /** The case was reviewed, or the file is usable. */
  static final int DONE = 0;

  /**
   * The plan leaves a critical principle unmet, accepted or not, or unknown though answerable, or
   * though the samples of a model are split.
   */
  static final int PLAN_LEAVES_CRITICAL = 1;

  /** No drawing of the plan was found that leaves nothing critical or major unmet. */
  static final int NO_PLAN_FOUND = 1;

  /** The input cannot be used. */
  static final int UNUSABLE = 2;

  /** A fault of the program. */
  static final int INTERNAL = 3;

  private ExitCodes() {}
}
