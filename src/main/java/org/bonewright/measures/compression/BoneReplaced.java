package org.bonewright.measures.compression;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether missing bone is replaced: by graft, by a spacer for the time being, by transport. */
final class BoneReplaced implements Measure {

  private static final Set<Graft.Kind> FILLS =
      EnumSet.of(
          Graft.Kind.AUTOGRAFT_CANCELLOUS,
          Graft.Kind.AUTOGRAFT_TRICORTICAL,
          Graft.Kind.REAMER_GRAFT,
          Graft.Kind.ALLOGRAFT,
          Graft.Kind.SUBSTITUTE,
          Graft.Kind.MEMBRANE,
          Graft.Kind.SPACER,
          Graft.Kind.VASCULARISED_BONE);

  @Override
  public Definition definition() {
    return new Definition(
        "bone-replaced",
        "Missing bone replaced",
        Definition.yesOrNo(),
        "yes when any step puts in graft, substitute, spacer or living bone, or transports bone;"
            + " growth factor, marrow and decortication alone fill nothing. Not in a plan: no",
        List.of("operations/biology", "operations/transport"),
        "bookkeeping; what counts as filling is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    return switch (Doing.in(scene, BoneReplaced::replaced)) {
      case DONE -> Reading.word("yes", "graft, spacer or transport");
      case NOT_DONE -> Reading.word("no", "nothing that fills a gap");
      case UNKNOWN ->
          Reading.unknown(scene.missing("biology", "Was graft put in, and of what kind?"));
    };
  }

  private static Optional<Answer> replaced(Operation step) {
    if (step.transport().isPresent()) {
      return Optional.of(Answer.YES);
    }
    return step.biology()
        .map(
            grafts ->
                grafts.stream().map(Graft::kind).anyMatch(FILLS::contains)
                    ? Answer.YES
                    : Answer.NO);
  }
}
