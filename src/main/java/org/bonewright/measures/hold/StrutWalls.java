package org.bonewright.measures.hold;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Scene;

/**
 * How many walls of struts a plate screw crosses: both walls of one in the canal, the one wall of
 * an onlay strut that lies within 45 degrees of the screw's exit (the angle is our convention); two
 * at the most.
 */
final class StrutWalls {

  private static final Dimension NONE = new Dimension(0, 0, false, "");
  private static final double IN_LINE = 45;

  private final Scene scene;

  StrutWalls(Scene scene) {
    this.scene = scene;
  }

  /**
   * Return the walls that the screw in this hole crosses, 0 to 2; a range where levels are vague. A
   * screw that ends in the near cortex meets no onlay strut on the other side, and may or may not
   * run into one in the canal.
   */
  Dimension crossedBy(PlacedPlate placed, int hole) {
    Dimension reach =
        placed.screwIn(hole).map(ScrewCortices::of).orElse(Dimension.assumed(1, 2, ""));
    List<Strut> struts = scene.construct().of(Strut.class);
    Optional<Dimension> level = placed.level(hole);
    double min = 0;
    double max = 0;
    for (Strut strut : struts) {
      Dimension walls = within(reach, strut, walls(placed.plate(), strut));
      boolean certainly =
          level.isPresent()
              && level.get().min() >= strut.fromMm().max()
              && level.get().max() <= strut.toMm().min();
      boolean possibly =
          level.isEmpty()
              || (level.get().max() >= strut.fromMm().min()
                  && level.get().min() <= strut.toMm().max());
      min += certainly ? walls.min() : 0;
      max += possibly ? walls.max() : 0;
    }
    return struts.isEmpty()
        ? NONE
        : new Dimension(Math.min(2, min), Math.min(2, max), min < max, "");
  }

  private static Dimension within(Dimension reach, Strut strut, Dimension walls) {
    boolean maybeThrough = reach.max() > 1 || strut.where() == Strut.Where.INTRAMEDULLARY;
    double min = reach.min() > 1 ? walls.min() : 0;
    double max = maybeThrough ? walls.max() : 0;
    return new Dimension(min, max, walls.assumed() || min < max, walls.basis());
  }

  private static Dimension walls(Plate plate, Strut strut) {
    if (strut.where() == Strut.Where.INTRAMEDULLARY) {
      return new Dimension(2, 2, false, "");
    }
    Optional<Direction> exit =
        plate.surface().map(surface -> new Direction((surface.degrees() + 180) % 360));
    if (exit.isEmpty() || strut.surface().isEmpty()) {
      return Dimension.assumed(0, 1, "surface of plate or strut not recorded");
    }
    return exit.get().angleTo(strut.surface().get()) <= IN_LINE
        ? new Dimension(1, 1, false, "")
        : NONE;
  }
}
