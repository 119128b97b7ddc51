package org.bonewright.measures.hold;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.WhichMode;

/** In which pattern the screws of the operation before came loose. */
final class LooseningPattern implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "loosening-pattern",
        "How screws came loose before",
        Definition.words("in-turn", "all", "no"),
        "of the last operation meant to unite the bone, its plate not broken. In turn: recorded as"
            + " screws pulled out in sequence, or two conventional screws that follow each other"
            + " loose, backed out or lucent from one end of the plate on. All: recorded as all screws"
            + " lucent, or every screw of a plate (three or more) loose or lucent. Else no",
        List.of(
            "operations/outcome/mode",
            "operations/fixation/screws/state",
            "findings/films/lucentScrews"),
        "Peck et al., J Orthop Trauma 2015, for the pattern; the count of three is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Operation> before = scene.failedBefore().map(Scene::operation);
    if (before.isEmpty()) {
      return Reading.word("no", "no operation before");
    }
    Operation failed = before.get();
    Optional<FailureMode> mode = failed.outcome().flatMap(Outcome::mode);
    if (mode.map(m -> m.isA(FailureMode.PLATE_BROKEN)).orElse(false)) {
      return Reading.word("no", "the plate of " + failed.id() + " broke");
    }
    if (mode.equals(Optional.of(FailureMode.SCREWS_PULLED_OUT_IN_SEQUENCE))) {
      return Reading.word("in-turn", "recorded of " + failed.id());
    }
    if (mode.equals(Optional.of(FailureMode.ALL_SCREWS_LUCENT))) {
      return Reading.word("all", "recorded of " + failed.id());
    }
    Reading seen = asSeen(scene, failed, mode);
    return mode.equals(Optional.of(FailureMode.SCREWS_PULLED_OUT))
        ? inTurnOr(seen, scene, failed)
        : seen;
  }

  /** Screws pulled out: in sequence, or all at once, and then what was seen of them counts. */
  private static Reading inTurnOr(Reading seen, Scene scene, Operation failed) {
    Set<String> words = new TreeSet<>(Set.of("in-turn"));
    if (seen instanceof Reading.Word word) {
      words.addAll(word.possible());
    }
    return Reading.words(
        words,
        Kind.FACT,
        "screws of " + failed.id() + " pulled out",
        scene.missingInCase(
            failed.id() + "/outcome/mode", WhichMode.question(FailureMode.SCREWS_PULLED_OUT)));
  }

  private static Reading asSeen(Scene scene, Operation failed, Optional<FailureMode> mode) {
    List<LooseScrews> plates = plates(scene, failed);
    if (plates.stream().anyMatch(LooseScrews::all)) {
      return Reading.word("all", "every screw of " + failed.id() + " loose");
    }
    if (plates.stream().anyMatch(LooseScrews::inTurn)) {
      return Reading.word("in-turn", "screws of " + failed.id() + " loose from one end on");
    }
    boolean plateOrUntold = !plates.isEmpty() || failed.fixation().isEmpty();
    return mode.isEmpty() && plateOrUntold && mayHaveFailed(failed)
        ? Reading.words(
            Set.of("in-turn", "all", "no"),
            Kind.FACT,
            "how " + failed.id() + " ended is not recorded",
            scene.missingInCase(
                failed.id() + "/outcome/mode",
                "How did " + failed.id() + " fail: which screws came loose?"))
        : Reading.word("no", "no screws recorded as loose from one end on");
  }

  private static List<LooseScrews> plates(Scene scene, Operation failed) {
    return failed.fixation().stream()
        .flatMap(List::stream)
        .filter(Plate.class::isInstance)
        .map(Plate.class::cast)
        .map(plate -> new LooseScrews(scene.subject(), failed.id(), plate))
        .toList();
  }

  private static boolean mayHaveFailed(Operation operation) {
    return operation
        .outcome()
        .map(Outcome::result)
        .map(result -> result == Outcome.Result.FAILED || result == Outcome.Result.UNKNOWN)
        .orElse(true);
  }
}
