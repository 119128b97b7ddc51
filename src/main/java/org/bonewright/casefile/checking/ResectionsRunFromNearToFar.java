package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.Resection;

/** Each resection takes out some bone, and no two of one operation take out the same. */
final class ResectionsRunFromNearToFar implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      List<Located<Resection>> cuts =
          Located.each(procedure.operation().resection(), procedure.at().field("resection"))
              .toList();
      cuts.forEach(cut -> ends(cut, objections));
      for (int i = 1; i < cuts.size(); i++) {
        againstEarlier(cuts.get(i), cuts.subList(0, i), objections);
      }
    }
  }

  private static void ends(Located<Resection> cut, Objections objections) {
    if (Certainly.notAbove(cut.value().toMm(), cut.value().fromMm())) {
      objections.refuse(
          cut.at().field("toMm"),
          "a resection " + inWords(cut.value()),
          "an end beyond the beginning; no entry where no bone was taken out");
    }
  }

  private static void againstEarlier(
      Located<Resection> cut, List<Located<Resection>> earlier, Objections objections) {
    earlier.stream()
        .filter(other -> overlap(cut.value(), other.value()))
        .findFirst()
        .ifPresent(
            other ->
                objections.refuse(
                    cut.at(),
                    "a resection "
                        + inWords(cut.value())
                        + " besides one "
                        + inWords(other.value()),
                    "pieces of bone that do not overlap, all in the levels before any was cut"));
  }

  private static boolean overlap(Resection one, Resection other) {
    return Certainly.below(one.fromMm(), other.toMm())
        && Certainly.below(other.fromMm(), one.toMm());
  }

  private static String inWords(Resection cut) {
    return "from " + Wording.mm(cut.fromMm()) + " to " + Wording.mm(cut.toMm());
  }
}
