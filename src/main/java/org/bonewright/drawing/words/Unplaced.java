package org.bonewright.drawing.words;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Strut;

/** What is in the bone though the file does not tell where. */
final class Unplaced {

  private final Standing standing;

  Unplaced(Standing standing) {
    this.standing = standing;
  }

  List<String> names() {
    List<String> missing = new ArrayList<>();
    standing.plates().stream()
        .filter(laid -> standing.level(laid, 1).isEmpty())
        .forEach(laid -> missing.add(laid.metal().path() + " with its screws"));
    standing.tracks().stream()
        .map(drilled -> drilled.old().track())
        .filter(track -> track.level().isEmpty())
        .filter(track -> track.kind() != Track.Kind.PLATE_SCREW)
        .filter(track -> track.kind() != Track.Kind.LOCKING_PLATE_SCREW)
        .forEach(track -> missing.add(track.name()));
    standing.tracks().stream()
        .filter(drilled -> !drilled.old().filled())
        .map(drilled -> drilled.old().track())
        .filter(track -> track.level().isEmpty())
        .filter(
            track ->
                track.kind() == Track.Kind.PLATE_SCREW
                    || track.kind() == Track.Kind.LOCKING_PLATE_SCREW)
        .forEach(track -> missing.add("old track " + track.name()));
    for (Standing.Metal metal : standing.metal()) {
      boolean lost =
          (metal.implant() instanceof Strut strut
                  && standing.level(strut.fromMm(), metal.round()).isEmpty())
              || (metal.implant() instanceof Cerclage cerclage
                  && (cerclage.atMm().isEmpty()
                      || cerclage.atMm().stream()
                          .anyMatch(at -> standing.level(at, metal.round()).isEmpty())));
      if (lost) {
        missing.add(metal.path());
      }
    }
    standing.pieces().stream()
        .filter(
            piece ->
                piece
                    .level()
                    .flatMap(level -> standing.level(level, standing.roundOf(piece)))
                    .isEmpty())
        .forEach(piece -> missing.add(piece.path() + " (" + piece.piece().orElse("") + ")"));
    return missing;
  }
}
