package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * Makes the sketch of a nail. Our conventions: a bolt whose direction is not told runs from side to
 * side, as most do; a bore that is not told is up to half of the nail, a bolt whose diameter is not
 * told 0.4 to 0.5 of it (both from memory). The canal holds a nail in the middle half of the bone
 * only, where it is narrow: next to the line, and half way from there to the nearest bolt or to the
 * end of the narrow part. What is not told of reaming is up to 1.5 mm wider than the nail.
 */
final class NailMaker {

  private static final double SIDEWAYS = 90;
  private static final double WIDEST_BORE = 0.5;
  private static final double THINNEST_BOLT = 0.4;
  private static final double THICKEST_BOLT = 0.5;
  private static final double REAMED_WIDER = 1.5;
  private static final double MOUTH = 2;

  private final Scene scene;
  private final Nail nail;
  private final double facing;
  private final List<MissingFact> missing = new ArrayList<>();

  /**
   * Prepare the sketch.
   *
   * @param facing direction around the bone from which azimuths are counted, in degrees
   */
  NailMaker(Scene scene, Nail nail, double facing) {
    this.scene = scene;
    this.nail = nail;
    this.facing = facing;
  }

  /** Return what is missing, once the nail was asked for. */
  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  /** Return why the model does not know such a nail; empty where it does. */
  Optional<String> outside(boolean gap) {
    if (nail.locking().equals(Optional.of(Nail.Locking.UNLOCKED))
        || nail.bolts().map(NailMaker::oneEndFree).orElse(false)) {
      return Optional.of("a nail without bolts at one end: what turns it is not modelled");
    }
    return gap && nail.locking().equals(Optional.of(Nail.Locking.DYNAMIC))
        ? Optional.of("a dynamic nail lets the gap close; what follows is not modelled")
        : Optional.empty();
  }

  private static boolean oneEndFree(List<Bolt> bolts) {
    return bolts.stream().map(Bolt::end).distinct().count() < 2;
  }

  /** Return the nail; empty where something is missing that has no usual range. */
  Optional<NailSketch> nail() {
    Optional<Dimension> centre = scene.zone().centre();
    if (centre.isEmpty()) {
      missing.add(ZoneQuestion.of(scene));
    }
    if (nail.outerMm().isEmpty()) {
      ask("outerMm", "What is the diameter of " + nail.id() + ", in mm?");
    }
    boolean levels =
        nail.bolts().map(all -> all.stream().allMatch(b -> b.atMm().isPresent())).orElse(false);
    if (!levels) {
      ask(
          "bolts",
          "How many bolts has " + nail.id() + " at each end, at which level and of what diameter?");
    }
    return missing.isEmpty() ? Optional.of(sketch(centre.orElseThrow())) : Optional.empty();
  }

  private NailSketch sketch(Dimension centre) {
    Dimension outer = stated(nail.outerMm().orElseThrow());
    List<NailSketch.Bolt> bolts = new ArrayList<>();
    for (Bolt bolt : nail.bolts().orElse(List.of())) {
      Dimension at = stated(bolt.atMm().orElseThrow()).minus(centre);
      double side = bolt.plane().map(Direction::degrees).orElse(SIDEWAYS);
      bolts.add(new NailSketch.Bolt(at, side - facing, diameter(bolt, outer), slides(bolt)));
    }
    return new NailSketch(
        nail.id(),
        Metal.of(nail.material()),
        outer,
        bore(outer),
        bolts,
        rests(centre.middle(), outer, bolts));
  }

  private Dimension bore(Dimension outer) {
    return nail.boreMm()
        .map(
            bore ->
                new Dimension(
                    Math.min(0.9, bore.min() / outer.max()),
                    Math.min(0.9, bore.max() / outer.min()),
                    false,
                    "stated"))
        .orElseGet(() -> Dimension.assumed(0, WIDEST_BORE, "bore not told"));
  }

  private static Dimension diameter(Bolt bolt, Dimension outer) {
    return bolt.diameterMm()
        .map(NailMaker::stated)
        .orElseGet(
            () ->
                Dimension.assumed(
                    THINNEST_BOLT * outer.min(), THICKEST_BOLT * outer.max(), "usual bolt"));
  }

  /** A dynamic nail has its slot at the end at which it was put in. */
  private boolean slides(Bolt bolt) {
    Bolt.End slotted =
        nail.entry().equals(Optional.of(Nail.Entry.RETROGRADE)) ? Bolt.End.FAR : Bolt.End.NEAR;
    return nail.locking().equals(Optional.of(Nail.Locking.DYNAMIC)) && bolt.end() == slotted;
  }

  private List<NailSketch.Rest> rests(
      double centre, Dimension outer, Collection<NailSketch.Bolt> bolts) {
    List<NailSketch.Rest> rests = new ArrayList<>();
    double length = scene.bone().length().middle();
    for (int side = -1; side <= 1; side += 2) {
      double narrow = side < 0 ? centre - length / 4 : length * 3 / 4 - centre;
      double reach = Math.min(narrow, nearest(bolts, side).orElse(narrow));
      if (reach > 2 * MOUTH) {
        rests.add(rest(centre, side * MOUTH, outer));
        rests.add(rest(centre, side * reach / 2, outer));
      }
    }
    return rests;
  }

  private static OptionalDouble nearest(Collection<NailSketch.Bolt> bolts, int side) {
    return bolts.stream().mapToDouble(bolt -> side * bolt.at().middle()).filter(at -> at > 0).min();
  }

  private NailSketch.Rest rest(double centre, double at, Dimension outer) {
    Dimension canal = scene.bone().canalAt(centre + at);
    Dimension reamed =
        nail.reamedMm()
            .map(NailMaker::stated)
            .orElseGet(() -> Dimension.assumed(0, outer.max() + REAMED_WIDER, "reaming not told"));
    return new NailSketch.Rest(new Dimension(at, at, false, ""), canal.atLeast(reamed));
  }

  private static Dimension stated(Quantity quantity) {
    return Dimension.stated(quantity, "stated");
  }

  private void ask(String field, String question) {
    missing.add(scene.missing("fixation/" + nail.id() + "/" + field, question));
  }
}
