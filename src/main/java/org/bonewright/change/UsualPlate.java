package org.bonewright.change;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Plate;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * The plate that a bone commonly gets; no source.
 *
 * @param family its size
 * @param surfaces the surfaces on which it is commonly laid, the first before the others
 */
record UsualPlate(Plate.Family family, List<String> surfaces) {

  /** What an open approach strips of the circumference, in percent; common practice, no source. */
  static final int STRIPPED = 30;

  private static final double LONGEST_SHARE = 0.7;
  private static final int SHORTEST = 8;

  private static final Map<BoneName, UsualPlate> OF =
      Map.of(
          BoneName.FEMUR,
          new UsualPlate(
              Plate.Family.LARGE_FRAGMENT_BROAD_LOCKING, List.of("lateral", "anterolateral")),
          BoneName.TIBIA,
          new UsualPlate(Plate.Family.LARGE_FRAGMENT_NARROW_LOCKING, List.of("medial", "lateral")),
          BoneName.HUMERUS,
          new UsualPlate(
              Plate.Family.LARGE_FRAGMENT_NARROW_LOCKING, List.of("anterolateral", "posterior")),
          BoneName.RADIUS,
          new UsualPlate(Plate.Family.SMALL_FRAGMENT_LOCKING, List.of("anterior", "lateral")),
          BoneName.ULNA,
          new UsualPlate(Plate.Family.SMALL_FRAGMENT_LOCKING, List.of("posterior", "medial")),
          BoneName.CLAVICLE,
          new UsualPlate(Plate.Family.SMALL_FRAGMENT_LOCKING, List.of("anterior")));

  /** Return the one for the bone of a case. */
  static Optional<UsualPlate> of(Setting setting) {
    return setting.bone().map(OF::get);
  }

  /**
   * Return such plates of the shelf, the shortest first, that take up to seven tenths of the bone.
   *
   * @param locking whether their screws lock
   */
  Stream<FreshPlate> kept(Setting setting, boolean locking) {
    double longest = LONGEST_SHARE * setting.lengthMm().orElse(0);
    return setting.shelf().plates(family).stream()
        .flatMap(
            sizes ->
                sizes.holes().stream()
                    .filter(holes -> holes >= SHORTEST && holes % 2 == 0)
                    .filter(holes -> holes * family.spacingMm() <= longest)
                    .sorted()
                    .flatMap(
                        holes ->
                            surfaces.stream()
                                .map(JsonNodeFactory.instance::stringNode)
                                .map(s -> new FreshPlate(sizes, holes, s, locking))));
  }
}
