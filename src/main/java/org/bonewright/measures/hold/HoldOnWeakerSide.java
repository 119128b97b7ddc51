package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** The hold of the plate screws on the weaker of the sides that are held in one manner. */
final class HoldOnWeakerSide implements Measure {

  private final Definition definition;
  private final Predicate<ScrewHold> counted;
  private final Function<ScrewHold, Dimension> amount;
  private final String noSide;
  private final boolean byNumber;

  private HoldOnWeakerSide(
      Definition definition,
      Predicate<ScrewHold> counted,
      Function<ScrewHold, Dimension> amount,
      String noSide,
      boolean byNumber) {
    this.definition = definition;
    this.counted = counted;
    this.amount = amount;
    this.noSide = noSide;
    this.byNumber = byNumber;
  }

  /** Return the measure of cortices held, over sides with a conventional screw. */
  static Measure cortices() {
    return new HoldOnWeakerSide(
        new Definition(
            "cortices-weaker-side",
            "Cortices on the weaker side",
            Definition.count(0),
            "cortices crossed by the thread of plate screws in fresh bone, added up for each side"
                + " of the zone that holds a conventional or no screw; the smaller sum counts. A"
                + " stripped screw and one in an old hole of the same size count nothing. Where the"
                + " record gives the number and not the holes, that number",
            List.of(
                "operations/fixation/screws",
                "operations/fixation/place",
                "operations/fixation/fewestCortices"),
            "usual way of counting; what old holes cost is our convention"),
        hold -> hold.conventional() || !hold.locking(),
        ScrewHold::credits,
        "every side is held by locking screws alone",
        true);
  }

  /** Return the measure of effective locking screws, over sides held by locking screws alone. */
  static Measure lockingScrews() {
    return new HoldOnWeakerSide(
        new Definition(
            "locking-screws-weaker-side",
            "Locking screws on the weaker locked side",
            Definition.count(0.5),
            "locking screws that hold in both cortices, on each side held by locking screws alone;"
                + " one that holds in a single cortex counts half in good bone, nothing in poor bone,"
                + " and in full beside a nail that holds the bone; the smaller sum counts",
            List.of(
                "operations/fixation/screws",
                "operations/fixation/place",
                "bone-grade",
                "nail-used"),
            "common practice; the half count is our convention"),
        hold -> hold.locking() && !hold.conventional(),
        ScrewHold::effectiveLocking,
        "no side is held by locking screws alone",
        false);
  }

  /** Return the measure of effective locking screws over both sides, whatever else they hold. */
  static Measure lockingEachSide() {
    return new HoldOnWeakerSide(
        new Definition(
            "locking-screws-each-side",
            "Locking screws on the weaker side",
            Definition.count(0.5),
            "effective locking screws, counted as on a locked side, on each side of the zone; a side"
                + " without any counts zero; the smaller sum counts",
            List.of(
                "operations/fixation/screws",
                "operations/fixation/place",
                "bone-grade",
                "nail-used"),
            "common practice; the half count is our convention"),
        hold -> true,
        ScrewHold::effectiveLocking,
        "no side",
        false);
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.plates().isEmpty()) {
      return Plates.noPlate(scene);
    }
    Optional<List<ScrewHold>> sides = ScrewHold.bothSides(scene);
    if (sides.isEmpty()) {
      return byNumber ? stated(scene) : ScrewHold.unknownSides(scene);
    }
    List<ScrewHold> judged = sides.get().stream().filter(counted).toList();
    if (judged.isEmpty()) {
      return new Reading.None(noSide);
    }
    double min = judged.stream().mapToDouble(h -> amount.apply(h).min()).min().orElseThrow();
    double max = judged.stream().mapToDouble(h -> amount.apply(h).max()).min().orElseThrow();
    List<String> parts = new ArrayList<>();
    List<MissingFact> missing = new ArrayList<>();
    boolean assumed = false;
    for (ScrewHold hold : judged) {
      parts.add(hold.working() + " = " + amount.apply(hold).numbers());
      assumed |= amount.apply(hold).assumed();
      hold.missing().stream().filter(m -> !missing.contains(m)).forEach(missing::add);
    }
    return new Reading.Amount(
        min,
        max,
        assumed ? Kind.ASSUMED : Kind.FACT,
        String.join("; ", parts),
        min == max ? List.of() : missing);
  }

  /**
   * Where the holes are not told, the number that the record gives, if the screws are of a kind.
   */
  private static Reading stated(Scene scene) {
    return StatedHold.in(scene)
        .filter(StatedHold::conventional)
        .<Reading>map(
            hold ->
                new Reading.Amount(
                    hold.cortices().min(),
                    hold.cortices().max(),
                    Kind.FACT,
                    "as the record has it for the side that holds less",
                    ScrewHold.unknownSides(scene).missing()))
        .orElseGet(() -> ScrewHold.unknownSides(scene));
  }
}
