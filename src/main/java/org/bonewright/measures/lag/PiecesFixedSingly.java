package org.bonewright.measures.lag;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Cerclage;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many things hold single pieces of the broken zone in place. */
final class PiecesFixedSingly implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "pieces-fixed-singly",
        "Pieces fixed one by one",
        Definition.count(1),
        "lag screws put in, and wires or cables that hold a wedge. None for a segmental fracture,"
            + " where each of two lines may have its own",
        List.of("operations/fixation", "two-lines-apart"),
        "bookkeeping; that each stands for a piece is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("two-lines-apart", "yes")) {
      return new Reading.None("two lines apart");
    }
    int screws = LagScrews.of(scene).size();
    List<Cerclage> wires =
        scene.subject().steps().stream()
            .flatMap(step -> step.fixation().stream().flatMap(List::stream))
            .filter(Cerclage.class::isInstance)
            .map(Cerclage.class::cast)
            .toList();
    long sure =
        wires.stream()
            .filter(w -> w.holds().filter(h -> h == Cerclage.Holds.WEDGE).isPresent())
            .count();
    long perhaps = wires.stream().filter(wire -> wire.holds().isEmpty()).count();
    double most = LagScrews.told(scene) ? screws + sure + perhaps : Double.POSITIVE_INFINITY;
    return Reading.number(
        new Dimension(screws + sure, most, false, ""),
        screws + " lag screws, " + sure + " wires round a wedge",
        LagScrews.told(scene)
            ? scene.missing("fixation/cerclage/holds", "What do the wires or cables hold?")
            : LagScrews.untold(scene));
  }
}
