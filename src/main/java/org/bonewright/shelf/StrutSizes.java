package org.bonewright.shelf;

import java.util.List;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Strut;

/**
 * Struts for the canal that are kept, or can be cut.
 *
 * @param origin where they come from
 * @param outerMm diameters in mm
 * @param lengthMm lengths in mm
 */
@Meaning("Struts for the canal that are kept, or can be cut.")
public record StrutSizes(
    @Meaning("Where they come from.") Strut.Origin origin,
    @Meaning("Diameters in mm.") @Between(min = 3, max = 40) List<Double> outerMm,
    @Meaning("Lengths in mm.") @Between(min = 20, max = 400) List<Double> lengthMm) {

  /** Copies the lists. */
  public StrutSizes {
    outerMm = List.copyOf(outerMm);
    lengthMm = List.copyOf(lengthMm);
  }
}
