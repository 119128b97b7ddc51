package org.bonewright.measures.compression;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What the travel of screws or device leaves once the gap is closed, to load the bone. */
final class TravelToSpare implements Measure {

  /** Tension device, mm; from memory. */
  private static final double DEVICE = 20;

  /** One eccentric screw of a large-fragment plate, mm; seen in a textbook entry. */
  private static final double LARGE = 1;

  /** One of a smaller plate, mm: 0.8 to 1.0 from memory; the lesser is on the safe side. */
  private static final double SMALL = 0.8;

  /** A second screw moves the plate only once the first is eased: two a side are of use. */
  private static final double MOST_SCREWS = 4;

  @Override
  public Definition definition() {
    return new Definition(
        "compression-travel-spare",
        "Travel left after closing the gap",
        Definition.signedMillimetres(),
        "travel − gap to close; travel: 1.0 mm for each eccentric screw in a large-fragment plate,"
            + " 0.8 mm in a smaller one, four screws at most, one to four where their number is not"
            + " stated; 20 mm for a tension device",
        List.of(
            "compression-method",
            "operations/compression/screws",
            "operations/fixation/family",
            "gap-before-compression"),
        "Wheeless textbook for 1 mm a screw; the rest from memory");
  }

  @Override
  public Reading take(Scene scene) {
    Reading method = scene.read("compression-method");
    if (!AlongThePlate.possible(method)) {
      return new Reading.None("nothing pulls along a plate");
    }
    if (!method.missing().isEmpty()) {
      return new Reading.Unknown(method.missing());
    }
    List<MissingFact> missing = new ArrayList<>();
    Dimension travel =
        scene.certainly("compression-method", "tension-device")
            ? Dimension.assumed(DEVICE, DEVICE, "tension device")
            : ofScrews(scene, missing);
    Reading gap = scene.read("gap-before-compression");
    missing.addAll(gap.missing());
    if (!(gap instanceof Reading.Amount before)) {
      return new Reading.Unknown(missing);
    }
    return new Reading.Amount(
        travel.min() - before.max(),
        travel.max() - before.min(),
        Kind.ASSUMED,
        "travel " + travel.numbers() + " mm (" + travel.basis() + ") − " + before.shown() + " mm",
        missing);
  }

  private static Dimension ofScrews(Scene scene, List<MissingFact> missing) {
    Optional<Quantity> stated = scene.fixing().compression().flatMap(Compression::screws);
    if (stated.map(q -> !q.isExact()).orElse(true)) {
      missing.add(
          scene.missingOfFixing("compression/screws", "How many eccentric screws press the line?"));
    }
    double least = Math.min(MOST_SCREWS, stated.map(Quantity::min).orElse(1.0));
    double most = Math.min(MOST_SCREWS, stated.map(Quantity::max).orElse(MOST_SCREWS));
    Optional<Plate> plate = scene.mainPlate().map(PlacedPlate::plate);
    Optional<Plate.Family> family = plate.flatMap(Plate::family);
    if (family.isEmpty()) {
      missing.add(
          scene.missing(
              plate.map(p -> "fixation/" + p.id() + "/family").orElse("fixation"),
              "Of which size is the plate: large or small fragment?"));
    }
    String screws =
        (least == most
                ? Dimension.number(least)
                : Dimension.number(least) + " to " + Dimension.number(most))
            + " eccentric";
    return Dimension.assumed(
        least * family.map(TravelToSpare::perScrew).orElse(SMALL),
        most * family.map(TravelToSpare::perScrew).orElse(LARGE),
        screws);
  }

  private static double perScrew(Plate.Family family) {
    return switch (family) {
      case LARGE_FRAGMENT_BROAD,
          LARGE_FRAGMENT_BROAD_LOCKING,
          LARGE_FRAGMENT_NARROW,
          LARGE_FRAGMENT_NARROW_LOCKING ->
          LARGE;
      case SMALL_FRAGMENT,
          SMALL_FRAGMENT_LOCKING,
          RECONSTRUCTION,
          ONE_THIRD_TUBULAR,
          SEMI_TUBULAR,
          SHAFT_STRENGTH_2_7 ->
          SMALL;
    };
  }
}
