package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far load can shorten the bone once bolts are out. */
final class RoomToShorten implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "room-to-shorten",
        "Room to shorten",
        Definition.millimetres(),
        "the gap; for a broken-up zone or a defect the longer of gap and zone. None where bridging or"
            + " abundant callus holds the length, and where no bolt is taken out of a nail that stays",
        List.of("gap-widest", "zone-length", "pattern-class", "findings/films/callus"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Reading> none = Dynamisation.noneHere(scene);
    if (none.isPresent()) {
      return none.get();
    }
    Optional<Boolean> held = Dynamisation.held(scene);
    if (held.equals(Optional.of(true))) {
      return new Reading.None("callus holds the length");
    }
    Reading gap = scene.read("gap-widest");
    Reading zone = scene.read("zone-length");
    Reading pattern = scene.read("pattern-class");
    if (!(gap instanceof Reading.Amount wide) || !(pattern instanceof Reading.Word word)) {
      return new Reading.Unknown(Reading.missingOf(gap, pattern));
    }
    Set<String> broken = new TreeSet<>(word.possible());
    broken.retainAll(Set.of("multifragmentary", "defect"));
    double min = wide.min();
    double max = wide.max();
    if (!broken.isEmpty()) {
      if (!(zone instanceof Reading.Amount along)) {
        return new Reading.Unknown(Reading.missingOf(gap, zone));
      }
      max = Math.max(max, along.max());
      min = broken.equals(word.possible()) ? Math.max(min, along.min()) : min;
    }
    MissingFact[] missing = Reading.missingOf(gap, pattern, zone).toArray(MissingFact[]::new);
    if (held.isEmpty()) {
      return new Reading.Amount(
          0, max, Kind.FACT, "callus not told", List.of(Dynamisation.callusMissing(scene)));
    }
    return new Reading.Amount(
        min,
        max,
        Kind.FACT,
        word.shown() + ", gap " + gap.shown() + " mm",
        min == max ? List.of() : List.of(missing));
  }
}
