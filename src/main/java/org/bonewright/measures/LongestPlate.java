package org.bonewright.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;

/**
 * Of several plates the longest is judged, and nobody knows which it is where lengths are ranges or
 * not told. Then each plate that may be the longest is taken as such, and what is read is one of
 * the readings that this gives.
 */
final class LongestPlate {

  private LongestPlate() {}

  /**
   * Return the plates that may be the longest, in the order of the file; of plates that are known
   * to be equally long the first.
   */
  static List<PlacedPlate> candidates(List<PlacedPlate> plates) {
    List<PlacedPlate> left = new ArrayList<>();
    for (int i = 0; i < plates.size(); i++) {
      PlacedPlate plate = plates.get(i);
      boolean asLongBefore =
          plates.subList(0, i).stream()
              .anyMatch(
                  earlier -> exact(earlier).isPresent() && exact(earlier).equals(exact(plate)));
      if (!asLongBefore && plates.stream().noneMatch(other -> shortest(other) > longest(plate))) {
        left.add(plate);
      }
    }
    return left;
  }

  /** Return these plates with one of them first and the others by length, the longest first. */
  static List<PlacedPlate> ordered(List<PlacedPlate> plates, PlacedPlate first) {
    return Stream.concat(
            Stream.of(first),
            plates.stream()
                .filter(plate -> plate != first)
                .sorted((a, b) -> Double.compare(middle(b), middle(a))))
        .toList();
  }

  /**
   * Return what would tell which plate is the longest: the length of each of which it is a range.
   */
  static List<MissingFact> lengths(Scene scene) {
    return scene.plates().stream()
        .filter(plate -> exact(plate).isEmpty())
        .map(plate -> plate.plate().id())
        .map(id -> scene.missing("fixation/" + id + "/lengthMm", "How long is " + id + ", in mm?"))
        .toList();
  }

  private static double shortest(PlacedPlate plate) {
    return plate.length().map(Dimension::min).orElse(0.0);
  }

  private static double longest(PlacedPlate plate) {
    return plate.length().map(Dimension::max).orElse(Double.POSITIVE_INFINITY);
  }

  private static double middle(PlacedPlate plate) {
    return plate.length().map(Dimension::middle).orElse(0.0);
  }

  private static Optional<Double> exact(PlacedPlate plate) {
    return plate.length().filter(l -> l.min() == l.max()).map(Dimension::min);
  }

  /**
   * Return what is read where it is not known which plate is the longest.
   *
   * @param each the reading with each of them taken as the longest
   * @param lengths the facts that would tell which it is; asked for only where the readings differ
   */
  static Reading oneOf(List<Reading> each, List<MissingFact> lengths) {
    boolean alike =
        each.stream()
            .allMatch(
                reading ->
                    reading.equals(each.get(0))
                        || (reading instanceof Reading.None
                            && each.get(0) instanceof Reading.None));
    if (alike) {
      return each.get(0);
    }
    MissingFact[] which = lengths.toArray(MissingFact[]::new);
    if (each.stream().allMatch(Reading.Amount.class::isInstance)) {
      return Reading.Amount.oneOf(each.stream().map(Reading.Amount.class::cast).toList(), which);
    }
    if (each.stream().allMatch(Reading.Word.class::isInstance)) {
      return Reading.Word.oneOf(each.stream().map(Reading.Word.class::cast).toList(), which);
    }
    return new Reading.Unknown(Reading.missingOf(each, which));
  }
}
