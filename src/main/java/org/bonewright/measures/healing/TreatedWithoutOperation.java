package org.bonewright.measures.healing;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.NonOperativeTreatment;
import org.bonewright.casefile.NonOperativeTreatment.Kind;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the fracture was first treated without an operation. */
final class TreatedWithoutOperation implements Measure {

  private static final Set<Kind> HOLDING = EnumSet.of(Kind.BRACE, Kind.CAST, Kind.OBSERVATION);

  @Override
  public Definition definition() {
    return new Definition(
        "treated-without-operation",
        "First treated without an operation",
        Definition.yesOrNo(),
        "yes when a brace, a cast or watching is on file that began before the first operation",
        List.of("nonOperative/kind", "nonOperative/fromDay", "operations/day"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return first(scene.subject().caseFile())
        .map(treatment -> Diagnosis.onFile("yes", Words.of(treatment.kind())))
        .orElseGet(() -> Diagnosis.onFile("no", "none on file"));
  }

  private static Optional<NonOperativeTreatment> first(CaseFile file) {
    Optional<Operation> first = file.operations().stream().findFirst();
    Optional<Quantity> until = first.flatMap(Operation::day);
    return file.nonOperative().stream()
        .filter(treatment -> HOLDING.contains(treatment.kind()))
        .filter(
            treatment ->
                first.isEmpty()
                    || until.map(day -> treatment.fromDay().max() < day.min()).orElse(false))
        .findFirst();
  }
}
