package org.bonewright.casefile.checking;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.LeftPiece;
import org.bonewright.casefile.PieceDecision;
import org.bonewright.casefile.Removal;

/**
 * What is decided about metal that is left concerns metal that an earlier operation put in or left,
 * and that nothing has taken out since.
 */
final class DecidedPiecesWereThere implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Map<String, Procedure> out = new HashMap<>();
    contents.done().forEach(procedure -> look(procedure, contents, out, objections));
    contents.sequences().stream()
        .filter(sequence -> sequence.stream().anyMatch(Procedure::isPlanned))
        .forEach(
            plan -> {
              Map<String, Procedure> outInPlan = new HashMap<>(out);
              plan.forEach(stage -> look(stage, contents, outInPlan, objections));
            });
  }

  private static void look(
      Procedure procedure, Contents contents, Map<String, Procedure> out, Objections objections) {
    List<Removal> removals = procedure.operation().removed().orElse(List.of());
    for (Removal removal : removals) {
      Procedure before = out.get(removal.of());
      if (before != null && !tookOut(before, removal.of())) {
        int place = removals.indexOf(removal);
        refuseOut(
            procedure.at().field("removed").item(place).field("of"),
            removal.of(),
            before,
            objections);
      }
    }
    Located.each(procedure.operation().pieces(), procedure.at().field("pieces"))
        .forEach(decision -> decide(decision, procedure, contents, out, objections));
    removals.stream()
        .filter(Removal::isWhole)
        .forEach(removal -> out.putIfAbsent(removal.of(), procedure));
  }

  /** What an operation removed as a whole is another check's business. */
  private static boolean tookOut(Procedure procedure, String name) {
    return procedure.operation().removed().stream()
        .flatMap(List::stream)
        .anyMatch(removal -> removal.isWhole() && removal.of().equals(name));
  }

  private static void decide(
      Located<PieceDecision> decision,
      Procedure procedure,
      Contents contents,
      Map<String, Procedure> out,
      Objections objections) {
    String name = decision.value().of();
    At at = decision.at().field("of");
    if (there(procedure, contents).noneMatch(name::equals)) {
      objections.refuse(
          at,
          "a decision about " + name + ", which no earlier operation put in or left",
          Wording.list(
              there(procedure, contents).filter(known -> !out.containsKey(known)).toList(),
              "no decision: the file names no metal left before"),
          "A piece that was left has the name of the operation that left it, and its own id.");
      return;
    }
    Optional<Procedure> before = Optional.ofNullable(out.get(name));
    if (before.isPresent()) {
      refuseOut(at, name, before.get(), objections);
    } else if (decision.value().decision() == PieceDecision.Decision.REMOVED) {
      out.put(name, procedure);
    }
  }

  private static void refuseOut(At at, String name, Procedure before, Objections objections) {
    objections.refuse(
        at,
        name + ", which " + before.operation().id() + " took out already",
        "metal that is still in the bone");
  }

  private static Stream<String> there(Procedure procedure, Contents contents) {
    return contents.procedures().stream()
        .filter(procedure::mayMeet)
        .filter(other -> !other.equals(procedure) && !procedure.comesBefore(other))
        .flatMap(
            other ->
                Stream.concat(other.fitted().stream().map(Fitted::name), left(other).stream()));
  }

  /** Pieces without a name are counted through, as in the bone's memory. */
  private static List<String> left(Procedure procedure) {
    List<LeftPiece> pieces =
        procedure.operation().removed().stream()
            .flatMap(List::stream)
            .flatMap(removal -> removal.left().stream())
            .toList();
    return Located.each(pieces, At.FILE)
        .map(
            piece ->
                procedure.operation().id()
                    + "/"
                    + piece.value().id().orElse("piece-" + (pieces.indexOf(piece.value()) + 1)))
        .toList();
  }
}
