package org.bonewright.measures.hold;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.WhichMode;
import org.bonewright.measures.Words;

/** Whether conventional screws came loose in this bone before. */
final class LoosenedBefore implements Measure {

  private static final Set<ScrewRow.State> LOST =
      EnumSet.of(ScrewRow.State.LOOSE, ScrewRow.State.BACKED_OUT);

  private static final Set<Outcome.Result> MAY_HAVE_FAILED =
      EnumSet.of(Outcome.Result.FAILED, Outcome.Result.UNKNOWN);

  @Override
  public Definition definition() {
    return new Definition(
        "screws-loosened-before",
        "Conventional screws came loose before",
        Definition.yesOrNo(),
        "yes when an earlier operation ended with screws pulled out in sequence, or a conventional"
            + " screw of an earlier plate was seen loose or backed out",
        List.of("operations/outcome/mode", "operations/fixation/screws/state"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> before = scene.doneBefore();
    for (Operation operation : before) {
      if (pulledOut(operation) || seenLoose(scene, operation)) {
        return Reading.word("yes", "conventional screws of " + operation.id() + " came loose");
      }
    }
    return before.stream()
        .filter(LoosenedBefore::untold)
        .findFirst()
        .map(
            operation ->
                Reading.words(
                    Set.of("yes", "no"),
                    Kind.FACT,
                    mode(operation)
                        .map(mode -> operation.id() + ": " + Words.of(mode))
                        .orElse("how " + operation.id() + " ended is not recorded"),
                    scene.missingInCase(
                        operation.id() + "/outcome/mode",
                        mode(operation)
                            .map(WhichMode::question)
                            .orElse(
                                "How did " + operation.id() + " fail: did screws come loose?"))))
        .orElseGet(() -> Reading.word("no", "none recorded"));
  }

  private static boolean pulledOut(Operation operation) {
    return mode(operation).equals(Optional.of(FailureMode.SCREWS_PULLED_OUT_IN_SEQUENCE));
  }

  private static Optional<FailureMode> mode(Operation operation) {
    return operation.outcome().flatMap(Outcome::mode);
  }

  private static boolean seenLoose(Scene scene, Operation operation) {
    return operation.fixation().stream()
        .flatMap(List::stream)
        .filter(Plate.class::isInstance)
        .map(Plate.class::cast)
        .flatMap(plate -> plate.screws().stream().flatMap(List::stream))
        .filter(row -> row.type() != ScrewRow.Type.LOCKING)
        .filter(row -> row.state().map(LOST::contains).orElse(false))
        .anyMatch(row -> scene.subject().knowsState(row.stateDay()));
  }

  /**
   * A plate, or an implant not stated, that failed or may have, nobody says how; or screws that
   * pulled out, nobody says in which order.
   */
  private static boolean untold(Operation operation) {
    if (mode(operation).isPresent()) {
      return mode(operation).get() == FailureMode.SCREWS_PULLED_OUT;
    }
    boolean plate =
        operation
            .fixation()
            .map(put -> put.stream().anyMatch(Plate.class::isInstance))
            .orElse(true);
    Optional<Outcome> outcome = operation.outcome();
    return plate && outcome.map(o -> MAY_HAVE_FAILED.contains(o.result())).orElse(true);
  }
}
