package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;
import org.bonewright.casefile.checking.Procedure.Scene;

/**
 * A strut has a length and a wall that fits into it, and one inside the bone is narrower than it.
 */
final class StrutsHaveASoundShape implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Strut> strut : contents.implants(Strut.class)) {
      ends(strut, objections);
      if (strut.implant().where() == Strut.Where.INTRAMEDULLARY) {
        wall(strut, objections);
        if (strut.by().sequence().scene() != Scene.COMPANION) {
          width(strut, contents.file(), objections);
        }
      }
    }
  }

  private static void ends(Fitted<Strut> strut, Objections objections) {
    Quantity from = strut.implant().fromMm();
    Quantity to = strut.implant().toMm();
    if (Certainly.notAbove(to, from)) {
      objections.refuse(
          strut.at().field("toMm"),
          "a strut from " + Wording.mm(from) + " to " + Wording.mm(to),
          "a far end beyond the near end");
    }
  }

  private static void wall(Fitted<Strut> strut, Objections objections) {
    Optional<Quantity> wall = strut.implant().wallMm();
    Optional<Quantity> outer = strut.implant().outerMm();
    if (wall.isPresent() && outer.isPresent() && 2 * wall.get().min() > outer.get().max()) {
      objections.refuse(
          strut.at().field("wallMm"),
          "a wall of " + Wording.mm(wall.get()) + " in a strut of " + Wording.mm(outer.get()),
          "at most half the diameter");
    }
  }

  private static void width(Fitted<Strut> strut, CaseFile file, Objections objections) {
    Optional<Quantity> outer = strut.implant().outerMm();
    Optional<Quantity> widest = OuterWidths.of(file.bone()).widest();
    if (outer.isPresent() && widest.isPresent() && Certainly.notAbove(widest.get(), outer.get())) {
      objections.refuse(
          strut.at().field("outerMm"),
          "a strut of "
              + Wording.mm(outer.get())
              + " inside a bone "
              + Wording.mm(widest.get())
              + " wide",
          "a strut narrower than the bone around it");
    }
  }
}
