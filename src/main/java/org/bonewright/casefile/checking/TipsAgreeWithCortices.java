package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;

/** A screw whose tip falls short of the far cortex does not cross two. */
final class TipsAgreeWithCortices implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      Screws.rows(plate).forEach(row -> look(row, objections));
    }
  }

  private static void look(Located<ScrewRow> row, Objections objections) {
    Optional<Quantity> tip = row.value().tipBeyondMm().filter(mm -> mm.max() < 0);
    Optional<Quantity> cortices = row.value().cortices().filter(number -> number.min() > 1);
    if (tip.isPresent() && cortices.isPresent()) {
      objections.refuse(
          row.at().field("tipBeyondMm"),
          "a tip "
              + Wording.mm(new Quantity(-tip.get().max(), -tip.get().min()))
              + " short of the far cortex, of a screw across both",
          "0 mm or more, or one cortex");
    }
  }
}
