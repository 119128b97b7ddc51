package org.bonewright.casefile.checking;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Plate;

/** A hole of a plate holds one screw or one plug. */
final class HolesHoldOneThing implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      Map<Integer, String> taken = new HashMap<>();
      Screws.rows(plate)
          .flatMap(row -> Located.each(row.value().at(), row.at().field("at")))
          .forEach(hole -> take(hole, "a screw", taken, objections));
      Located.each(plate.implant().plugged(), plate.at().field("plugged"))
          .forEach(hole -> take(hole, "a plug", taken, objections));
      lagScrews(plate)
          .filter(hole -> taken.containsKey(hole.value()))
          .forEach(hole -> warn(hole, taken, objections));
    }
  }

  private static void take(
      Located<Integer> hole, String thing, Map<Integer, String> taken, Objections objections) {
    String before = taken.putIfAbsent(hole.value(), thing);
    if (before != null) {
      objections.refuse(
          hole.at(),
          thing + " in hole " + hole.value() + ", which holds " + before + " already",
          "one screw or one plug in a hole");
    }
  }

  /** A lag screw through the plate may have been written down twice; that is not certain. */
  private static void warn(
      Located<Integer> hole, Map<Integer, String> taken, Objections objections) {
    objections.warn(
        hole.at(),
        "a lag screw through hole "
            + hole.value()
            + ", which holds "
            + taken.get(hole.value())
            + " already",
        "the screw once: as the lag screw, or with the screws of the plate");
  }

  private static Stream<Located<Integer>> lagScrews(Fitted<Plate> plate) {
    List<Fitted<LagScrew>> lags =
        plate.by().fitted().stream()
            .filter(fitted -> fitted.isA(LagScrew.class))
            .map(fitted -> fitted.as(LagScrew.class))
            .toList();
    return lags.stream()
        .flatMap(lag -> Located.maybe(Screws.throughPlate(lag, plate), lag.at().field("hole")));
  }
}
