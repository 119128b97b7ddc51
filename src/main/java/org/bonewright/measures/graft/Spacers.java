package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Scene;

/**
 * Cement spacers round which a membrane forms, and the graft that follows them. The course of a
 * plan, or of an operation, begins with the done stages right before it.
 */
final class Spacers {

  private static final Set<Graft.Kind> NO_GRAFT =
      EnumSet.of(Graft.Kind.SPACER, Graft.Kind.DECORTICATION);

  private static final Set<Graft.Kind> NAMED = EnumSet.of(Graft.Kind.SPACER, Graft.Kind.MEMBRANE);

  private Spacers() {}

  /** Return the steps of a subject, with the done stages that led up to them before. */
  static List<Operation> course(Scene scene) {
    List<Operation> before = scene.subject().before();
    int from = before.size();
    while (from > 0 && isStage(scene, from - 1)) {
      from--;
    }
    List<Operation> all = scene.subject().upToHere();
    return all.subList(from, all.size());
  }

  private static boolean isStage(Scene scene, int index) {
    boolean planned = index >= scene.subject().caseFile().operations().size();
    return planned || scene.subject().before().get(index).wasOnlyAStage();
  }

  /** Return the place in the course of the step that puts the last spacer in. */
  static Optional<Integer> lastIn(List<Operation> course) {
    for (int i = course.size() - 1; i >= 0; i--) {
      if (puts(course.get(i))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** Return the place in the course of the first step after this place that brings graft. */
  static Optional<Integer> graftAfter(List<Operation> course, int place) {
    for (int i = place + 1; i < course.size(); i++) {
      if (grafts(course.get(i))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** Return whether graft follows a spacer in the course up to here. */
  static boolean followedByGraft(Scene scene) {
    List<Operation> course = course(scene);
    return lastIn(course).flatMap(place -> graftAfter(course, place)).isPresent();
  }

  /**
   * Return whether a spacer that nobody mentions has to be reckoned with: the injury or the
   * nonunion is a defect, or a spacer or membrane is named up to here.
   */
  static boolean lieNear(Scene scene) {
    boolean defect =
        scene
                .subject()
                .caseFile()
                .injury()
                .pattern()
                .equals(Optional.of(Injury.Pattern.SEGMENTAL_DEFECT))
            || scene
                .subject()
                .latest(Finding::vitality)
                .equals(Optional.of(Finding.Vitality.DEFECT));
    return defect || Biology.of(scene.subject().upToHere()).has(NAMED);
  }

  private static boolean puts(Operation operation) {
    return operation.biology().stream()
        .flatMap(List::stream)
        .anyMatch(graft -> graft.kind() == Graft.Kind.SPACER);
  }

  private static boolean grafts(Operation operation) {
    return operation.biology().stream()
        .flatMap(List::stream)
        .anyMatch(graft -> !NO_GRAFT.contains(graft.kind()));
  }
}
