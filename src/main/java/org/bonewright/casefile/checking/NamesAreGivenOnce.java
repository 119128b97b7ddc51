package org.bonewright.casefile.checking;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bonewright.casefile.Plan;

/**
 * Operations, stages and plans have names of their own within the file, implants and the pieces
 * that were left within their operation: other fields refer to them by these names.
 */
final class NamesAreGivenOnce implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Stream<Located<String>> procedures = contents.procedures().stream().map(NamesAreGivenOnce::id);
    Stream<Located<String>> plans =
        Located.each(contents.file().plans(), At.FILE.field("plans")).map(NamesAreGivenOnce::id);
    look(
        Stream.concat(procedures, plans).toList(),
        "a name that no other operation, stage or plan of the file has",
        objections);
    for (Procedure procedure : contents.procedures()) {
      look(
          Stream.concat(
                  procedure.fitted().stream()
                      .map(fitted -> new Located<>(fitted.implant().id(), fitted.at().field("id"))),
                  pieces(procedure))
              .toList(),
          "a name that no other implant of the operation has, and no piece that it leaves",
          objections);
    }
  }

  private static Stream<Located<String>> pieces(Procedure procedure) {
    return Located.each(procedure.operation().removed(), procedure.at().field("removed"))
        .flatMap(removal -> Located.each(removal.value().left(), removal.at().field("left")))
        .flatMap(piece -> Located.maybe(piece.value().id(), piece.at().field("id")));
  }

  private static Located<String> id(Procedure procedure) {
    return new Located<>(procedure.operation().id(), procedure.at().field("id"));
  }

  private static Located<String> id(Located<Plan> plan) {
    return new Located<>(plan.value().id(), plan.at().field("id"));
  }

  private static void look(List<Located<String>> names, String allowed, Objections objections) {
    Map<String, At> first = new HashMap<>();
    for (Located<String> name : names) {
      At taken = first.putIfAbsent(name.value(), name.at());
      if (taken != null) {
        objections.refuse(
            name.at(),
            "the name " + name.value() + " once more, also at " + taken.pointer(),
            allowed);
      }
    }
  }
}
