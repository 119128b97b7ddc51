package org.bonewright.report.html;

/**
 * A drawing that stands in the page.
 *
 * @param caption what it shows, in a few words
 * @param svg the drawing, a whole SVG document with a text alternative of its own
 */
public record Figure(String caption, String svg) {}
