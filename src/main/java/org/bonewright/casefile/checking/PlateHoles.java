package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.casefile.Plate;

/** The holes that plates have. */
final class PlateHoles {

  private PlateHoles() {}

  /** Return whether none of these plates can have the hole; false when one's holes are unknown. */
  static boolean certainlyLack(List<Fitted<Plate>> plates, int hole) {
    return plates.stream().allMatch(plate -> certainlyLacks(plate.implant(), hole));
  }

  /** Return whether the plate cannot have the hole; false when its number of holes is unknown. */
  static boolean certainlyLacks(Plate plate, int hole) {
    return plate.holes().filter(holes -> hole > holes).isPresent();
  }

  /** Return the plates with their holes, such as {@code op-1/plate-1 (10 holes)}. */
  static String inWords(List<Fitted<Plate>> plates) {
    return plates.isEmpty()
        ? "no plate"
        : plates.stream().map(PlateHoles::inWords).collect(Collectors.joining(", "));
  }

  private static String inWords(Fitted<Plate> plate) {
    return plate.name() + " (" + inWords(plate.implant()) + ")";
  }

  /** Return the number of holes in words. */
  static String inWords(Plate plate) {
    Optional<String> count = plate.holes().map(holes -> Wording.count(holes, "hole"));
    return count.orElse("number of holes unknown");
  }
}
