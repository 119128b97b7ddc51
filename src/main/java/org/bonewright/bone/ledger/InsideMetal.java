package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Construct;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LeftPiece;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.PieceDecision;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Removal;

/**
 * Something that lies in the bone: an implant of an earlier operation, or a piece of one.
 *
 * @param path its name in the whole history, such as {@code op-1/plate-1} or {@code op-3/tip}
 * @param implant the implant without what was taken out of it since; empty for a piece
 * @param piece what the piece is, in the words of the file; empty for an implant
 * @param level its level in mm as read when it was left, where it was recorded
 */
public record InsideMetal(
    String path, Optional<Implant> implant, Optional<String> piece, Optional<Quantity> level) {

  /** Return what lies in the bone at the end of the last of these operations, the oldest first. */
  static List<InsideMetal> after(List<Operation> operations) {
    List<InsideMetal> inside = new ArrayList<>();
    for (Construct.Held held : Construct.inside(operations).implants()) {
      inside.add(
          new InsideMetal(
              held.path(), Optional.of(held.implant()), Optional.empty(), Optional.empty()));
    }
    for (Operation operation : operations) {
      operation.pieces().stream()
          .flatMap(List::stream)
          .filter(decision -> decision.decision() == PieceDecision.Decision.REMOVED)
          .forEach(decision -> inside.removeIf(metal -> metal.path().equals(decision.of())));
      inside.addAll(left(operation));
    }
    return List.copyOf(inside);
  }

  private static List<InsideMetal> left(Operation operation) {
    List<InsideMetal> left = new ArrayList<>();
    for (Removal removal : operation.removed().orElse(List.of())) {
      for (LeftPiece piece : removal.left()) {
        String id = piece.id().orElse("piece-" + (left.size() + 1));
        left.add(
            new InsideMetal(
                operation.id() + "/" + id,
                Optional.empty(),
                Optional.of(piece.piece()),
                piece.atMm()));
      }
    }
    return left;
  }
}
