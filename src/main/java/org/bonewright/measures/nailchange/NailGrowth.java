package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.nail.Nails;

/** How much thicker or longer the new nail is than the one it replaces. */
final class NailGrowth implements Measure {

  /** What is compared. */
  enum What {
    DIAMETER("outerMm", "diameter"),
    LENGTH("lengthMm", "length");

    private final String field;
    private final String word;

    What(String field, String word) {
      this.field = field;
      this.word = word;
    }

    private Optional<Quantity> of(Nail nail) {
      return this == DIAMETER ? nail.outerMm() : nail.lengthMm();
    }
  }

  private final What what;

  NailGrowth(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return new Definition(
        "nail-" + what.word + "-gain",
        what == What.DIAMETER ? "New nail thicker by" : "New nail longer by",
        Definition.signedMillimetres(),
        what.word + " of the new nail less that of the nail it replaces; none without an exchange",
        List.of("operations/fixation/" + what.field, NailRevision.ID),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (!scene.possibly(NailRevision.ID, NailRevision.EXCHANGED)) {
      return new Reading.None("no nail exchanged");
    }
    Optional<Nail> now = Nails.nail(scene);
    Optional<Scene> then = scene.failedBefore();
    Optional<Nail> before = then.flatMap(Nails::nail);
    if (now.isEmpty() || before.isEmpty()) {
      return new Reading.Unknown(scene.read(NailRevision.ID).missing());
    }
    MissingFact missingNow = missing(scene, now.get());
    MissingFact missingThen = missing(then.orElseThrow(), before.get());
    Optional<Quantity> after = what.of(now.get());
    Optional<Quantity> old = what.of(before.get());
    if (after.isEmpty() || old.isEmpty()) {
      return Reading.unknown(
          after.isPresent()
              ? new MissingFact[] {missingThen}
              : old.isPresent()
                  ? new MissingFact[] {missingNow}
                  : new MissingFact[] {missingThen, missingNow});
    }
    Dimension thick = Dimension.stated(after.get(), "");
    Dimension thin = Dimension.stated(old.get(), "");
    return Reading.number(
        thick.minus(thin),
        "from " + thin.numbers() + " to " + thick.numbers() + " mm",
        missingThen,
        missingNow);
  }

  private MissingFact missing(Scene scene, Nail nail) {
    return scene.missing(
        "fixation/" + nail.id() + "/" + what.field,
        "What is the " + what.word + " of " + nail.id() + ", in mm?");
  }
}
