package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.LoadStep;
import org.bonewright.casefile.Quantity;

/** Load limits follow each other in time, and so do visits. */
final class AftercareRunsForward implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      At at = procedure.at().field("aftercare");
      procedure.operation().aftercare().ifPresent(aftercare -> look(aftercare, at, objections));
    }
  }

  private static void look(Aftercare aftercare, At at, Objections objections) {
    List<LoadStep> load = aftercare.load().orElse(List.of());
    for (int i = 1; i < load.size(); i++) {
      Quantity before = load.get(i - 1).untilDay();
      Quantity until = load.get(i).untilDay();
      if (Certainly.notAbove(until, before)) {
        objections.refuse(
            at.field("load").item(i).field("untilDay"),
            "a load limit until " + Wording.day(until) + " after one until " + Wording.day(before),
            "load limits in order of time, each until a later day than the one before");
      }
    }
    List<Quantity> visits = aftercare.visitsWeeks().orElse(List.of());
    for (int i = 1; i < visits.size(); i++) {
      if (Certainly.below(visits.get(i), visits.get(i - 1))) {
        objections.warn(
            at.field("visitsWeeks").item(i),
            "a visit in week "
                + Wording.number(visits.get(i))
                + " listed after one in week "
                + Wording.number(visits.get(i - 1)),
            "visits in order of time");
      }
    }
  }
}
