package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;

/** Each measured section has a wall, and the sections follow each other along the bone. */
final class SectionsDescribeATube implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    List<Section> sections = contents.file().bone().sections();
    At at = At.FILE.field("bone").field("sections");
    for (int i = 0; i < sections.size(); i++) {
      hasAWall(sections.get(i), at.item(i), objections);
      if (i > 0) {
        follows(sections.get(i - 1), sections.get(i), at.item(i), objections);
      }
    }
  }

  private static void hasAWall(Section section, At at, Objections objections) {
    if (section.canalMm().isEmpty() || section.outerMm().isEmpty()) {
      return;
    }
    Quantity canal = section.canalMm().get();
    Quantity outer = section.outerMm().get();
    if (Certainly.notAbove(outer, canal)) {
      objections.refuse(
          at.field("canalMm"),
          "a canal of " + Wording.mm(canal) + " in a bone " + Wording.mm(outer) + " wide",
          "a canal narrower than the bone around it");
    }
  }

  private static void follows(Section before, Section section, At at, Objections objections) {
    if (Certainly.notAbove(section.atMm(), before.atMm())) {
      objections.refuse(
          at.field("atMm"),
          "a section at "
              + Wording.mm(section.atMm())
              + " after one at "
              + Wording.mm(before.atMm()),
          "sections in order from the near end to the far end, one for each level");
    }
  }
}
