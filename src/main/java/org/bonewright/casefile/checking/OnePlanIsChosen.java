package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Plan;

/** No more than one plan is the one to be carried out. */
final class OnePlanIsChosen implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    List<Located<Plan>> chosen =
        Located.each(contents.file().plans(), At.FILE.field("plans"))
            .filter(plan -> plan.value().chosen().equals(Optional.of(true)))
            .toList();
    chosen.stream()
        .skip(1)
        .forEach(
            plan ->
                objections.refuse(
                    plan.at().field("chosen"),
                    plan.value().id() + " chosen besides " + chosen.get(0).value().id(),
                    "one chosen plan at most"));
  }
}
