package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Subject;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;

/**
 * Orders what is missing by how much an answer would decide: first by how many critical unknowns of
 * a plan it alone would settle, since the plan can still be changed; then by all the critical ones,
 * and so for major and minor ones and notes; then by how many more it touches.
 */
final class QuestionMaker {

  private QuestionMaker() {}

  private static Comparator<Question> mostDecisiveFirst(Set<String> planned) {
    Comparator<Question> order = Comparator.comparing(question -> 0);
    for (Severity severity :
        List.of(Severity.CRITICAL, Severity.MAJOR, Severity.MINOR, Severity.NOTE)) {
      order =
          order
              .thenComparingLong(q -> -count(q, severity, planned::contains))
              .thenComparingLong(q -> -count(q, severity, subject -> true));
    }
    return order.thenComparingInt(q -> -q.touches()).thenComparing(Question::field);
  }

  static List<Question> questions(JudgedCase judged) {
    Map<MissingFact, List<Question.Settled>> settles = new TreeMap<>();
    Map<MissingFact, Integer> touches = new TreeMap<>();
    judged.judgements().values().stream()
        .flatMap(List::stream)
        .forEach(j -> collect(j, settles, touches));
    List<Question> questions = new ArrayList<>();
    touches.forEach(
        (fact, count) -> {
          List<Question.Settled> alone = new ArrayList<>(settles.getOrDefault(fact, List.of()));
          alone.sort(
              Comparator.comparing(Question.Settled::worst)
                  .reversed()
                  .thenComparing(Question.Settled::subject)
                  .thenComparing(Question.Settled::principle));
          questions.add(
              new Question(
                  fact.field(), fact.question(), List.copyOf(alone), count - alone.size()));
        });
    questions.sort(
        mostDecisiveFirst(
            judged.subjects().stream()
                .filter(Subject::planned)
                .map(Subject::id)
                .collect(Collectors.toSet())));
    return List.copyOf(questions);
  }

  private static void collect(
      Judgement judgement,
      Map<MissingFact, List<Question.Settled>> settles,
      Map<MissingFact, Integer> touches) {
    if (!(judgement.verdict() instanceof Verdict.Unknown unknown)
        || !unknown.possible().contains(VerdictKind.UNMET)) {
      return; // met or not applicable: nobody needs to find that out
    }
    Question.Settled settled =
        new Question.Settled(
            judgement.card().id(),
            judgement.card().title(),
            judgement.subject(),
            judgement.severity().orElse(Severity.NOTE));
    unknown.asks().stream()
        .map(fact -> named(fact, touches))
        .distinct()
        .forEach(fact -> touches.merge(fact, 1, Integer::sum));
    unknown.settles().stream()
        .map(fact -> named(fact, touches))
        .distinct()
        .forEach(fact -> settles.computeIfAbsent(fact, f -> new ArrayList<>()).add(settled));
  }

  /** Two measures may ask for one field in other words; it is one question. */
  private static MissingFact named(MissingFact fact, Map<MissingFact, Integer> asked) {
    return asked.keySet().stream()
        .filter(other -> other.field().equals(fact.field()))
        .findFirst()
        .orElse(fact);
  }

  private static long count(Question question, Severity severity, Predicate<String> subjects) {
    return question.settles().stream()
        .filter(s -> s.worst() == severity && subjects.test(s.subject()))
        .count();
  }
}
