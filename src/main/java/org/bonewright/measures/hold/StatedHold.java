package org.bonewright.measures.hold;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Scene;

/**
 * What a record says of the hold of the only plate by number, where it does not name the holes:
 * "fewer than four cortices on a side".
 *
 * @param cortices cortices that the screws grip on the side that has fewer
 * @param conventional whether its holes take conventional screws only
 */
record StatedHold(Quantity cortices, boolean conventional) {

  /** Return what is stated; nothing where screws are told by hole, which says more. */
  static Optional<StatedHold> in(Scene scene) {
    List<Plate> plates = scene.construct().of(Plate.class);
    return plates.size() == 1 && plates.get(0).screws().isEmpty()
        ? plates.get(0).fewestCortices().map(n -> new StatedHold(n, conventional(plates.get(0))))
        : Optional.empty();
  }

  private static boolean conventional(Plate plate) {
    return plate
        .family()
        .map(
            family ->
                switch (family) {
                  case LARGE_FRAGMENT_BROAD, LARGE_FRAGMENT_NARROW, SMALL_FRAGMENT, SEMI_TUBULAR ->
                      true;
                  default -> false;
                })
        .orElse(false);
  }
}
