package org.bonewright.casefile.checking;

import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;

/** Screws and bolts are told one by one, or by number, not both: the two could disagree. */
final class HoldIsToldOnce implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    contents.implants(Plate.class).stream()
        .filter(plate -> plate.implant().screws().isPresent())
        .filter(plate -> plate.implant().fewestCortices().isPresent())
        .forEach(
            plate ->
                objections.refuse(
                    plate.at().field("fewestCortices"),
                    "a number of cortices beside screws that are told by hole",
                    "screws by hole where the holes are known, else the number"));
    contents.implants(Nail.class).stream()
        .filter(nail -> nail.implant().bolts().isPresent())
        .filter(nail -> nail.implant().fewestBolts().isPresent())
        .forEach(
            nail ->
                objections.refuse(
                    nail.at().field("fewestBolts"),
                    "a number of bolts beside bolts that are told one by one",
                    "the bolts where each is known, else the number"));
  }
}
