package org.bonewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.measures.MissingFact;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;

/**
 * Orders what is missing by how much an answer would decide: first by how many critical unknowns it
 * alone would settle, then major, then minor ones, then notes; then by how many more it touches.
 */
final class QuestionMaker {

  private static final Comparator<Question> MOST_DECISIVE_FIRST =
      Comparator.comparingLong((Question q) -> -count(q, Severity.CRITICAL))
          .thenComparingLong(q -> -count(q, Severity.MAJOR))
          .thenComparingLong(q -> -count(q, Severity.MINOR))
          .thenComparingLong(q -> -count(q, Severity.NOTE))
          .thenComparingInt(q -> -q.touches())
          .thenComparing(Question::field);

  private QuestionMaker() {}

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
    questions.sort(MOST_DECISIVE_FIRST);
    return List.copyOf(questions);
  }

  private static void collect(
      Judgement judgement,
      Map<MissingFact, List<Question.Settled>> settles,
      Map<MissingFact, Integer> touches) {
    if (!(judgement.verdict() instanceof Verdict.Unknown unknown)) {
      return;
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

  private static long count(Question question, Severity severity) {
    return question.settles().stream().filter(s -> s.worst() == severity).count();
  }
}
