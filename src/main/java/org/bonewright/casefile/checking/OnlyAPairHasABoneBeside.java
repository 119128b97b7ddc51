package org.bonewright.casefile.checking;

import java.util.EnumSet;
import java.util.Set;
import org.bonewright.casefile.BoneName;

/** A bone beside can be cut only where there is one: beside a tibia, radius or ulna. */
final class OnlyAPairHasABoneBeside implements Check {

  private static final Set<BoneName> PAIRED =
      EnumSet.of(BoneName.TIBIA, BoneName.RADIUS, BoneName.ULNA);

  @Override
  public void look(Contents contents, Objections objections) {
    BoneName bone = contents.file().bone().name();
    if (PAIRED.contains(bone)) {
      return;
    }
    contents.procedures().stream()
        .filter(procedure -> procedure.operation().companionCut().isPresent())
        .forEach(
            procedure ->
                objections.refuse(
                    procedure.at().field("companionCut"),
                    "a bone beside the " + Wording.words(bone),
                    "no such field, except for tibia, radius and ulna"));
  }
}
