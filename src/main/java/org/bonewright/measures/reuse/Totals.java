package org.bonewright.measures.reuse;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What all operations together, up to the end of the subject, took from the bone. */
final class Totals implements Measure {

  private final boolean holes;

  private Totals(boolean holes) {
    this.holes = holes;
  }

  static Measure holes() {
    return new Totals(true);
  }

  static Measure shortening() {
    return new Totals(false);
  }

  @Override
  public Definition definition() {
    return holes
        ? new Definition(
            "holes-drilled-total",
            "Holes drilled so far",
            Definition.count(1),
            "every screw, bolt and pin that was ever put in, this operation's own included, less"
                + " those in bone that was cut out",
            List.of("operations/fixation", "operations/resection"),
            "bookkeeping")
        : new Definition(
            "shortened-total",
            "Shortened so far",
            Definition.millimetres(),
            "sum over all operations, this one included, of resected length less the gap that was"
                + " left",
            List.of("operations/resection", "operations/reduction"),
            "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return holes ? drilled(scene) : shortened(scene);
  }

  private static Reading drilled(Scene scene) {
    List<MissingFact> gaps = HoleMap.gapsAtEnd(scene);
    int count = Holes.in(scene).all().size();
    return gaps.isEmpty()
        ? Reading.number(count, count + " in the bone")
        : new Reading.Unknown(gaps);
  }

  private static Reading shortened(Scene scene) {
    List<MissingFact> missing =
        scene.subject().upToHere().stream()
            .filter(operation -> operation.resection().isEmpty())
            .map(operation -> operation.id())
            .map(
                id ->
                    scene.missingInCase(
                        id + "/resection", "Was bone cut out at " + id + ", and how much?"))
            .toList();
    return missing.isEmpty()
        ? Reading.number(
            scene.ledger().cuts().shortenedBy(scene.ledger().rounds() - 1),
            "resections less the gaps left",
            scene.missing("reduction/gapNearMm", "How wide a gap was left after the resection?"))
        : new Reading.Unknown(missing);
  }
}
