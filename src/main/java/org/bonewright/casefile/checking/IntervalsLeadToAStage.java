package org.bonewright.casefile.checking;

/**
 * An interval leads from what comes before to a stage of a plan. An operation that was done has its
 * day instead, and nothing comes before the first stage of a case without an operation.
 */
final class IntervalsLeadToAStage implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    boolean nothingDone = contents.file().operations().isEmpty();
    contents.procedures().stream()
        .filter(procedure -> procedure.operation().daysAfterStageBefore().isPresent())
        .forEach(
            procedure -> {
              At at = procedure.at().field("daysAfterStageBefore");
              if (!procedure.isPlanned()) {
                objections.refuse(
                    at,
                    "an interval to an operation that was done",
                    "no such field here; the day of the operation says it");
              } else if (nothingDone && procedure.index() == 0) {
                objections.refuse(
                    at,
                    "an interval to a stage with nothing before it",
                    "no such field for the first stage where no operation was done");
              }
            });
  }
}
