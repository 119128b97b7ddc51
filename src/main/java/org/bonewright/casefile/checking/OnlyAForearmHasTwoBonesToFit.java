package org.bonewright.casefile.checking;

import java.util.EnumSet;
import java.util.Set;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Reduction;

/** The fit of radius and ulna can be described only where one of them is broken. */
final class OnlyAForearmHasTwoBonesToFit implements Check {

  private static final Set<BoneName> FOREARM = EnumSet.of(BoneName.RADIUS, BoneName.ULNA);

  @Override
  public void look(Contents contents, Objections objections) {
    BoneName bone = contents.file().bone().name();
    if (FOREARM.contains(bone)) {
      return;
    }
    contents.procedures().stream()
        .filter(
            procedure -> procedure.operation().reduction().flatMap(Reduction::forearm).isPresent())
        .forEach(
            procedure ->
                objections.refuse(
                    procedure.at().field("reduction").field("forearm"),
                    "the fit of the forearm beside a broken " + Wording.words(bone),
                    "no such field, except for radius and ulna"));
  }
}
