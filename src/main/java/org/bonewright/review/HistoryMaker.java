package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Words;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Prognosis;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** Works out what the operations so far teach together. */
final class HistoryMaker {

  private final JudgedCase judged;
  private final RuleSet rules;
  private final List<Subject> done;

  HistoryMaker(JudgedCase judged, RuleSet rules) {
    this.judged = judged;
    this.rules = rules;
    this.done = judged.subjects().stream().filter(subject -> !subject.planned()).toList();
  }

  History history() {
    return new History(neverAddressed(), triedTwice(), prognosis());
  }

  /** What an operation left unmet, and none after it met or made pointless. */
  private List<String> neverAddressed() {
    List<Lesson> lessons = new ArrayList<>();
    for (Card card : rules.cards()) {
      List<String> unmet = new ArrayList<>();
      Severity worst = Severity.NOTE;
      for (Subject subject : done) {
        Optional<Judgement> judgement = judged.of(subject, card.id());
        if (judgement.filter(j -> j.is(VerdictKind.UNMET)).isPresent()) {
          unmet.add(subject.id());
          Severity severity = judgement.flatMap(Judgement::severity).orElse(Severity.NOTE);
          worst = severity.compareTo(worst) > 0 ? severity : worst;
        } else if (judgement.filter(j -> j.is(VerdictKind.UNKNOWN)).isEmpty()) {
          unmet.clear();
          worst = Severity.NOTE;
        }
      }
      if (!unmet.isEmpty() && worst.compareTo(Severity.MAJOR) >= 0) {
        lessons.add(new Lesson(card.title(), unmet, worst));
      }
    }
    return lessons.stream()
        .sorted(
            Comparator.comparing((Lesson l) -> -l.unmet().size())
                .thenComparing(Comparator.comparing(Lesson::worst).reversed()))
        .map(lesson -> lesson.title() + " (" + String.join(", ", lesson.unmet()) + ")")
        .toList();
  }

  private record Lesson(String title, List<String> unmet, Severity worst) {}

  private List<String> triedTwice() {
    Map<String, List<String>> by = new TreeMap<>();
    for (Subject subject : done) {
      if (failed(subject)) {
        means(subject.operation())
            .forEach(means -> by.computeIfAbsent(means, m -> new ArrayList<>()).add(subject.id()));
      }
    }
    return by.entrySet().stream()
        .filter(entry -> entry.getValue().size() > 1)
        .map(entry -> entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
        .toList();
  }

  private static List<String> means(Operation operation) {
    List<String> means = new ArrayList<>();
    operation
        .fixation()
        .ifPresent(put -> put.forEach(implant -> kind(implant).ifPresent(means::add)));
    operation
        .biology()
        .ifPresent(grafts -> grafts.forEach(graft -> means.add(Words.of(graft.kind()))));
    return means.stream().distinct().toList();
  }

  private static Optional<String> kind(Implant implant) {
    if (implant instanceof Plate) {
      return Optional.of("plate");
    }
    if (implant instanceof Nail) {
      return Optional.of("nail");
    }
    if (implant instanceof ExternalFixator) {
      return Optional.of("external fixator");
    }
    if (implant instanceof Cerclage) {
      return Optional.of("cerclage");
    }
    if (implant instanceof LagScrew) {
      return Optional.of("lag screw");
    }
    return implant instanceof Strut ? Optional.of("strut") : Optional.empty();
  }

  private boolean failed(Subject subject) {
    return judged.scene(subject).certainly("operation-failed", "yes");
  }

  /** Only where one plan is to be carried out, and something failed before. */
  private Optional<String> prognosis() {
    List<Plan> plans = PlanVerdicts.decisive(judged.caseFile());
    if (plans.size() != 1 || done.stream().noneMatch(this::failed)) {
      return Optional.empty();
    }
    Scene plan = judged.scenes().get(plans.get(0).id());
    List<Operation> stages = plans.get(0).stages();
    boolean plate = puts(stages, Plate.class);
    if (plan == null || plate == puts(stages, Nail.class)) {
      return Optional.empty();
    }
    boolean graft = stages.stream().anyMatch(s -> s.biology().map(b -> !b.isEmpty()).orElse(false));
    return rules.prognosis().of(judged.caseFile().bone().name(), way(plan, plate), graft);
  }

  private static Prognosis.Way way(Scene plan, boolean plate) {
    if (plate) {
      return plan.certainly("nail-revision", "plate-over")
          ? Prognosis.Way.PLATE_OVER_NAIL
          : Prognosis.Way.PLATE;
    }
    return plan.certainly("nail-revision", "exchanged")
        ? Prognosis.Way.EXCHANGE_NAIL
        : Prognosis.Way.NAIL;
  }

  private static boolean puts(List<Operation> operations, Class<? extends Implant> kind) {
    return operations.stream()
        .flatMap(operation -> operation.fixation().stream().flatMap(List::stream))
        .anyMatch(kind::isInstance);
  }
}
