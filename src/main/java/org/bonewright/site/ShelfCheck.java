package org.bonewright.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.measures.Words;
import org.bonewright.shelf.NailSizes;
import org.bonewright.shelf.PlateSizes;
import org.bonewright.shelf.StrutSizes;

/** Whether what a site keeps is listed once, and each list of sizes holds some, each once. */
final class ShelfCheck {

  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> listed = new HashSet<>();

  /** Return every problem found so far. */
  List<Problem> problems() {
    return problems;
  }

  /** Take a record of the file; what is no part of a shelf is left alone. */
  void take(ReadPart part) {
    if (part.value() instanceof PlateSizes sizes) {
      once(part, "family", "plates of " + Words.written(sizes.family()));
      sizes(part, "holes", sizes.holes());
    } else if (part.value() instanceof NailSizes sizes) {
      once(part, "bone", "nails for the " + Words.written(sizes.bone()));
      sizes(part, "outerMm", sizes.outerMm());
      sizes(part, "lengthMm", sizes.lengthMm());
      sizes(part, "boltMm", sizes.boltMm());
    } else if (part.value() instanceof StrutSizes sizes) {
      once(part, "origin", "struts, " + Words.written(sizes.origin()));
      sizes(part, "outerMm", sizes.outerMm());
      sizes(part, "lengthMm", sizes.lengthMm());
    } else if (part.value() instanceof ShelfList list
        && new HashSet<>(list.lagScrewMm()).size() < list.lagScrewMm().size()) {
      problems.add(part.error("lagScrewMm", "a diameter twice", "each diameter once"));
    }
  }

  private void once(ReadPart part, String field, String what) {
    if (!listed.add(what)) {
      problems.add(part.error(field, what + " a second time", "each once, with all its sizes"));
    }
  }

  private void sizes(ReadPart part, String field, List<? extends Number> sizes) {
    if (sizes.isEmpty()) {
      problems.add(part.error(field, "no size", "one size at least; leave out what is not kept"));
    } else if (new HashSet<>(sizes).size() < sizes.size()) {
      problems.add(part.error(field, "a size twice", "each size once"));
    }
  }
}
