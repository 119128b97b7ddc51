package org.bonewright.drawing;

import java.util.List;

/**
 * A drawing: marks on a sheet.
 *
 * @param id word that makes the ids within the file unlike those of other drawings on one page
 * @param title what is drawn, in one line
 * @param description the same as the drawing in words, for whoever cannot see it
 * @param width width of the sheet in its units
 * @param height height of the sheet
 * @param scale how mm along the bone become units
 * @param marks what is on it, the lowest first
 */
public record Picture(
    String id,
    String title,
    String description,
    double width,
    double height,
    Scale scale,
    List<Mark> marks) {

  public Picture {
    marks = List.copyOf(marks);
  }
}
