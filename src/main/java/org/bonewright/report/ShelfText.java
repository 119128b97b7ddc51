package org.bonewright.report;

import java.util.List;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Words;
import org.bonewright.shelf.Shelf;

/** The implants that are kept, as text. */
public final class ShelfText {

  private ShelfText() {}

  /** Return them, a size a line. */
  public static String render(Shelf shelf) {
    Page page = new Page();
    page.line("Shelf of " + shelf.name() + ": what other drawings of a plan are made with");
    shelf
        .plates()
        .forEach(
            sizes ->
                page.hanging(
                    "  plate  ",
                    Words.of(sizes.family())
                        + ", "
                        + Words.of(sizes.material())
                        + ": "
                        + sizes.holes().stream()
                            .map(String::valueOf)
                            .collect(Collectors.joining(", "))
                        + " holes"));
    shelf
        .nails()
        .forEach(
            sizes ->
                page.hanging(
                    "  nail   ",
                    Words.of(sizes.bone())
                        + ", "
                        + Words.of(sizes.material())
                        + ": "
                        + mm(sizes.outerMm())
                        + "; lengths "
                        + mm(sizes.lengthMm())
                        + "; bolts "
                        + mm(sizes.boltMm())));
    shelf
        .struts()
        .forEach(
            sizes ->
                page.hanging(
                    "  strut  ",
                    Words.of(sizes.origin())
                        + ": "
                        + mm(sizes.outerMm())
                        + "; lengths "
                        + mm(sizes.lengthMm())));
    page.hanging(
        "  other  ",
        "lag screws "
            + (shelf.lagScrewMm().isEmpty() ? "none" : mm(shelf.lagScrewMm()))
            + "; plugs "
            + (shelf.plugs() ? "yes" : "no")
            + "; tension device "
            + (shelf.tensionDevice() ? "yes" : "no"));
    return page.text();
  }

  private static String mm(List<Double> sizes) {
    return sizes.stream().map(Dimension::number).collect(Collectors.joining(", ")) + " mm";
  }
}
