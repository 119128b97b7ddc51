package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Quantity;

/** Findings are listed as they were made; one out of line is often a slip in its day. */
final class FindingsStandInOrderOfDay implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    List<Finding> findings = contents.file().findings();
    for (int i = 1; i < findings.size(); i++) {
      Quantity before = findings.get(i - 1).day();
      Quantity day = findings.get(i).day();
      if (Certainly.below(day, before)) {
        objections.warn(
            At.FILE.field("findings").item(i).field("day"),
            Wording.day(day) + ", listed after the findings of " + Wording.day(before),
            "findings in order of day");
      }
    }
  }
}
