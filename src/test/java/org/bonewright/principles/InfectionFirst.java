package org.bonewright.principles;

import java.util.List;
import org.bonewright.measures.Subject;
import org.bonewright.measures.infection.InfectionStages;

/** What must stand on compression and graft while a proven infection is not treated. */
public final class InfectionFirst {

  private InfectionFirst() {}

  /** Return the verdicts on a subject that lack the label of infection; there must be none. */
  public static List<Judgement> unlabelled(JudgedCase judged, Subject subject) {
    InfectionStages stages = InfectionStages.of(subject);
    String label = stages.stageAfter() ? "for the later stage" : "infection comes first";
    boolean stands =
        judged.scene(subject).certainly("infection-state", "confirmed") && !stages.treatedBefore();
    return judged.of(subject).stream()
        .filter(judgement -> stands)
        .filter(j -> List.of("compression", "graft").contains(j.family().id()))
        .filter(j -> !j.card().cause().equals("infection"))
        .filter(j -> !j.is(VerdictKind.NOT_APPLICABLE))
        .filter(j -> !j.labels().contains(label))
        .toList();
  }
}
