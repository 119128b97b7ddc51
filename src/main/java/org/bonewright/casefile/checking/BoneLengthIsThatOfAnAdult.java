package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Quantity;

/** A stated length of the bone is one that adults have. */
final class BoneLengthIsThatOfAnAdult implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    CaseFile file = contents.file();
    if (file.patient().skeletallyMature().equals(Optional.of(Answer.NO))) {
      return;
    }
    Bone bone = file.bone();
    Quantity believed = AdultLength.of(bone.name()).believed();
    bone.lengthMm()
        .filter(mm -> Certainly.below(mm, believed) || Certainly.below(believed, mm))
        .ifPresent(
            mm ->
                objections.warn(
                    At.FILE.field("bone").field("lengthMm"),
                    "a " + Wording.words(bone.name()) + " of " + Wording.mm(mm),
                    "in adults about " + Wording.mm(believed)));
  }
}
