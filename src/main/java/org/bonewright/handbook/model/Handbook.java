package org.bonewright.handbook.model;

import java.util.List;

/**
 * The handbook as a whole.
 *
 * @param version the version of the rule set
 * @param hash the hash over its cards and rules
 * @param cautions what stands at its front
 * @param pages every page, in the order of reading
 * @param entries what a reader may look for, in the order of the alphabet
 */
public record Handbook(
    String version, String hash, List<Text> cautions, List<Page> pages, List<Entry> entries) {

  /** The name of the handbook. */
  public static final String NAME = "Bonewright handbook";

  public Handbook {
    cautions = List.copyOf(cautions);
    pages = List.copyOf(pages);
    entries = List.copyOf(entries);
  }

  /** Return which rule set it shows, in words. */
  public String edition() {
    return "Rule set " + version + ", content " + hash;
  }
}
