package org.bonewright.handbook.model;

import java.util.List;

/**
 * A section of a page.
 *
 * @param anchor by which others lead to it; unique on its page
 * @param title its heading
 * @param blocks what it says
 * @param parts smaller sections within it
 */
public record Section(String anchor, String title, List<Block> blocks, List<Section> parts) {

  /**
   * Make a section.
   *
   * @throws IllegalArgumentException if there is nothing in it
   */
  public Section {
    blocks = List.copyOf(blocks);
    parts = List.copyOf(parts);
    if (blocks.isEmpty() && parts.isEmpty()) {
      throw new IllegalArgumentException("nothing under " + title);
    }
    if (title.isBlank() || anchor.isBlank()) {
      throw new IllegalArgumentException("a section without a name");
    }
  }

  /** Return a section without smaller ones. */
  public static Section of(String anchor, String title, Block... blocks) {
    return new Section(anchor, title, List.of(blocks), List.of());
  }
}
