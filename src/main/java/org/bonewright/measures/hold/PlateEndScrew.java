package org.bonewright.measures.hold;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;
import org.bonewright.measures.plate.Plates;

/** The stiffest end screw of the locking plates in place. */
final class PlateEndScrew implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-end-screw",
        "Stiffest screw at a plate end",
        Definition.words("conventional", "angled", "single-cortex", "locked", "no-locking"),
        "the outermost screw at either end of a plate with a locking screw. Angled: locking, tilted"
            + " 10 degrees or more; locked: locking, straight, in both cortices; a tilt that a plan"
            + " does not state is none. The stiffest counts, in the order of this list; no locking"
            + " where no plate holds a locking screw",
        List.of(
            "operations/fixation/screws/type",
            "operations/fixation/screws/cortices",
            "operations/fixation/screws/tiltDeg"),
        "Bottlang et al., JBJS Am 2009, and Peck et al., J Orthop Trauma 2015, for the kinds; 10"
            + " degrees is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.plates().isEmpty()) {
      return scene.certainly("plate-used", "no")
          ? Reading.word("no-locking", "no plate in place")
          : Plates.noPlate(scene);
    }
    if (scene.plates().stream().anyMatch(plate -> plate.plate().screws().isEmpty())) {
      return Reading.unknown(asked(scene));
    }
    List<EndScrew> ends = EndScrew.all(scene);
    if (ends.isEmpty()) {
      return Reading.word("no-locking", "no plate with a locking screw");
    }
    Set<EndScrew.Kind> stiffest = Set.of(EndScrew.Kind.CONVENTIONAL);
    for (EndScrew end : ends) {
      stiffest = stiffer(stiffest, end.kinds());
    }
    return Reading.words(
        stiffest.stream().map(Words::written).collect(Collectors.toSet()),
        Kind.FACT,
        ends.stream()
            .map(end -> "hole " + end.hole() + " " + words(end.kinds()))
            .collect(Collectors.joining(", ")),
        asked(scene));
  }

  /** Return the stiffer of two screws, for every way that each of them may be. */
  private static Set<EndScrew.Kind> stiffer(Set<EndScrew.Kind> a, Set<EndScrew.Kind> b) {
    Set<EndScrew.Kind> stiffer = new TreeSet<>();
    a.forEach(one -> b.forEach(other -> stiffer.add(one.compareTo(other) >= 0 ? one : other)));
    return stiffer;
  }

  private static String words(Set<EndScrew.Kind> kinds) {
    return kinds.stream().map(Words::written).collect(Collectors.joining(" or "));
  }

  private static MissingFact asked(Scene scene) {
    return scene.missing(
        "fixation/" + scene.plates().get(0).plate().id() + "/screws",
        "What is the last screw at each end of the plate: locking or not, tilted, one cortex or"
            + " both?");
  }
}
