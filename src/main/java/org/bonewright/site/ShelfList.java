package org.bonewright.site;

import java.util.List;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.shelf.NailSizes;
import org.bonewright.shelf.PlateSizes;
import org.bonewright.shelf.Shelf;
import org.bonewright.shelf.StrutSizes;

/**
 * What a site keeps, as it was written. It changes no verdict: only what other drawings of a plan
 * are offered.
 *
 * @param plates plates, each size once
 * @param nails nails, each bone once
 * @param struts struts for the canal, each origin once
 * @param lagScrewMm thread diameters of lag screws in mm
 * @param plugs whether there are plugs for empty holes of locking plates
 * @param tensionDevice whether there is a device that presses a line from the end of the plate
 */
@Meaning("The implants that are kept here; what is not listed is not kept. No verdict hangs on it.")
public record ShelfList(
    @Meaning("Plates, each size once.") List<PlateSizes> plates,
    @Meaning("Locked nails, each bone once.") List<NailSizes> nails,
    @Meaning("Struts for the canal, each origin once.") List<StrutSizes> struts,
    @Meaning("Thread diameters of lag screws in mm.") @Between(min = 1, max = 10)
        List<Double> lagScrewMm,
    @Meaning("Whether there are plugs for the empty holes of locking plates.") boolean plugs,
    @Meaning("Whether there is a device that presses a line from the end of the plate.")
        boolean tensionDevice) {

  /** Return it as the shelf of a site. */
  Shelf of(String site) {
    return new Shelf(site, plates, nails, struts, lagScrewMm, plugs, tensionDevice);
  }
}
