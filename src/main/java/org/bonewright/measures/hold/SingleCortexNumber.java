package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** How far a side of the zone relies on plate screws that hold in a single cortex. */
final class SingleCortexNumber implements Measure {

  /** What is measured. */
  enum What {
    /** Their share of the screws of a side. */
    SHARE,
    /** Screws across both cortices on a side that has one in a single cortex. */
    BOTH_CORTICES
  }

  /**
   * The screws on one side.
   *
   * @param screws all of them
   * @param bothLeast those that certainly cross both cortices
   * @param bothMost those that may
   */
  private record Side(int screws, int bothLeast, int bothMost) {

    boolean certainlySingle() {
      return bothMost < screws;
    }

    boolean possiblySingle() {
      return bothLeast < screws;
    }

    double percentSingle(int both) {
      return screws == 0 ? 0 : 100.0 * (screws - both) / screws;
    }

    String shown(String where) {
      return where + ": " + bothLeast + " of " + screws + " across both cortices";
    }
  }

  private final What what;

  SingleCortexNumber(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return what == What.SHARE
        ? new Definition(
            "single-cortex-share",
            "Share of screws in a single cortex",
            Definition.percent(),
            "plate screws that cross fewer than two cortices, in percent of the plate screws of the"
                + " side; the side with the larger share counts",
            inputs(),
            "Gautier and Sommer, Injury 2003, for its meaning")
        : new Definition(
            "both-cortex-screws",
            "Screws across both cortices beside single-cortex ones",
            Definition.count(1),
            "plate screws across both cortices on a side of the zone that also relies on a screw in"
                + " a single cortex; the smaller number of such sides counts",
            inputs(),
            "bookkeeping");
  }

  private static List<String> inputs() {
    return List.of(
        "operations/fixation/screws/cortices",
        "operations/fixation/screws/tipBeyondMm",
        "operations/fixation/place");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.plates().isEmpty()) {
      return Plates.noPlate(scene);
    }
    if (ScrewHold.bothSides(scene).isEmpty()) {
      return ScrewHold.unknownSides(scene);
    }
    Side near = side(scene, HoleSide.NEAR);
    Side far = side(scene, HoleSide.FAR);
    String working = near.shown("near side") + ", " + far.shown("far side");
    return what == What.SHARE ? share(scene, near, far, working) : both(scene, near, far, working);
  }

  private static Reading share(Scene scene, Side near, Side far, String working) {
    double min = Math.max(near.percentSingle(near.bothMost), far.percentSingle(far.bothMost));
    double max = Math.max(near.percentSingle(near.bothLeast), far.percentSingle(far.bothLeast));
    return amount(scene, min, max, working);
  }

  private static Reading both(Scene scene, Side near, Side far, String working) {
    List<Side> possible = Stream.of(near, far).filter(Side::possiblySingle).toList();
    if (possible.isEmpty()) {
      return new Reading.None("no screw holds in a single cortex");
    }
    List<Side> certain = possible.stream().filter(Side::certainlySingle).toList();
    double min = possible.stream().mapToInt(Side::bothLeast).min().orElseThrow();
    double max =
        certain.isEmpty()
            ? possible.stream().mapToInt(Side::bothMost).max().orElseThrow()
            : certain.stream().mapToInt(Side::bothMost).min().orElseThrow();
    return amount(scene, min, max, working);
  }

  private static Reading amount(Scene scene, double min, double max, String working) {
    List<MissingFact> missing = new ArrayList<>();
    if (min < max) {
      scene.plates().stream()
          .map(plate -> SingleCortexRelied.asked(scene, plate.plate()))
          .distinct()
          .forEach(missing::add);
    }
    return new Reading.Amount(min, max, Kind.FACT, working, missing);
  }

  private static Side side(Scene scene, HoleSide side) {
    List<Dimension> crossed = new ArrayList<>();
    for (PlacedPlate plate : scene.plates()) {
      plate
          .holes(side)
          .forEach(hole -> plate.screwIn(hole).map(ScrewCortices::of).ifPresent(crossed::add));
    }
    return new Side(
        crossed.size(),
        (int) crossed.stream().filter(cortices -> cortices.min() >= 2).count(),
        (int) crossed.stream().filter(cortices -> cortices.max() >= 2).count());
  }
}
