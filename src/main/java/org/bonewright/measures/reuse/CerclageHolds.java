package org.bonewright.measures.reuse;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.Cerclage;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What wires or cables round the bone hold. */
final class CerclageHolds implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "cerclage-holds",
        "What cerclage holds",
        Definition.words("none", "fragment", "other"),
        "fragment where a wire or cable holds a main fragment; other where it holds a wedge or an"
            + " onlay strut alone; none without any",
        List.of("operations/fixation/holds"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Cerclage> all = scene.construct().of(Cerclage.class);
    Set<String> possible = new TreeSet<>();
    Optional<MissingFact> missing = Optional.empty();
    boolean fragment =
        all.stream().anyMatch(c -> c.holds().equals(Optional.of(Cerclage.Holds.FRAGMENT)));
    if (fragment) {
      return Reading.word("fragment", "a main fragment");
    }
    if (!all.isEmpty()) {
      possible.add("other");
    } else {
      possible.add("none");
    }
    Optional<Cerclage> untold = all.stream().filter(c -> c.holds().isEmpty()).findFirst();
    if (untold.isPresent()) {
      String id = untold.get().id();
      possible.add("fragment");
      missing =
          Optional.of(scene.missing("fixation/" + id + "/holds", "What does " + id + " hold?"));
    }
    // A new plate is taken to replace the old one, but wires of an operation not told may be there.
    boolean untoldBefore =
        scene.subject().upToHere().stream().anyMatch(step -> step.fixation().isEmpty());
    if (untoldBefore || !scene.construct().known()) {
      possible.addAll(Set.of("fragment", "other"));
      missing = Optional.of(scene.missing("fixation", "Which implants were put in?"));
    }
    return Reading.words(
        possible,
        Kind.FACT,
        all.isEmpty() ? "no cerclage recorded" : all.size() + " recorded",
        missing.stream().toArray(MissingFact[]::new));
  }
}
