package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Outcome;

/** The hole at which metal broke is one of a plate that was in the bone. */
final class BrokenHoleIsOnAPlate implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.done()) {
      Optional<Integer> hole = procedure.operation().outcome().flatMap(Outcome::hole);
      if (hole.isPresent()) {
        MetalInTheBone.after(procedure, contents)
            .filter(metal -> PlateHoles.certainlyLack(metal.plates(), hole.get()))
            .ifPresent(
                metal ->
                    objections.refuse(
                        procedure.at().field("outcome").field("hole"),
                        "metal broken at hole "
                            + hole.get()
                            + ", with "
                            + PlateHoles.inWords(metal.plates())
                            + " in the bone",
                        "a hole of a plate that was in the bone then"));
      }
    }
  }
}
