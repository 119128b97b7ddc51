package org.bonewright.handbook.model;

/**
 * A place in the handbook.
 *
 * @param page the path of a page, as in {@link Page#path()}
 * @param anchor a place on it, empty for its top
 */
public record Target(String page, String anchor) {

  /** Return the top of a page. */
  public static Target page(String path) {
    return new Target(path, "");
  }
}
