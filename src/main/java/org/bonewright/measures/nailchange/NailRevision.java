package org.bonewright.measures.nailchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What becomes of the nail that held the bone until then and did not bring union. */
final class NailRevision implements Measure {

  static final String ID = "nail-revision";
  static final String EXCHANGED = "exchanged";

  private static final String NO_NAIL = "no-nail";
  private static final String KEPT = "kept";
  private static final String PLATE_OVER = "plate-over";
  private static final String TAKEN_OUT = "taken-out";

  @Override
  public Definition definition() {
    return new Definition(
        ID,
        "What becomes of the nail",
        Definition.words(NO_NAIL, KEPT, EXCHANGED, PLATE_OVER, TAKEN_OUT),
        "of the nail by which the last operation meant to unite the bone held it: exchanged for"
            + " another nail alone; plate-over when a plate is put beside it or beside a new nail;"
            + " kept; taken-out for something else or for nothing. no-nail when that operation left"
            + " no nail, when the bone had united, and for a first operation",
        List.of(
            "operations/fixation",
            "operations/removed",
            "operations/outcome/result",
            "still-broken",
            "nail-used"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      return Reading.word(NO_NAIL, "no operation before");
    }
    boolean failed =
        then.get()
            .operation()
            .outcome()
            .map(outcome -> outcome.result() == Outcome.Result.FAILED)
            .orElse(false);
    if (!failed && scene.certainly("still-broken", "no")) {
      return Reading.word(NO_NAIL, "the bone had united");
    }
    if (then.get().certainly("nail-used", "no")) {
      return Reading.word(NO_NAIL, then.get().operation().id() + " left no nail");
    }
    boolean nailed = then.get().certainly("nail-used", "yes");
    boolean broken = failed || scene.certainly("still-broken", "yes");
    boolean told = told(scene);
    Set<String> possible = new TreeSet<>(told ? Set.of(now(scene)) : anything());
    List<MissingFact> missing = new ArrayList<>();
    if (!nailed || !broken) {
      possible.add(NO_NAIL);
      Stream.of(then.get().read("nail-used"), scene.read("still-broken"))
          .flatMap(reading -> reading.missing().stream())
          .forEach(missing::add);
    }
    if (!told) {
      missing.add(scene.missing("fixation", "Which implants were put in?"));
    }
    return Reading.words(
        possible,
        Kind.FACT,
        "nail of " + then.get().operation().id(),
        missing.stream().distinct().toArray(MissingFact[]::new));
  }

  private static boolean told(Scene scene) {
    return scene.subject().steps().stream().allMatch(step -> step.fixation().isPresent());
  }

  private static Set<String> anything() {
    return Set.of(KEPT, EXCHANGED, PLATE_OVER, TAKEN_OUT);
  }

  private static String now(Scene scene) {
    boolean newPlate = puts(scene, Plate.class);
    if (puts(scene, Nail.class)) {
      return newPlate ? PLATE_OVER : EXCHANGED;
    }
    if (scene.construct().of(Nail.class).isEmpty()) {
      return TAKEN_OUT;
    }
    return newPlate ? PLATE_OVER : KEPT;
  }

  private static boolean puts(Scene scene, Class<? extends Implant> kind) {
    return scene.subject().steps().stream()
        .map(Operation::fixation)
        .flatMap(Optional::stream)
        .flatMap(List::stream)
        .anyMatch(kind::isInstance);
  }
}
