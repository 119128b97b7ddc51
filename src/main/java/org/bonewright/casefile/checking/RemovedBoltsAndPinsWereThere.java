package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Removal;

/**
 * Single bolts come out of a nail and single pins out of a fixator, each one that is in its list.
 */
final class RemovedBoltsAndPinsWereThere implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      Located.each(procedure.operation().removed(), procedure.at().field("removed"))
          .forEach(
              removal ->
                  contents
                      .removable(removal.value().of(), procedure)
                      .ifPresent(implant -> look(removal, implant, objections)));
    }
  }

  private static void look(
      Located<Removal> removal, Fitted<Implant> implant, Objections objections) {
    Optional<Integer> bolts =
        implant.implant() instanceof Nail nail ? nail.bolts().map(List::size) : Optional.empty();
    Optional<Integer> pins =
        implant.implant() instanceof ExternalFixator fixator
            ? fixator.pins().map(List::size)
            : Optional.empty();
    At at = removal.at();
    look(
        "bolt", at.field("bolts"), removal.value().bolts(), implant, Nail.class, bolts, objections);
    look(
        "pin",
        at.field("pins"),
        removal.value().pins(),
        implant,
        ExternalFixator.class,
        pins,
        objections);
  }

  private static void look(
      String noun,
      At at,
      List<Integer> taken,
      Fitted<Implant> implant,
      Class<? extends Implant> owner,
      Optional<Integer> there,
      Objections objections) {
    if (!taken.isEmpty() && !implant.isA(owner)) {
      objections.refuse(
          at,
          noun + "s of " + implant.name() + ", which has none",
          "an empty list for this implant");
      return;
    }
    Located.each(taken, at)
        .filter(place -> there.isPresent() && place.value() > there.get())
        .forEach(
            place ->
                objections.refuse(
                    place.at(),
                    noun + " " + place.value() + " of " + implant.name(),
                    there.get() == 0 ? "no " + noun + ", it has none" : "1 to " + there.get()));
  }
}
