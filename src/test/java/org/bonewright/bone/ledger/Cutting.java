package org.bonewright.bone.ledger;

import java.util.Optional;
import java.util.stream.IntStream;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Operation;

/** Histories in which pieces of bone are cut out; operation 0 never cuts. */
final class Cutting {

  static final String NO_GAP = "gapNearMm: 0, gapFarMm: 0";

  private Cutting() {}

  static Operation operation(String resections, String reduction) {
    return CaseText.bare()
        .at("/operations/0", "{resection: [" + resections + "], reduction: {" + reduction + "}}")
        .operation();
  }

  static String piece(String from, String to) {
    return "{fromMm: " + from + ", toMm: " + to + "}";
  }

  static Cuts cuts(Operation... later) {
    Operation first = operation("", NO_GAP);
    return Cuts.of(
        IntStream.rangeClosed(0, later.length)
            .mapToObj(i -> new Step(i == 0 ? first : later[i - 1], Optional.empty()))
            .toList());
  }
}
