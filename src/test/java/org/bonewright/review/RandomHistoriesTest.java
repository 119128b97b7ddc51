package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.RandomHistory;
import org.bonewright.measures.Subject;
import org.bonewright.principles.InfectionFirst;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.VerdictKind;
import org.bonewright.report.JsonReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds of every review, whatever the history. */
class RandomHistoriesTest {

  private static final int FEW = 1_000;
  private static final int MANY = 20_000;

  /** One in so many is reviewed twice. */
  private static final int AGAIN = 20;

  private static final RuleSet RULES = RuleSet.built();
  private static final Judge JUDGE = new Judge(RULES);
  private static final Reviewer REVIEWER = new Reviewer(RULES);
  private static final RandomHistory HISTORIES = RandomHistory.ofAllCases();

  @Test
  void a_review_of_a_random_history_keeps_its_promises() {
    check(FEW, 20_261_126);
  }

  @Test
  @Tag("deep")
  void a_review_of_many_random_histories_keeps_its_promises() {
    check(MANY, 1_126);
  }

  private static void check(int histories, long seed) {
    IntStream.range(0, histories)
        .parallel()
        .forEach(
            i -> {
              CaseText text = HISTORIES.next(new Random(seed + i));
              try {
                holds(text, i % AGAIN == 0);
              } catch (RuntimeException | AssertionError fault) {
                throw new AssertionError(
                    "history " + i + " of seed " + seed + ": " + text.tree(), fault);
              }
            });
  }

  private static void holds(CaseText text, boolean twice) {
    CaseFile file = text.file();
    JudgedCase judged = JUDGE.judge(file);
    judged.subjects().forEach(subject -> oneVerdictEach(judged.of(subject)));
    judged.subjects().forEach(subject -> infectionFirst(judged, subject));
    judged.subjects().forEach(subject -> noGraftForTheLiving(judged, subject));
    Review review = REVIEWER.review(judged);
    review.chapters().stream()
        .flatMap(RandomHistoriesTest::unmet)
        .forEach(RandomHistoriesTest::told);
    if (twice) {
      JsonReport json = new JsonReport();
      assertThat(json.render(REVIEWER.review(file))).isEqualTo(json.render(review));
    }
  }

  private static void oneVerdictEach(List<Judgement> judgements) {
    assertThat(judgements.stream().map(j -> j.card().id())).doesNotHaveDuplicates();
  }

  /** With proven infection that no earlier stage treats, compression and graft are not of now. */
  private static void infectionFirst(JudgedCase judged, Subject subject) {
    assertThat(InfectionFirst.unlabelled(judged, subject)).isEmpty();
  }

  /** Where the line is alive and only moves, nobody is told to put graft in. */
  private static void noGraftForTheLiving(JudgedCase judged, Subject subject) {
    if (judged.scene(subject).certainly("nonunion-type", "hypertrophic")) {
      assertThat(
              judged.of(subject).stream()
                  .filter(j -> j.is(VerdictKind.UNMET))
                  .filter(j -> j.card().remedyMoves().equals(List.of("add-graft")))
                  .map(j -> j.card().id()))
          .isEmpty();
    }
  }

  private static Stream<Line> unmet(Chapter chapter) {
    return Stream.concat(chapter.fits().stream(), chapter.others().stream())
        .flatMap(h -> Stream.concat(Stream.of(h.lead()), h.nested().stream()));
  }

  /** Every finding has its words, what it was read from, a severity, a remedy and a source. */
  private static void told(Line line) {
    assertThat(line.verdict()).isEqualTo(VerdictKind.UNMET);
    assertThat(line.severity()).isPresent();
    assertThat(line.words()).isNotBlank().doesNotContain("{", "}", "null", "NaN");
    assertThat(line.workings()).isNotEmpty();
    assertThat(line.why()).isNotBlank();
    assertThat(line.remedy()).isNotBlank();
    assertThat(line.sources()).isNotEmpty();
  }
}
