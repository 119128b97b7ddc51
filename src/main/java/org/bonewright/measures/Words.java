package org.bonewright.measures;

import java.util.Locale;

/**
 * How a constant of the case file is said in a sentence: {@code TENSION_DEVICE}, "tension device".
 */
public final class Words {

  private Words() {}

  /** Return it as a file writes it: {@code TENSION_DEVICE}, "tension-device". */
  public static String written(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Return it as a sentence says it. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
