package org.bonewright.casefile.checking;

import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseFile.Provenance;

/** A published case names the text that it follows. */
final class PublishedCaseNamesItsSource implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    CaseFile file = contents.file();
    if (file.provenance() == Provenance.PUBLISHED && file.source().isEmpty()) {
      objections.refuse(
          At.FILE.field("source"),
          "no source of a case with provenance published",
          "the published text that the case follows");
    }
  }
}
