package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;

/**
 * A case with every verdict.
 *
 * @param caseFile the case
 * @param subjects its subjects in order of time
 * @param scenes what was measured, by subject
 * @param judgements the verdicts by subject, in the order of the cards
 */
public record JudgedCase(
    CaseFile caseFile,
    List<Subject> subjects,
    Map<String, Scene> scenes,
    Map<String, List<Judgement>> judgements) {

  /**
   * Return what was measured of a subject.
   *
   * @throws IllegalArgumentException if it is not of this case
   */
  public Scene scene(Subject subject) {
    Scene scene = scenes.get(subject.id());
    if (scene == null) {
      throw new IllegalArgumentException("no subject " + subject.id());
    }
    return scene;
  }

  /** Return the verdicts on a subject. */
  public List<Judgement> of(Subject subject) {
    return judgements.getOrDefault(subject.id(), List.of());
  }

  /** Return the verdict of one principle on a subject, if the principle concerns it. */
  public Optional<Judgement> of(Subject subject, String principle) {
    return of(subject).stream().filter(j -> j.card().id().equals(principle)).findFirst();
  }
}
