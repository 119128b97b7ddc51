package org.bonewright.casefile.checking;

import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseFile.Provenance;
import org.bonewright.casefile.Side;

/**
 * The side of the body is told. Only a published report may keep it to itself: a patient's file
 * without it is how the wrong side gets operated on.
 */
final class SideIsTold implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    CaseFile file = contents.file();
    if (file.bone().side() == Side.NOT_STATED && file.provenance() != Provenance.PUBLISHED) {
      objections.refuse(
          At.FILE.field("bone").field("side"),
          "no side of the body",
          "left or right; not-stated only with provenance published");
    }
  }
}
