package org.bonewright.principles;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bonewright.bone.Construct;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Subject;
import org.bonewright.measures.WhichMode;
import org.bonewright.measures.history.Factor;

/**
 * Counts of level-1 verdicts that principles of level 2 read like measures: from those certainly so
 * to those possibly so.
 */
final class VerdictCounts {

  static final String UNMET_BEFORE = "failed-principles-unmet-before";
  static final String CURED = "failed-principles-cured";

  private static final Map<String, Definition> DEFINITIONS = definitions();

  private final Map<String, List<Judgement>> bySubject;

  VerdictCounts(Map<String, List<Judgement>> bySubject) {
    this.bySubject = bySubject;
  }

  static Map<String, Definition> definitions() {
    Map<String, Definition> all = new TreeMap<>();
    List<String> inputs = List.of("operations/outcome/mode", "verdicts of level 1");
    all.put(
        UNMET_BEFORE,
        new Definition(
            UNMET_BEFORE,
            "Unmet principles that fit the failure",
            Definition.count(1),
            "principles under the factors that the last failure points to which the operation that"
                + " failed left unmet; from certainly to possibly unmet",
            inputs,
            "our convention"));
    all.put(
        CURED,
        new Definition(
            CURED,
            "Of these, no longer unmet",
            Definition.count(1),
            "of the principles that the failed operation certainly left unmet, under the factors"
                + " that the failure points to, those that are met, or no longer apply, now; from"
                + " certainly to possibly so",
            inputs,
            "our convention"));
    all.putAll(MechanicalFaults.definitions());
    return all;
  }

  static Optional<Definition> definition(String id) {
    return Optional.ofNullable(DEFINITIONS.get(id));
  }

  /** Return what a count reads for a subject. */
  Reading read(String id, Subject subject) {
    if (MechanicalFaults.definitions().containsKey(id)) {
      return new MechanicalFaults(bySubject).read(id, subject);
    }
    Optional<Operation> failed = failedBefore(subject);
    if (failed.isEmpty()) {
      return new Reading.None("no failure with a mode before");
    }
    FailureMode mode = failed.flatMap(Operation::outcome).flatMap(Outcome::mode).orElseThrow();
    List<Reading.Amount> counts =
        Factor.mayBe(mode).stream()
            .map(factors -> count(id, failed.get(), factors, subject))
            .toList();
    return Reading.Amount.oneOf(
        counts, new MissingFact(failed.get().id() + "/outcome/mode", WhichMode.question(mode)));
  }

  private Reading.Amount count(String id, Operation failed, Set<Factor> factors, Subject subject) {
    List<String> causes = factors.stream().map(Factor::word).toList();
    List<Judgement> then =
        bySubject.getOrDefault(failed.id(), List.of()).stream()
            .filter(j -> causes.contains(j.card().cause()))
            .toList();
    return id.equals(UNMET_BEFORE) ? unmet(then) : cured(then, subject);
  }

  private static Reading.Amount unmet(List<Judgement> then) {
    List<String> certain =
        then.stream().filter(j -> j.is(VerdictKind.UNMET)).map(j -> j.card().id()).toList();
    long possible =
        then.stream()
            .filter(
                j ->
                    j.verdict() instanceof Verdict.Unknown unknown
                        && unknown.possible().contains(VerdictKind.UNMET))
            .count();
    return new Reading.Amount(
        certain.size(),
        certain.size() + possible,
        Kind.FACT,
        certain.isEmpty() ? "none" : String.join(", ", certain),
        List.of());
  }

  private Reading.Amount cured(List<Judgement> then, Subject subject) {
    Set<String> unmetThen = new HashSet<>();
    then.stream().filter(j -> j.is(VerdictKind.UNMET)).forEach(j -> unmetThen.add(j.card().id()));
    List<Judgement> now =
        Stream.of(subject.id(), lastStage(subject))
            .distinct()
            .flatMap(id -> bySubject.getOrDefault(id, List.of()).stream())
            .filter(j -> unmetThen.contains(j.card().id()))
            .toList();
    boolean held = isHeld(subject);
    List<String> cured =
        now.stream()
            .filter(j -> j.is(VerdictKind.MET) || (held && j.is(VerdictKind.NOT_APPLICABLE)))
            .map(j -> j.card().id())
            .toList();
    long possible = now.stream().filter(j -> j.is(VerdictKind.UNKNOWN)).count();
    return new Reading.Amount(
        cured.size(),
        cured.size() + possible,
        Kind.FACT,
        cured.isEmpty() ? "none" : String.join(", ", cured),
        List.of());
  }

  /** Where nothing holds the bone, a principle that no longer applies is not cured. */
  private static boolean isHeld(Subject subject) {
    Construct construct = Construct.after(subject.upToHere());
    return !construct.known() || construct.implants().stream().anyMatch(h -> h.implant().isMain());
  }

  private static String lastStage(Subject subject) {
    return subject.scope() == Subject.Scope.PLAN
        ? subject.id() + "/" + subject.operation().id()
        : subject.id();
  }

  private static Optional<Operation> failedBefore(Subject subject) {
    return subject
        .failedBefore()
        .map(Subject::operation)
        .filter(failed -> failed.outcome().flatMap(Outcome::mode).isPresent());
  }
}
