package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.Plate;

/** The plate holes that a nerve crosses are holes of a plate that was seen at the operation. */
final class NerveCrossesHolesThatAreThere implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      List<Located<Integer>> crossed =
          Located.maybe(procedure.operation().nerve(), procedure.at().field("nerve"))
              .flatMap(n -> Located.each(n.value().holesCrossed(), n.at().field("holesCrossed")))
              .toList();
      if (!crossed.isEmpty()) {
        MetalInTheBone.during(procedure, contents)
            .map(MetalInTheBone::plates)
            .ifPresent(plates -> crossed.forEach(hole -> look(hole, plates, objections)));
      }
    }
  }

  private static void look(
      Located<Integer> hole, List<Fitted<Plate>> plates, Objections objections) {
    if (PlateHoles.certainlyLack(plates, hole.value())) {
      objections.refuse(
          hole.at(),
          "a nerve across plate hole "
              + hole.value()
              + ", with "
              + PlateHoles.inWords(plates)
              + " there",
          "a hole of a plate that is there");
    }
  }
}
