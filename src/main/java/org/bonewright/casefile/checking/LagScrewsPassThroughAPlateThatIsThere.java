package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Plate;

/**
 * A lag screw through a plate names a plate of its operation, or an older one, and a hole of it.
 */
final class LagScrewsPassThroughAPlateThatIsThere implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    List<Fitted<Plate>> plates = contents.implants(Plate.class);
    for (Fitted<LagScrew> lag : contents.implants(LagScrew.class)) {
      lag.implant().throughPlate().ifPresent(name -> look(name, lag, plates, objections));
    }
  }

  private static void look(
      String name, Fitted<LagScrew> lag, List<Fitted<Plate>> all, Objections objections) {
    List<Fitted<Plate>> there =
        all.stream()
            .filter(plate -> lag.by().mayMeet(plate.by()) && !lag.by().comesBefore(plate.by()))
            .toList();
    List<Fitted<Plate>> meant =
        there.stream().filter(plate -> plate.implant().id().equals(name)).toList();
    if (meant.isEmpty()) {
      objections.refuse(
          lag.at().field("throughPlate"),
          "a lag screw through " + name + ", which is no plate put in by then",
          Wording.list(
              there.stream().map(plate -> plate.implant().id()).toList(),
              "no such field: no plate was put in by then"));
      return;
    }
    Optional<Integer> hole = lag.implant().hole();
    if (hole.isPresent() && PlateHoles.certainlyLack(meant, hole.get())) {
      objections.refuse(
          lag.at().field("hole"),
          "a lag screw through hole " + hole.get() + " of " + PlateHoles.inWords(meant),
          "a hole that the plate has");
    }
  }
}
