package org.bonewright.measures.reuse;

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
import org.bonewright.measures.hold.ScrewHold;
import org.bonewright.measures.plate.Plates;

/** What old holes take from the hold of a side, and what is left on the sides that lose. */
final class OldHoleCost implements Measure {

  private final Definition definition;
  private final Predicate<ScrewHold> judged;
  private final Function<ScrewHold, Dimension> amount;
  private final boolean largest;

  private OldHoleCost(
      Definition definition,
      Predicate<ScrewHold> judged,
      Function<ScrewHold, Dimension> amount,
      boolean largest) {
    this.definition = definition;
    this.judged = judged;
    this.amount = amount;
    this.largest = largest;
  }

  /** Return the measure of cortices lost, on the side that loses most. */
  static Measure lost() {
    return new OldHoleCost(
        new Definition(
            "cortices-lost-to-old-holes",
            "Cortices lost to old holes",
            Definition.count(0),
            "cortices that plate screws cross and do not hold in, since old holes took the bone:"
                + " half for a thread engaged from 0.5 to 0.9, one below 0.5 and in the same hole"
                + " again; the side that loses more counts",
            List.of("operations/fixation/screws", "operations/fixation/place"),
            "the discount is our convention; its direction is established"),
        side -> true,
        ScrewHold::lost,
        true);
  }

  /** Return the measure of cortices left, on sides that lose some. */
  static Measure cortices() {
    return new OldHoleCost(
        new Definition(
            "cortices-where-holes-cost",
            "Cortices left where old holes cost hold",
            Definition.count(0),
            "cortices held, as in cortices-weaker-side, on those sides alone on which a screw loses"
                + " hold to an old hole",
            List.of("operations/fixation/screws", "operations/fixation/place"),
            "the discount is our convention; its direction is established"),
        side -> side.conventional() || !side.locking(),
        ScrewHold::credits,
        false);
  }

  /** Return the measure of locking screws left, on locked sides that lose some. */
  static Measure lockingScrews() {
    return new OldHoleCost(
        new Definition(
            "locking-screws-where-holes-cost",
            "Locking screws left where old holes cost hold",
            Definition.count(0.5),
            "effective locking screws, as in locking-screws-weaker-side, on those sides alone on"
                + " which a screw loses hold to an old hole",
            List.of("operations/fixation/screws", "operations/fixation/place", "bone-grade"),
            "the discount is our convention; its direction is established"),
        side -> side.locking() && !side.conventional(),
        ScrewHold::effectiveLocking,
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
      return ScrewHold.unknownSides(scene);
    }
    Extremes found = new Extremes();
    List<String> parts = new ArrayList<>();
    List<MissingFact> missing = new ArrayList<>();
    for (ScrewHold side : sides.get()) {
      boolean counts = largest || side.lost().max() > 0;
      if (judged.test(side) && counts) {
        found.add(amount.apply(side), largest || side.lost().min() > 0);
        parts.add(side.working() + " = " + amount.apply(side).numbers());
        side.missing().stream().filter(m -> !missing.contains(m)).forEach(missing::add);
      }
    }
    Optional<Dimension> reading = largest ? found.most() : found.least();
    if (reading.isEmpty()) {
      return new Reading.None("no such side loses hold to an old hole");
    }
    Dimension number = reading.get();
    if (missing.isEmpty()) {
      missing.add(HoleMap.placeOfNewPlate(scene));
    }
    return new Reading.Amount(
        number.min(),
        number.max(),
        number.assumed() ? Kind.ASSUMED : Kind.FACT,
        String.join("; ", parts),
        number.min() == number.max() ? List.of() : missing);
  }
}
