package org.bonewright.casefile.checking;

import java.util.Set;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Companion;
import org.bonewright.casefile.Companion.CompanionBone;

/** The bone beside is one that lies beside the broken bone. */
final class CompanionBelongsToTheBone implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    contents
        .file()
        .companion()
        .ifPresent(companion -> look(companion, contents.file().bone().name(), objections));
  }

  private static void look(Companion companion, BoneName bone, Objections objections) {
    Set<CompanionBone> beside = beside(bone);
    if (!beside.contains(companion.bone())) {
      String name = Wording.words(bone);
      objections.refuse(
          At.FILE.field("companion").field("bone"),
          "the " + Wording.words(companion.bone()) + " beside a broken " + name,
          Wording.list(
              beside.stream().map(Wording::asWritten).toList(), "no companion for a " + name));
    }
  }

  private static Set<CompanionBone> beside(BoneName bone) {
    return switch (bone) {
      case TIBIA -> Set.of(CompanionBone.FIBULA);
      case RADIUS -> Set.of(CompanionBone.ULNA);
      case ULNA -> Set.of(CompanionBone.RADIUS);
      case HUMERUS, FEMUR, CLAVICLE -> Set.of();
    };
  }
}
