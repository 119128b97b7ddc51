package org.bonewright.shelf;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Material;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;

/**
 * The sizes that are commonly kept, for a hospital that has not listed its own: common practice, no
 * source, from memory.
 */
public final class UsualShelf {

  private static final Shelf SHELF =
      new Shelf(
          "usual sizes (common practice, no source)",
          List.of(
              steel(Plate.Family.ONE_THIRD_TUBULAR, 3, 10),
              steel(Plate.Family.SHAFT_STRENGTH_2_7, 5, 12),
              steel(Plate.Family.RECONSTRUCTION, 5, 16),
              steel(Plate.Family.SMALL_FRAGMENT, 4, 14),
              steel(Plate.Family.SMALL_FRAGMENT_LOCKING, 4, 14),
              steel(Plate.Family.LARGE_FRAGMENT_NARROW, 4, 16),
              steel(Plate.Family.LARGE_FRAGMENT_NARROW_LOCKING, 4, 16),
              steel(Plate.Family.LARGE_FRAGMENT_BROAD, 6, 18),
              steel(Plate.Family.LARGE_FRAGMENT_BROAD_LOCKING, 6, 18)),
          List.of(
              titanium(BoneName.FEMUR, 9, 15, 300, 480, List.of(5.0, 6.0)),
              titanium(BoneName.TIBIA, 8, 13, 255, 420, List.of(4.0, 5.0)),
              titanium(BoneName.HUMERUS, 7, 11, 180, 320, List.of(4.0, 5.0))),
          List.of(
              new StrutSizes(
                  Strut.Origin.ALLOGRAFT, upTo(7, 14, 1), List.of(60.0, 80.0, 100.0, 120.0))),
          List.of(2.7, 3.5, 4.5),
          true,
          true);

  private UsualShelf() {}

  /** Return it. */
  public static Shelf shelf() {
    return SHELF;
  }

  private static PlateSizes steel(Plate.Family family, int fewest, int most) {
    return new PlateSizes(
        family, Material.STEEL_COLD_WORKED, IntStream.rangeClosed(fewest, most).boxed().toList());
  }

  private static NailSizes titanium(
      BoneName bone, int thinnest, int thickest, int from, int to, List<Double> bolts) {
    return new NailSizes(
        bone, Material.TITANIUM_ALLOY, upTo(thinnest, thickest, 1), upTo(from, to, 15), bolts);
  }

  private static List<Double> upTo(int from, int to, int step) {
    return DoubleStream.iterate(from, mm -> mm <= to, mm -> mm + step).boxed().toList();
  }
}
