package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/** Makes the sketch of a nail. */
final class NailMaker {

  /** Usual bores of solid and cannulated nails as a share of the diameter; from memory. */
  private static final double WIDEST_BORE = 0.5;

  private final Scene scene;
  private final Nail nail;
  private final List<MissingFact> missing = new ArrayList<>();

  NailMaker(Scene scene, Nail nail) {
    this.scene = scene;
    this.nail = nail;
  }

  /** Return what is missing, once the nail was asked for. */
  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  /** Return the nail; empty where something is missing that has no usual range. */
  Optional<NailSketch> nail() {
    Optional<Quantity> outer = nail.outerMm();
    Optional<Dimension> centre = scene.zone().centre();
    if (outer.isEmpty()) {
      ask("outerMm", "What is the diameter of " + nail.id() + ", in mm?");
    }
    if (centre.isEmpty()) {
      missing.add(
          scene.missingInCase(
              "injury/zone", "From which level to which is the bone broken or not united, in mm?"));
    }
    if (nail.bolts().isEmpty()) {
      ask("bolts", "Which bolts has " + nail.id() + ", and at which level?");
    }
    if (!missing.isEmpty() || outer.isEmpty() || centre.isEmpty()) {
      return Optional.empty();
    }
    List<NailSketch.Bolt> bolts = bolts(centre.get());
    if (!missing.isEmpty()) {
      return Optional.empty();
    }
    Dimension wide = Dimension.stated(outer.get(), "stated");
    return Optional.of(
        new NailSketch(
            Metal.of(nail.material()),
            wide,
            nail.boreMm()
                .map(bore -> Dimension.stated(bore, "stated"))
                .orElseGet(() -> Dimension.assumed(0, WIDEST_BORE * wide.min(), "bore not told")),
            bolts));
  }

  private List<NailSketch.Bolt> bolts(Dimension centre) {
    List<NailSketch.Bolt> bolts = new ArrayList<>();
    for (Bolt bolt : nail.bolts().orElse(List.of())) {
      if (bolt.state().equals(Optional.of(ScrewRow.State.BROKEN))) {
        continue;
      }
      if (bolt.atMm().isEmpty()) {
        ask("bolts/atMm", "At which levels lie the bolts of " + nail.id() + ", in mm?");
        return bolts;
      }
      bolts.add(
          new NailSketch.Bolt(
              Dimension.stated(bolt.atMm().get(), "stated").minus(centre),
              bolt.diameterMm()
                  .map(d -> Dimension.stated(d, "stated"))
                  .orElseGet(() -> Dimension.assumed(4, 5, "usual bolt")),
              bolt.plane().map(Direction::degrees).orElse(0.0),
              false));
    }
    return bolts;
  }

  private void ask(String field, String question) {
    missing.add(scene.missing("fixation/" + nail.id() + "/" + field, question));
  }
}
