package org.bonewright.measures.history;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.WhichMode;
import org.bonewright.measures.Words;

/** How many of the factors that the last failure points to are changed. */
final class FailedFactorsChanged implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "failed-factors-changed",
        "Failed factors changed",
        new Definition.Domain.Numbers("1", "", 0, Factor.values().length, 1),
        "the mode of the last failure points to one or more factors (concept, hold, length, implant, gap,"
            + " nail, biology, infection, alignment, load); counted are those that this operation"
            + " changes against the one that failed",
        List.of("operations/outcome/mode", "operations/fixation", "operations/biology"),
        "reading of failures after AO Principles, from memory; what counts as a change is our"
            + " convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      return new Reading.None("no operation before");
    }
    String id = then.get().operation().id();
    Optional<FailureMode> mode = then.get().operation().outcome().flatMap(Outcome::mode);
    if (scene.certainly("failed-before", "no")) {
      return new Reading.None(id + " did not fail");
    }
    if (mode.isEmpty()) {
      return Reading.unknown(
          scene.missingInCase(id + "/outcome/mode", "How did " + id + " fail: what broke?"));
    }
    FactorChange change = new FactorChange(then.get(), scene);
    List<Reading.Amount> counts =
        Factor.mayBe(mode.get()).stream()
            .map(factors -> count(change, mode.get(), factors, scene))
            .toList();
    return counts.size() == 1
        ? counts.get(0)
        : Reading.Amount.oneOf(
            counts, scene.missingInCase(id + "/outcome/mode", WhichMode.question(mode.get())));
  }

  private static Reading.Amount count(
      FactorChange change, FailureMode mode, Set<Factor> factors, Scene scene) {
    List<String> changed = new ArrayList<>();
    List<String> open = new ArrayList<>();
    List<String> same = new ArrayList<>();
    for (Factor factor : factors) {
      Optional<Boolean> answer = change.of(factor);
      (answer.isEmpty() ? open : answer.get() ? changed : same).add(factor.word());
    }
    Set<String> words = new LinkedHashSet<>();
    add(words, changed, "changed");
    add(words, same, "not changed");
    add(words, open, "cannot be told");
    return new Reading.Amount(
        changed.size(),
        changed.size() + open.size(),
        Kind.FACT,
        Words.of(mode) + ": " + String.join("; ", words),
        open.isEmpty()
            ? List.of()
            : List.of(
                scene.missing(
                    "changes",
                    "What does this operation change of "
                        + String.join(", ", open)
                        + " against the one that failed?")));
  }

  private static void add(Set<String> words, List<String> factors, String what) {
    if (!factors.isEmpty()) {
      words.add(String.join(", ", factors) + " " + what);
    }
  }
}
