package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Subject;

/**
 * Counts of mechanical principles that are unmet at major or critical: here, in the operation
 * before, and of the latter those that still are and those that are not any more. Beside them
 * stands the count of grave findings of every family in the operation before. Mechanical are the
 * families of stability, compression, plate, hold and nail.
 */
final class MechanicalFaults {

  static final String HERE = "mechanical-faults-here";
  static final String BEFORE = "mechanical-faults-before";
  static final String LEFT = "mechanical-faults-left";
  static final String CLEARED = "mechanical-faults-cleared";
  static final String GRAVE = "grave-findings-before";

  /** A gap in the notes makes no bone fail. */
  private static final String RECORDS = "records";

  private static final Set<String> FAMILIES =
      Set.of("stability", "compression", "plate", "hold", "nail");

  private static final Set<String> COMPUTED =
      Set.of("gap-strain", "gap-movement", "metal-life-over-union");

  private static final Map<String, Definition> DEFINITIONS = made();

  private final Map<String, List<Judgement>> bySubject;

  MechanicalFaults(Map<String, List<Judgement>> bySubject) {
    this.bySubject = bySubject;
  }

  /** How sure it is that a principle is unmet at major or critical. */
  private enum Fault {
    CERTAIN,
    POSSIBLE
  }

  /** Return the definition of each count by its id. */
  static Map<String, Definition> definitions() {
    return DEFINITIONS;
  }

  /** What is computed of a gap or a weak plate stands for these, and they count themselves. */
  private static boolean isComputed(Judgement judged) {
    return judged.card().needs().values().stream().anyMatch(COMPUTED::contains);
  }

  private static Map<String, Definition> made() {
    Map<String, Definition> all = new TreeMap<>();
    add(
        all,
        HERE,
        "Mechanical findings here",
        "principles of stability, compression, plate, hold and nail that are unmet here at major or"
            + " critical, those left out that are judged by computed strain, movement or life of the"
            + " plate; from certainly to possibly so");
    add(
        all,
        BEFORE,
        "Mechanical findings before",
        "the same of the last operation before that was meant to unite the bone");
    add(
        all,
        LEFT,
        "Of these, still unmet",
        "of the mechanical findings of the operation before those that are still unmet at major or"
            + " critical; from certainly to possibly so");
    add(
        all,
        CLEARED,
        "Of these, corrected",
        "of the mechanical findings of the operation before those that are no longer unmet at major"
            + " or critical; from certainly to possibly so");
    add(
        all,
        GRAVE,
        "Grave findings before",
        "principles of every family, those of the records left out, that the last operation before"
            + " leaves unmet at major or critical; from certainly to possibly so");
    return all;
  }

  private static void add(Map<String, Definition> all, String id, String title, String formula) {
    all.put(
        id,
        new Definition(
            id,
            title,
            Definition.count(1),
            formula,
            List.of("operations/outcome/result", "verdicts of level 1"),
            "our convention"));
  }

  /** Return what a count reads for a subject. */
  Reading read(String id, Subject subject) {
    Map<String, Fault> here = faults(here(subject));
    if (id.equals(HERE)) {
      return count(here);
    }
    Optional<String> before = subject.failedBefore().map(Subject::id);
    if (before.isEmpty()) {
      return new Reading.None("no operation before");
    }
    if (id.equals(GRAVE)) {
      return count(faults(of(before.get()), judged -> !judged.card().cause().equals(RECORDS)));
    }
    Map<String, Fault> then = faults(of(before.get()));
    return count(
        switch (id) {
          case BEFORE -> then;
          case LEFT -> both(then, here);
          case CLEARED -> cleared(then, here);
          default -> throw new IllegalArgumentException("no such count: " + id);
        });
  }

  private static Map<String, Fault> both(Map<String, Fault> then, Map<String, Fault> here) {
    Map<String, Fault> left = new TreeMap<>();
    then.forEach(
        (principle, fault) -> {
          Fault now = here.get(principle);
          if (now != null) {
            left.put(principle, fault == Fault.CERTAIN ? now : Fault.POSSIBLE);
          }
        });
    return left;
  }

  private static Map<String, Fault> cleared(Map<String, Fault> then, Map<String, Fault> here) {
    Map<String, Fault> cleared = new TreeMap<>();
    then.forEach(
        (principle, fault) -> {
          Fault now = here.get(principle);
          if (now != Fault.CERTAIN) {
            cleared.put(principle, now == null ? fault : Fault.POSSIBLE);
          }
        });
    return cleared;
  }

  private static Reading count(Map<String, Fault> faults) {
    List<String> certain =
        faults.entrySet().stream()
            .filter(fault -> fault.getValue() == Fault.CERTAIN)
            .map(Map.Entry::getKey)
            .toList();
    return new Reading.Amount(
        certain.size(),
        faults.size(),
        Kind.FACT,
        certain.isEmpty() ? "none" : String.join(", ", certain),
        List.of());
  }

  private static Map<String, Fault> faults(List<Judgement> judgements) {
    return faults(
        judgements, judged -> FAMILIES.contains(judged.family().id()) && !isComputed(judged));
  }

  private static Map<String, Fault> faults(
      List<Judgement> judgements, Predicate<Judgement> counted) {
    Map<String, Fault> faults = new TreeMap<>();
    for (Judgement judgement : judgements) {
      if (counted.test(judgement)) {
        fault(judgement.verdict())
            .ifPresent(
                fault ->
                    faults.merge(
                        judgement.card().id(),
                        fault,
                        (one, two) -> one == Fault.CERTAIN ? one : two));
      }
    }
    return faults;
  }

  private static Optional<Fault> fault(Verdict verdict) {
    if (verdict instanceof Verdict.Unmet unmet) {
      if (unmet.mildest().compareTo(Severity.MAJOR) >= 0) {
        return Optional.of(Fault.CERTAIN);
      }
      return grave(unmet.severity());
    }
    return verdict instanceof Verdict.Unknown unknown
            && unknown.possible().contains(VerdictKind.UNMET)
        ? grave(unknown.worst())
        : Optional.empty();
  }

  private static Optional<Fault> grave(Severity worst) {
    return worst.compareTo(Severity.MAJOR) >= 0 ? Optional.of(Fault.POSSIBLE) : Optional.empty();
  }

  /**
   * The verdicts here: a plan is as its last stage leaves it, a stage as its plan is judged too.
   */
  private List<Judgement> here(Subject subject) {
    List<Judgement> here = new ArrayList<>(of(subject.id()));
    if (subject.scope() == Subject.Scope.PLAN) {
      here.addAll(of(subject.id() + "/" + subject.operation().id()));
    } else if (subject.scope() == Subject.Scope.STAGE) {
      here.addAll(of(subject.id().substring(0, subject.id().indexOf('/'))));
    }
    return here;
  }

  private List<Judgement> of(String subject) {
    return bySubject.getOrDefault(subject, List.of());
  }
}
