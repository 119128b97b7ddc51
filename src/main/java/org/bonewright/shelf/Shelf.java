package org.bonewright.shelf;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Plate;

/**
 * What a hospital keeps. What is not listed is not kept.
 *
 * @param name whose shelf it is
 * @param plates plates, each size once
 * @param nails nails, each bone once
 * @param struts struts for the canal, each origin once
 * @param lagScrewMm thread diameters of lag screws in mm
 * @param plugs whether there are plugs for the empty holes of locking plates
 * @param tensionDevice whether there is a device that presses a line from the end of the plate
 */
public record Shelf(
    String name,
    List<PlateSizes> plates,
    List<NailSizes> nails,
    List<StrutSizes> struts,
    List<Double> lagScrewMm,
    boolean plugs,
    boolean tensionDevice) {

  /** Copies the lists. */
  public Shelf {
    plates = List.copyOf(plates);
    nails = List.copyOf(nails);
    struts = List.copyOf(struts);
    lagScrewMm = List.copyOf(lagScrewMm);
  }

  /** Return the plates of a size, if any are kept. */
  public Optional<PlateSizes> plates(Plate.Family family) {
    return plates.stream().filter(sizes -> sizes.family() == family).findFirst();
  }

  /** Return the nails for a bone, if any are kept. */
  public Optional<NailSizes> nails(BoneName bone) {
    return nails.stream().filter(sizes -> sizes.bone() == bone).findFirst();
  }
}
