package org.bonewright.measures.nail;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Nail;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** How the nail in place is locked. */
final class NailLocking implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nail-locking",
        "Mode of locking",
        Definition.words("static", "dynamic", "unlocked"),
        "as stated, as long as no bolt was taken out; else unlocked where the nail has no bolt,"
            + " dynamic where it has bolts at one end only, static or dynamic where it has bolts at"
            + " both",
        List.of("operations/fixation/locking", "operations/fixation/bolts"),
        "usual terms of nailing");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Nail> nail = Nails.nail(scene);
    if (nail.isEmpty()) {
      return Nails.noNail(scene);
    }
    if (nail.get().locking().isPresent()) {
      return Reading.word(Words.of(nail.get().locking().get()), "as stated");
    }
    MissingFact missing =
        scene.missing(
            "fixation/" + nail.get().id() + "/locking",
            "Is " + nail.get().id() + " locked: static, dynamic or not at all?");
    return nail.get()
        .bolts()
        .map(bolts -> Reading.words(by(bolts), Kind.FACT, bolts.size() + " bolts", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private static Set<String> by(List<Bolt> bolts) {
    if (bolts.isEmpty()) {
      return Set.of("unlocked");
    }
    boolean bothEnds = bolts.stream().map(Bolt::end).distinct().count() == 2;
    return bothEnds ? Set.of("static", "dynamic") : Set.of("dynamic");
  }
}
