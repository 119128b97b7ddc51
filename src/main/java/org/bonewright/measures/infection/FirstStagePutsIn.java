package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What the first stage puts into a bed that may be infected. */
final class FirstStagePutsIn implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "first-stage-puts-in",
        "Put in at the first stage",
        Definition.words("graft", "plate-or-nail", "neither"),
        "graft where the first stage brings in bone, a substitute without antibiotic or a strut;"
            + " else plate-or-nail where it puts one in; a cement spacer, an opened canal and an"
            + " external fixator count as neither",
        List.of("operations/biology", "operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Operation first = scene.subject().steps().get(0);
    boolean graft =
        first.biology().stream().flatMap(List::stream).anyMatch(FirstStagePutsIn::isGraft);
    boolean strut =
        first.fixation().stream().flatMap(List::stream).anyMatch(Strut.class::isInstance);
    if (graft || strut) {
      return Reading.word("graft", graft ? "graft" : "strut");
    }
    boolean told = first.biology().isPresent() || scene.subject().planned();
    if (!told || first.fixation().isEmpty()) {
      return Reading.unknown(
          scene.missing("biology", "Which graft and which implants were put in, if any?"));
    }
    boolean rigid =
        first.fixation().stream()
            .flatMap(List::stream)
            .anyMatch(implant -> implant instanceof Plate || implant instanceof Nail);
    return rigid
        ? Reading.word("plate-or-nail", "a plate or a nail")
        : Reading.word("neither", "neither graft nor plate nor nail");
  }

  private static boolean isGraft(Graft graft) {
    return graft.kind() != Graft.Kind.SPACER && graft.kind() != Graft.Kind.DECORTICATION;
  }
}
