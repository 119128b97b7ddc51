package org.bonewright.casefile.checking;

import java.util.stream.Stream;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;

/** A stage of a plan is still to be done: it has no day, no outcome, no loose or broken screw. */
final class PlannedStagesLieAhead implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure stage : contents.planned()) {
      Stream.of(
              Located.maybe(stage.operation().day(), stage.at().field("day")),
              Located.maybe(stage.operation().outcome(), stage.at().field("outcome")))
          .flatMap(past -> past)
          .forEach(
              past ->
                  objections.refuse(
                      past.at(),
                      "the " + fieldOf(past.at()) + " of a stage that is still planned",
                      "no such field in a plan; once done, the stage moves to the operations"));
    }
    Stream.concat(
            contents.implants(Plate.class).stream()
                .filter(plate -> plate.by().isPlanned())
                .flatMap(PlannedStagesLieAhead::ofScrews),
            contents.implants(Nail.class).stream()
                .filter(nail -> nail.by().isPlanned())
                .flatMap(PlannedStagesLieAhead::ofBolts))
        .forEach(
            state ->
                objections.refuse(
                    state.at(),
                    "what became of metal that is still to be put in",
                    "no such field in a plan"));
  }

  private static Stream<Located<?>> ofScrews(Fitted<Plate> plate) {
    return Screws.rows(plate)
        .flatMap(
            row ->
                Stream.concat(
                    Located.maybe(row.value().state(), row.at().field("state")),
                    Located.maybe(row.value().stateDay(), row.at().field("stateDay"))));
  }

  private static Stream<Located<?>> ofBolts(Fitted<Nail> nail) {
    return Located.each(nail.implant().bolts(), nail.at().field("bolts"))
        .flatMap(PlannedStagesLieAhead::ofBolt);
  }

  private static Stream<Located<?>> ofBolt(Located<Bolt> bolt) {
    return Stream.concat(
        Located.maybe(bolt.value().state(), bolt.at().field("state")),
        Located.maybe(bolt.value().stateDay(), bolt.at().field("stateDay")));
  }

  private static String fieldOf(At at) {
    return at.pointer().substring(at.pointer().lastIndexOf('/') + 1);
  }
}
