package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Removal;

/** Only metal that was put in before is taken out. */
final class RemovedMetalWasThere implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      Located.each(procedure.operation().removed(), procedure.at().field("removed"))
          .forEach(removal -> look(removal, procedure, contents, objections));
    }
  }

  private static void look(
      Located<Removal> removal, Procedure procedure, Contents contents, Objections objections) {
    String name = removal.value().of();
    At at = removal.at().field("of");
    Optional<Fitted<Implant>> implant = contents.named(name, procedure);
    if (implant.isEmpty()) {
      objections.refuse(
          at,
          "the removal of " + name + ", which no operation put in",
          there(procedure, contents),
          "An id and a kind are enough to name what was put in.");
    } else if (procedure.comesBefore(implant.get().by())) {
      objections.refuse(
          at,
          "the removal of "
              + name
              + " before "
              + implant.get().by().operation().id()
              + " puts it in",
          there(procedure, contents));
    } else if (procedure.equals(implant.get().by())) {
      objections.warn(
          at,
          "the removal of " + name + " in the operation that puts it in",
          "metal of an earlier operation; what was only there for a while may be left out");
    }
  }

  private static String there(Procedure procedure, Contents contents) {
    List<String> names =
        contents.procedures().stream()
            .filter(procedure::mayMeet)
            .filter(other -> other.comesBefore(procedure))
            .flatMap(other -> other.fitted().stream())
            .map(Fitted::name)
            .toList();
    return Wording.list(names, "no removal: the file names nothing put in before");
  }
}
