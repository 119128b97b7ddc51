package org.bonewright.measures;

import java.util.List;

/**
 * The published description of a measure.
 *
 * @param id kebab-case id
 * @param title a few words
 * @param domain the values it can have
 * @param formula how it is obtained, in words
 * @param inputs what it is obtained from: fields of the case file or other measures
 * @param source where the formula or convention comes from
 */
public record Definition(
    String id, String title, Domain domain, String formula, List<String> inputs, String source) {

  /** The values that a measure can have. */
  public sealed interface Domain {

    /**
     * Numbers.
     *
     * @param unit UCUM unit, {@code 1} for a pure number
     * @param shownUnit the unit as people write it, empty for a pure number
     * @param min smallest possible value
     * @param max largest possible value; may be infinite
     * @param step distance between possible values, 0 for a continuous measure
     */
    record Numbers(String unit, String shownUnit, double min, double max, double step)
        implements Domain {}

    /**
     * Words out of a list.
     *
     * @param words every word that the measure can give
     */
    record Words(List<String> words) implements Domain {}
  }

  /** Return the unit as people write it; empty for a pure number and for words. */
  public String shownUnit() {
    return domain instanceof Domain.Numbers numbers ? numbers.shownUnit() : "";
  }

  /** Return a domain of lengths in mm from zero. */
  public static Domain millimetres() {
    return new Domain.Numbers("mm", "mm", 0, Double.POSITIVE_INFINITY, 0);
  }

  /** Return a domain of lengths in mm that may lie below zero. */
  public static Domain signedMillimetres() {
    return new Domain.Numbers("mm", "mm", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0);
  }

  /** Return a domain of ratios from zero. */
  public static Domain ratio() {
    return new Domain.Numbers("1", "", 0, Double.POSITIVE_INFINITY, 0);
  }

  /** Return a domain of percentages, 0 to 100. */
  public static Domain percent() {
    return new Domain.Numbers("%", "%", 0, 100, 0);
  }

  /** Return a domain of angles between two directions, 0 to 180 degrees. */
  public static Domain degrees() {
    return new Domain.Numbers("deg", "°", 0, 180, 0);
  }

  /** Return a domain of counts, from zero in steps. */
  public static Domain count(double step) {
    return new Domain.Numbers("1", "", 0, Double.POSITIVE_INFINITY, step);
  }

  /** Return a domain of words. */
  public static Domain words(String... words) {
    return new Domain.Words(List.of(words));
  }

  /** Return the domain of a yes-or-no question. */
  public static Domain yesOrNo() {
    return words("yes", "no");
  }
}
