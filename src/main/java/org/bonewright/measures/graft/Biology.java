package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * The graft and other biology that the steps of a subject bring.
 *
 * @param grafts everything named, in order
 * @param told whether every step says what it brings; a plan always does
 */
record Biology(List<Graft> grafts, boolean told) {

  /** What brings living cells or a signal to make bone. */
  static final Set<Graft.Kind> LIVING =
      EnumSet.of(
          Graft.Kind.AUTOGRAFT_CANCELLOUS,
          Graft.Kind.AUTOGRAFT_TRICORTICAL,
          Graft.Kind.REAMER_GRAFT,
          Graft.Kind.GROWTH_FACTOR,
          Graft.Kind.MARROW,
          Graft.Kind.MEMBRANE,
          Graft.Kind.DECORTICATION,
          Graft.Kind.VASCULARISED_BONE);

  /** What only gives a scaffold. */
  static final Set<Graft.Kind> SCAFFOLD = EnumSet.of(Graft.Kind.ALLOGRAFT, Graft.Kind.SUBSTITUTE);

  /** The patient's own bone. */
  static final Set<Graft.Kind> AUTOGRAFT =
      EnumSet.of(
          Graft.Kind.AUTOGRAFT_CANCELLOUS,
          Graft.Kind.AUTOGRAFT_TRICORTICAL,
          Graft.Kind.REAMER_GRAFT);

  /** Return the biology of a subject. */
  static Biology of(Scene scene) {
    return of(scene.subject().steps());
  }

  /** Return the biology of these operations. */
  static Biology of(List<Operation> steps) {
    return new Biology(
        steps.stream().flatMap(s -> s.biology().stream()).flatMap(List::stream).toList(),
        steps.stream().allMatch(s -> s.biology().isPresent()));
  }

  /** Return whether something of one of these kinds is brought. */
  boolean has(Set<Graft.Kind> kinds) {
    return grafts.stream().anyMatch(graft -> kinds.contains(graft.kind()));
  }

  /** Return whether something of this kind is brought. */
  boolean has(Graft.Kind kind) {
    return has(EnumSet.of(kind));
  }

  /** Return the grafts of these kinds. */
  List<Graft> of(Set<Graft.Kind> kinds) {
    return grafts.stream().filter(graft -> kinds.contains(graft.kind())).toList();
  }

  /** Return the struts that these operations put in. */
  static List<Strut> struts(List<Operation> steps) {
    return steps.stream()
        .flatMap(s -> s.fixation().stream())
        .flatMap(List::stream)
        .filter(Strut.class::isInstance)
        .map(Strut.class::cast)
        .toList();
  }

  /** Return whether a strut is the patient's own bone. */
  static boolean isAutograft(Strut strut) {
    return strut.origin().map(origin -> origin != Strut.Origin.ALLOGRAFT).orElse(false);
  }

  /** Return the question where an operation does not say what it brought. */
  static MissingFact asked(Scene scene) {
    return scene.missing("biology", "Which graft was used, if any, how much, and from where?");
  }
}
