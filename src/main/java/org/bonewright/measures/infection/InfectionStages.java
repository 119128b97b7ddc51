package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Subject;

/**
 * Where a subject stands to the stage of its plan that treats an infection. A stage treats it when
 * it debrides and brings antibiotics; a plan is closed, so what it does not name does not count.
 *
 * @param treatedBefore whether an earlier stage of the same plan treats the infection
 * @param stageAfter whether the plan goes on with a stage after the first one that treats it
 */
public record InfectionStages(boolean treatedBefore, boolean stageAfter) {

  /** Return where a subject stands; a past operation belongs to no plan. */
  public static InfectionStages of(Subject subject) {
    List<Operation> stages = subject.plan().map(Plan::stages).orElse(List.of());
    int treating = firstThatTreats(stages);
    boolean isStage = subject.scope() == Subject.Scope.STAGE;
    return new InfectionStages(
        isStage && treating < place(stages, subject), treating + 1 < stages.size());
  }

  /** Return the place of the first stage that treats the infection, or the number of stages. */
  private static int firstThatTreats(List<Operation> stages) {
    int place = 0;
    while (place < stages.size() && !InfectionEvidence.directed(stages.get(place))) {
      place++;
    }
    return place;
  }

  private static int place(List<Operation> stages, Subject stage) {
    return stages.stream().map(Operation::id).toList().indexOf(stage.operation().id());
  }
}
