package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The class of defect that the graft can bridge. */
final class DefectGraft implements Measure {

  /** Volume counts as large when it fills this share of the defect, in percent. */
  private static final double FILLS = 80;

  @Override
  public Definition definition() {
    return new Definition(
        "defect-graft",
        "What bridges the defect",
        Definition.words("later", "nothing", "chips", "autograft", "large", "spanning"),
        "spanning for membrane, spacer followed by graft, bone transport, vascularised bone, or a"
            + " strut with autograft; large for a tricortical block, a strut alone, or cancellous"
            + " autograft whose volume fills at least 80 % of the defect; autograft for less of it;"
            + " chips for anything else but a spacer; later for an operation that was only a stage"
            + " or that leaves a spacer; nothing without any",
        List.of(
            "operations/biology",
            "operations/fixation",
            "operations/transport",
            "operations/outcome/result",
            "graft-volume-share"),
        "usual classes, in part from memory; large by the share filled is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    if (!scene.subject().planned() && scene.operation().wasOnlyAStage()) {
      return Reading.word("later", "a stage; a further operation was always intended");
    }
    Biology biology = Biology.of(steps);
    List<Strut> struts = Biology.struts(steps);
    boolean transport = steps.stream().anyMatch(step -> step.transport().isPresent());
    if (transport || biology.has(EnumSet.of(Graft.Kind.MEMBRANE, Graft.Kind.VASCULARISED_BONE))) {
      return Reading.word("spanning", transport ? "bone transport" : "membrane or living bone");
    }
    if (!biology.told() || steps.stream().anyMatch(step -> step.fixation().isEmpty())) {
      return Reading.unknown(Biology.asked(scene));
    }
    if (Spacers.followedByGraft(scene)) {
      return Reading.word("spanning", "spacer, then graft");
    }
    if (!scene.subject().planned() && biology.has(Graft.Kind.SPACER)) {
      return Reading.word("later", "a spacer, to be followed by graft");
    }
    return struts.isEmpty() ? ofGraft(scene, biology) : ofStruts(biology, struts);
  }

  private static Reading ofStruts(Biology biology, List<Strut> struts) {
    boolean own = biology.has(Biology.AUTOGRAFT);
    boolean vascularised =
        struts.stream()
            .anyMatch(
                strut ->
                    strut
                        .origin()
                        .map(o -> o == Strut.Origin.AUTOGRAFT_VASCULARISED)
                        .orElse(false));
    return own || vascularised
        ? Reading.word("spanning", vascularised ? "vascularised strut" : "strut with autograft")
        : Reading.word("large", "strut without autograft");
  }

  private static Reading ofGraft(Scene scene, Biology biology) {
    if (biology.has(Graft.Kind.AUTOGRAFT_TRICORTICAL)) {
      return Reading.word("large", "tricortical block");
    }
    if (!biology.has(Biology.AUTOGRAFT)) {
      boolean none = biology.grafts().stream().allMatch(g -> g.kind() == Graft.Kind.SPACER);
      return none
          ? Reading.word("nothing", "no graft")
          : Reading.word("chips", "no autograft but chips, marrow or substitute");
    }
    Reading share = scene.read("graft-volume-share");
    if (share instanceof Reading.Amount amount) {
      String working =
          amount.min() >= 100
              ? "cancellous autograft, enough to fill the defect"
              : "cancellous autograft, " + amount.shown() + " % of the defect";
      if (amount.min() >= FILLS) {
        return Reading.word("large", working);
      }
      return amount.max() < FILLS
          ? Reading.word("autograft", working)
          : Reading.words(
              Set.of("autograft", "large"),
              Kind.FACT,
              working,
              share.missing().toArray(MissingFact[]::new));
    }
    return share instanceof Reading.None
        ? Reading.word("large", "cancellous autograft, no defect left")
        : Reading.words(
            Set.of("autograft", "large"),
            Kind.FACT,
            "cancellous autograft, share of the defect not known",
            share.missing().toArray(MissingFact[]::new));
  }
}
