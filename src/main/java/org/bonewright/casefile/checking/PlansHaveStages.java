package org.bonewright.casefile.checking;

/** A plan has a stage at least: without one there is nothing to check. */
final class PlansHaveStages implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Located.each(contents.file().plans(), At.FILE.field("plans"))
        .filter(plan -> plan.value().stages().isEmpty())
        .forEach(
            plan ->
                objections.refuse(
                    plan.at().field("stages"),
                    "no stage in " + plan.value().id(),
                    "one stage at least: the operation that is planned"));
  }
}
