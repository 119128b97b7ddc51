package org.bonewright.bone.ledger;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.bonewright.bone.Construct;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Removal;

/** Which tracks metal still lies in. */
final class Filled {

  private Filled() {}

  /** Return the names of the tracks that are filled at the end of the last of these operations. */
  static Set<String> after(List<Operation> operations) {
    Set<String> filled = new HashSet<>();
    for (Construct.Held held : Construct.inside(operations).implants()) {
      Implant implant = held.implant();
      String path = held.path();
      if (implant instanceof Plate plate) {
        plate.screws().orElse(List.of()).stream()
            .flatMap(row -> row.at().stream())
            .forEach(hole -> filled.add(Track.inHole(path, hole)));
      } else if (implant instanceof Nail) {
        left(path, operations).forEach(place -> filled.add(Track.bolt(path, place)));
      } else if (implant instanceof ExternalFixator) {
        left(path, operations).forEach(place -> filled.add(Track.pin(path, place)));
      } else if (implant instanceof LagScrew) {
        filled.add(path);
      }
    }
    return filled;
  }

  /** Return the places, in the list as it was put in, of the bolts or pins that are left. */
  private static List<Integer> left(String path, List<Operation> operations) {
    Set<Integer> out = new HashSet<>();
    int all = 0;
    for (Operation operation : operations) {
      for (Removal removal : operation.removed().orElse(List.of())) {
        if (removal.of().equals(path)) {
          out.addAll(removal.bolts());
          out.addAll(removal.pins());
        }
      }
      for (Implant implant : operation.fixation().orElse(List.of())) {
        all = path.equals(operation.id() + "/" + implant.id()) ? count(implant) : all;
      }
    }
    return IntStream.rangeClosed(1, all).filter(place -> !out.contains(place)).boxed().toList();
  }

  private static int count(Implant implant) {
    return implant instanceof Nail nail
        ? nail.bolts().map(List::size).orElse(0)
        : implant instanceof ExternalFixator fixator ? fixator.pins().map(List::size).orElse(0) : 0;
  }
}
