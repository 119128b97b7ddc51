package org.bonewright.casefile.checking;

import java.util.stream.Stream;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;

/** The days on which the state of screws and bolts was seen. */
final class StateDays {

  private StateDays() {}

  /** Return the days for everything that an operation puts in. */
  static Stream<Located<Quantity>> of(Procedure procedure) {
    return procedure.fitted().stream().flatMap(StateDays::of);
  }

  /** Return the days for one implant. */
  static Stream<Located<Quantity>> of(Fitted<Implant> fitted) {
    Stream<Located<Quantity>> screws =
        Stream.of(fitted)
            .filter(f -> f.isA(Plate.class))
            .flatMap(f -> Screws.rows(f.as(Plate.class)))
            .flatMap(StateDays::ofRow);
    Stream<Located<Quantity>> bolts =
        Stream.of(fitted)
            .filter(f -> f.isA(Nail.class))
            .map(f -> f.as(Nail.class))
            .flatMap(nail -> Located.each(nail.implant().bolts(), nail.at().field("bolts")))
            .flatMap(StateDays::ofBolt);
    return Stream.concat(screws, bolts);
  }

  /** Return the day for a row of screws. */
  static Stream<Located<Quantity>> ofRow(Located<ScrewRow> row) {
    return Located.maybe(row.value().stateDay(), row.at().field("stateDay"));
  }

  private static Stream<Located<Quantity>> ofBolt(Located<Bolt> bolt) {
    return Located.maybe(bolt.value().stateDay(), bolt.at().field("stateDay"));
  }
}
