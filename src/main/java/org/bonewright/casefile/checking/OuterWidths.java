package org.bonewright.casefile.checking;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;

/**
 * The outer diameters that were measured along the broken bone, in mm.
 *
 * @param measured those of the sections that have one
 */
record OuterWidths(List<Quantity> measured) {

  /** Return the widths of a bone. */
  static OuterWidths of(Bone bone) {
    return new OuterWidths(
        bone.sections().stream().map(Section::outerMm).flatMap(Optional::stream).toList());
  }

  /** Return the narrowest, by its largest possible value; absent when none was measured. */
  Optional<Quantity> narrowest() {
    return measured.stream().min(Comparator.comparingDouble(Quantity::max));
  }

  /** Return the widest, by its largest possible value; absent when none was measured. */
  Optional<Quantity> widest() {
    return measured.stream().max(Comparator.comparingDouble(Quantity::max));
  }
}
