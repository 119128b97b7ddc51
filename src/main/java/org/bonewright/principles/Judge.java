package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;

/**
 * Judges a whole case: every principle on every subject that it concerns, level by level, then
 * precedence. The same case gives the same judgements in the same order.
 */
public final class Judge {

  private final RuleSet rules;

  /** Make a judge with these rules. */
  public Judge(RuleSet rules) {
    this.rules = rules;
  }

  /** Judge a case. */
  public JudgedCase judge(CaseFile caseFile) {
    return whole(caseFile, raw(caseFile, Map.of()));
  }

  /** Return the verdicts with precedence applied to them. */
  JudgedCase whole(CaseFile caseFile, Raw raw) {
    return new Precedence(rules.rules(), rules.site())
        .apply(new JudgedCase(caseFile, raw.subjects(), raw.scenes(), raw.bySubject()));
  }

  /**
   * Verdicts before precedence.
   *
   * @param subjects the subjects in order of time
   * @param scenes what was measured, by subject
   * @param bySubject the verdicts by subject
   */
  record Raw(
      List<Subject> subjects, Map<String, Scene> scenes, Map<String, List<Judgement>> bySubject) {}

  /**
   * Return the verdicts before precedence.
   *
   * @param known verdicts of subjects that need not be judged again, as they were before precedence
   */
  Raw raw(CaseFile caseFile, Map<String, List<Judgement>> known) {
    List<Subject> subjects = Subject.of(caseFile);
    Map<String, Scene> scenes = new LinkedHashMap<>();
    subjects.forEach(s -> scenes.put(s.id(), new Scene(s, rules.measures())));
    Map<String, List<Judgement>> bySubject = new LinkedHashMap<>();
    subjects.forEach(s -> bySubject.put(s.id(), new ArrayList<>()));
    for (int level = 1; level <= 2; level++) {
      VerdictCounts counts = new VerdictCounts(copy(bySubject));
      int now = level;
      List<Pending> pending =
          ofEach(
              subjects.stream().filter(subject -> !known.containsKey(subject.id())).toList(),
              subject -> pending(now, subject, scenes, counts));
      known.values().stream()
          .flatMap(List::stream)
          .filter(j -> j.card().level() == now)
          .forEach(j -> add(bySubject, j));
      settle(pending).forEach(j -> add(bySubject, j));
    }
    return new Raw(subjects, scenes, bySubject);
  }

  /**
   * Return what comes of each subject, in the order of the subjects. They are looked at by several
   * threads, but a plan and its last stage, which end in the same construct, by one: what it solved
   * for one of them it need not solve again.
   */
  private static <T> List<T> ofEach(List<Subject> subjects, Function<Subject, List<T>> find) {
    Map<String, List<Integer>> byConstruct = new LinkedHashMap<>();
    for (int place = 0; place < subjects.size(); place++) {
      byConstruct
          .computeIfAbsent(subjects.get(place).operation().id(), id -> new ArrayList<>())
          .add(place);
    }
    return byConstruct.values().parallelStream()
        .flatMap(
            together ->
                together.stream().map(place -> Map.entry(place, find.apply(subjects.get(place)))))
        .sorted(Map.Entry.comparingByKey())
        .flatMap(found -> found.getValue().stream())
        .toList();
  }

  private List<Pending> pending(
      int level, Subject subject, Map<String, Scene> scenes, VerdictCounts counts) {
    return rules.cards().stream()
        .filter(card -> card.level() == level && concerns(card, subject))
        .map(card -> pending(card, subject, scenes, counts))
        .toList();
  }

  private static Map<String, List<Judgement>> copy(Map<String, List<Judgement>> bySubject) {
    Map<String, List<Judgement>> copy = new LinkedHashMap<>();
    bySubject.forEach((subject, judgements) -> copy.put(subject, List.copyOf(judgements)));
    return copy;
  }

  private static void add(Map<String, List<Judgement>> bySubject, Judgement judgement) {
    bySubject.computeIfAbsent(judgement.subject(), s -> new ArrayList<>()).add(judgement);
  }

  /** Return whether a principle is judged on this kind of subject. */
  static boolean concerns(Card card, Subject subject) {
    return switch (card.subject()) {
      case OPERATION -> subject.scope() != Subject.Scope.PLAN;
      case PLAN ->
          subject.scope() == Subject.Scope.PLAN
              || (subject.scope() == Subject.Scope.OPERATION && !subject.before().isEmpty());
      case CASE -> subject.closesTheCase();
    };
  }

  private record Pending(
      Card card,
      Subject subject,
      Map<String, Reading> readings,
      List<World> worlds,
      List<World> whateverTheModel,
      Map<String, List<World>> neighbours) {}

  private Pending pending(
      Card card, Subject subject, Map<String, Scene> scenes, VerdictCounts counts) {
    Map<String, Reading> readings = new TreeMap<>();
    card.needs()
        .forEach((need, measure) -> readings.put(need, read(measure, subject, scenes, counts)));
    card.tells().forEach(told -> readings.put(told.of(), read(told.of(), subject, scenes, counts)));
    Worlds former = rules.worlds(card);
    List<World> worlds = former.of(readings);
    return new Pending(
        card,
        subject,
        readings,
        worlds,
        former.whateverTheModel(readings),
        Turns.neighbours(former, worlds, readings));
  }

  private static Reading read(
      String measure, Subject subject, Map<String, Scene> scenes, VerdictCounts counts) {
    if (VerdictCounts.definition(measure).isPresent()) {
      return counts.read(measure, subject);
    }
    Scene scene = scenes.get(subject.id());
    if (scene == null) {
      throw new IllegalStateException("no scene for " + subject.id());
    }
    return scene.read(measure);
  }

  private List<Judgement> settle(List<Pending> pending) {
    List<World> all = new ArrayList<>();
    for (Pending p : pending) {
      all.addAll(p.worlds());
      all.addAll(p.whateverTheModel());
      p.neighbours().values().forEach(all::addAll);
    }
    Verdicts verdicts = rules.rules().judge(all);
    return pending.parallelStream().map(p -> judgement(p, verdicts)).toList();
  }

  /** What is only told is left out where it is not told, or there is nothing to tell. */
  private static Map<String, Reading> toTell(
      Card card, Map<String, Reading> readings, Verdict verdict) {
    Map<String, Reading> left = new TreeMap<>(readings);
    for (Card.Told told : card.tells()) {
      Reading reading = readings.get(told.of());
      if (reading instanceof Reading.None
          || reading instanceof Reading.Unknown
          || !told.with().contains(verdict.kind())) {
        left.remove(told.of());
      }
    }
    return left;
  }

  private Judgement judgement(Pending p, Verdicts verdicts) {
    CardVerdict joined =
        new CardVerdict(rules.worlds(p.card()), p.worlds(), verdicts, p.readings());
    Verdict verdict = joined.verdict();
    return new Judgement(
        p.card(),
        rules.family(p.card()),
        p.subject().id(),
        verdict,
        Precedence.baseSeverity(verdict),
        List.of(),
        List.of(),
        toTell(p.card(), p.readings(), verdict),
        LimitsHere.of(p.card(), p.worlds()),
        Turns.of(verdict.kind(), p.worlds(), p.neighbours(), verdicts),
        joined.share(verdict, p.whateverTheModel()));
  }
}
