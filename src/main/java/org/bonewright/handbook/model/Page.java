package org.bonewright.handbook.model;

import java.util.List;

/**
 * A page of the handbook.
 *
 * @param path where it stands, without ending: {@code index}, {@code principles/plate-span-ratio}
 * @param kind what sort of page it is, as a reader calls it
 * @param title its heading
 * @param lead what it says first
 * @param sections its sections, in order
 */
public record Page(String path, Kind kind, String title, List<Block> lead, List<Section> sections) {

  /** A sort of page. */
  public enum Kind {
    START("Start"),
    PRINCIPLE("Principle"),
    PROMISE("Promise of the program"),
    LIST("List");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Return the word for it. */
    public String word() {
      return word;
    }
  }

  /**
   * Make a page.
   *
   * @throws IllegalArgumentException if it has no title or says nothing
   */
  public Page {
    lead = List.copyOf(lead);
    sections = List.copyOf(sections);
    if (title.isBlank() || lead.isEmpty()) {
      throw new IllegalArgumentException(path + ": a page without title or lead");
    }
  }

  /** Return the place at its top. */
  public Target top() {
    return Target.page(path);
  }
}
