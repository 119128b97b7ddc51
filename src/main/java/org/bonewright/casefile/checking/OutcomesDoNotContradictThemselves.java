package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;

/** A bone that united is not said to have failed by not uniting. */
final class OutcomesDoNotContradictThemselves implements Check {

  private static final Set<FailureMode> NOT_UNITED =
      Set.of(FailureMode.NO_UNION_METAL_INTACT, FailureMode.CALLUS_LINE_OPEN);

  @Override
  public void look(Contents contents, Objections objections) {
    contents.done().forEach(procedure -> look(procedure, objections));
  }

  private static void look(Procedure procedure, Objections objections) {
    Optional<Outcome> outcome = procedure.operation().outcome();
    outcome
        .filter(united -> united.result() == Outcome.Result.UNITED)
        .flatMap(Outcome::mode)
        .filter(NOT_UNITED::contains)
        .ifPresent(
            mode ->
                objections.refuse(
                    procedure.at().field("outcome").field("mode"),
                    "the mode " + Wording.asWritten(mode) + " with the result united",
                    "another result, or a mode that goes with union"));
  }
}
