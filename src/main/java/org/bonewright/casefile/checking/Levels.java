package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.LeftPiece;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Placement;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;

/** The levels that an operation names. */
final class Levels {

  private Levels() {}

  /** Return the levels of pins and bolts, which may sit in the bone beyond a joint. */
  static Stream<Located<Quantity>> perhapsBeyondAJoint(Procedure procedure) {
    return procedure.fitted().stream()
        .flatMap(
            fitted ->
                Stream.concat(
                    kind(fitted, Nail.class, Levels::ofNail),
                    kind(fitted, ExternalFixator.class, Levels::ofFixator)));
  }

  /** Return every other level of an operation. */
  static Stream<Located<Quantity>> onTheBone(Procedure procedure) {
    return Stream.concat(
        ofBoneAndPieces(procedure.operation(), procedure.at()),
        procedure.fitted().stream().flatMap(Levels::ofImplant));
  }

  private static Stream<Located<Quantity>> ofBoneAndPieces(Operation operation, At at) {
    Stream<Located<Quantity>> cuts =
        Located.each(operation.resection(), at.field("resection"))
            .flatMap(
                cut ->
                    Stream.of(
                        new Located<>(cut.value().fromMm(), cut.at().field("fromMm")),
                        new Located<>(cut.value().toMm(), cut.at().field("toMm"))));
    Stream<Located<LeftPiece>> pieces =
        Located.each(operation.removed(), at.field("removed"))
            .flatMap(removal -> Located.each(removal.value().left(), removal.at().field("left")));
    return Stream.concat(cuts, pieces.flatMap(piece -> level(piece, "atMm", LeftPiece::atMm)));
  }

  private static Stream<Located<Quantity>> ofImplant(Fitted<Implant> fitted) {
    return Stream.of(
            kind(fitted, Plate.class, Levels::ofPlate),
            kind(fitted, LagScrew.class, Levels::ofLagScrew),
            kind(fitted, Cerclage.class, Levels::ofCerclage),
            kind(fitted, Strut.class, Levels::ofStrut))
        .flatMap(levels -> levels);
  }

  private static <T extends Implant> Stream<Located<Quantity>> kind(
      Fitted<Implant> fitted,
      Class<T> kind,
      Function<Located<T>, Stream<Located<Quantity>>> levels) {
    return Stream.of(fitted)
        .filter(f -> f.isA(kind))
        .flatMap(f -> levels.apply(new Located<>(f.as(kind).implant(), f.at())));
  }

  private static Stream<Located<Quantity>> ofPlate(Located<Plate> plate) {
    return Located.maybe(plate.value().place(), plate.at().field("place"))
        .flatMap(place -> level(place, "firstHoleMm", Placement::firstHoleMm));
  }

  private static Stream<Located<Quantity>> ofLagScrew(Located<LagScrew> lag) {
    return Stream.concat(
        level(lag, "atMm", LagScrew::atMm), level(lag, "exitMm", LagScrew::exitMm));
  }

  private static Stream<Located<Quantity>> ofCerclage(Located<Cerclage> cerclage) {
    return Located.each(cerclage.value().atMm(), cerclage.at().field("atMm"));
  }

  private static Stream<Located<Quantity>> ofNail(Located<Nail> nail) {
    return Located.each(nail.value().bolts(), nail.at().field("bolts"))
        .flatMap(bolt -> level(bolt, "atMm", Bolt::atMm));
  }

  private static Stream<Located<Quantity>> ofFixator(Located<ExternalFixator> fixator) {
    return Located.each(fixator.value().pins(), fixator.at().field("pins"))
        .map(pin -> new Located<>(pin.value().atMm(), pin.at().field("atMm")));
  }

  private static Stream<Located<Quantity>> ofStrut(Located<Strut> strut) {
    return Stream.of(
        new Located<>(strut.value().fromMm(), strut.at().field("fromMm")),
        new Located<>(strut.value().toMm(), strut.at().field("toMm")));
  }

  private static <T> Stream<Located<Quantity>> level(
      Located<T> thing, String field, Function<T, Optional<Quantity>> level) {
    return Located.maybe(level.apply(thing.value()), thing.at().field(field));
  }
}
