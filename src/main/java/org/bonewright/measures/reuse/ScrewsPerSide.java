package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.hold.ScrewHold;

/** How many new plate screws on one side of the zone stand to old holes in one manner. */
final class ScrewsPerSide implements Measure {

  private final Definition definition;
  private final Set<Bite.Contact> counted;
  private final boolean fewest;

  private ScrewsPerSide(Definition definition, Set<Bite.Contact> counted, boolean fewest) {
    this.definition = definition;
    this.counted = counted;
    this.fewest = fewest;
  }

  /** Return the measure of screws in fresh bone, on the side that has fewest. */
  static Measure fresh() {
    return new ScrewsPerSide(
        new Definition(
            "fresh-screws-weaker-side",
            "Screws in fresh bone, weaker side",
            Definition.count(1),
            "new plate screws whose thread meets no old hole in any cortex that it crosses; the"
                + " side of the zone with fewer counts; a screw that stripped does not",
            List.of("operations/fixation/screws", "operations/fixation/place"),
            "common practice, no source"),
        EnumSet.noneOf(Bite.Contact.class),
        true);
  }

  /** Return the measure of screws with solid bone around them, on the side that has fewest. */
  static Measure clear() {
    return new ScrewsPerSide(
        new Definition(
            "clear-screws-weaker-side",
            "Screws clear of old holes, weaker side",
            Definition.count(1),
            "new plate screws with at least one larger diameter of bone, edge to edge on either"
                + " cortex, between them and every old hole; the side of the zone with fewer counts;"
                + " a screw that stripped does not",
            List.of("operations/fixation/screws", "operations/fixation/place"),
            "common practice; one diameter is our convention"),
        EnumSet.of(Bite.Contact.FRESH),
        true);
  }

  /** Return the measure of screws close to old holes, on the side that has most. */
  static Measure near() {
    return new ScrewsPerSide(
        new Definition(
            "screws-near-old-holes",
            "Screws close to old holes, worse side",
            Definition.count(1),
            "new plate screws with less than one larger diameter of bone between them and an old"
                + " hole, or overlapping it; a screw that goes into an old hole again is not"
                + " counted; the side of the zone with more counts",
            List.of("operations/fixation/screws", "operations/fixation/place"),
            "common practice, no source"),
        EnumSet.of(Bite.Contact.NEAR, Bite.Contact.OVERLAPPED),
        false);
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    if (NewScrew.plates(scene).isEmpty()) {
      return NewScrew.noPlate(scene);
    }
    Optional<MissingFact> untold = NewScrew.untold(scene);
    if (untold.isPresent()) {
      return Reading.unknown(untold.get());
    }
    List<NewScrew> screws = NewScrew.all(scene);
    if (!NewScrew.sidesKnown(screws)) {
      return ScrewHold.unknownSides(scene);
    }
    int[] near = count(screws, HoleSide.NEAR);
    int[] far = count(screws, HoleSide.FAR);
    int min = fewest ? Math.min(near[0], far[0]) : Math.max(near[0], far[0]);
    int max = fewest ? Math.min(near[1], far[1]) : Math.max(near[1], far[1]);
    return new Reading.Amount(
        min,
        max,
        Kind.FACT,
        "near side " + shown(near) + ", far side " + shown(far),
        min == max ? List.of() : missing(scene));
  }

  /** Return how many there are at least and at most. */
  private int[] count(List<NewScrew> screws, HoleSide side) {
    int[] count = {0, 0};
    for (NewScrew screw : screws) {
      boolean holds = !screw.row().state().equals(Optional.of(ScrewRow.State.STRIPPED));
      if (screw.side() == side && (holds || !fewest)) {
        count[0] += certainly(screw.bite()) ? 1 : 0;
        count[1] += possibly(screw.bite()) ? 1 : 0;
      }
    }
    return count;
  }

  private boolean certainly(Bite bite) {
    if (counted.isEmpty() && bite.contact() == Bite.Contact.REUSED) {
      return false;
    }
    return counted.isEmpty()
        ? bite.near().min() >= 1 && bite.far().map(share -> share.min() >= 1).orElse(true)
        : counted.contains(bite.contact());
  }

  private boolean possibly(Bite bite) {
    if (counted.isEmpty() && bite.contact() == Bite.Contact.REUSED) {
      return false;
    }
    return counted.isEmpty()
        ? bite.near().max() >= 1 && bite.far().map(share -> share.max() >= 1).orElse(true)
        : counted.contains(bite.contact()) || bite.contact() == Bite.Contact.UNSURE;
  }

  private static String shown(int[] count) {
    return count[0] == count[1] ? "" + count[0] : count[0] + " to " + count[1];
  }

  private static List<MissingFact> missing(Scene scene) {
    List<MissingFact> missing = new ArrayList<>(HoleMap.gaps(scene));
    if (missing.isEmpty()) {
      missing.add(HoleMap.placeOfNewPlate(scene));
    }
    return missing;
  }
}
