package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFolder;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Question;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a review prints, from cards and program alike, must be fit to be read aloud in a meeting.
 */
class PlainWordsTest {

  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());
  private static final Map<Path, Review> REVIEWS = new HashMap<>();
  private static final int MOST_WORDS = 25;

  /** Two capital letters in one word, or in one number. */
  private static final Pattern ABBREVIATION =
      Pattern.compile("(?<![\\w/-])[A-Za-z0-9]*[A-Z][a-z0-9]*[A-Z][A-Za-z0-9]*\\b|\\bn/a\\b");

  /** Where the reader finds what a short form stands for. */
  private static final Map<String, String> EXPLAINED =
      Map.of(
          "HbA1c", "in brackets behind long-term blood sugar",
          "ASA", "in brackets behind anaesthetic risk",
          "IIIA", "grade of an open fracture, behind the word grade",
          "IIIB", "grade of an open fracture, behind the word grade",
          "IIIC", "grade of an open fracture, behind the word grade");

  /** Words in capitals for their weight; they are no short forms. */
  private static final Set<String> WEIGHTY = Set.of("CRITICAL", "MAJOR", "NO");

  private static final Pattern SOURCE = Pattern.compile("(?m)^( +)source: .*(\\n\\1 .*)*");
  private static final Pattern PLACE = Pattern.compile("\\[[\\w./-]*\\]|\\w+(/\\w+)+");
  private static final Pattern HEADLINE = Pattern.compile("(?m)^\\S.*$");

  static Stream<Path> cases() {
    return CaseFolder.files().stream().filter(file -> !file.startsWith(Path.of("cases", "bases")));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void every_short_form_is_explained_where_it_stands(Path file) {
    assertThat(unexplained(new TextReport(true).render(review(file)))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void every_question_is_asked_in_short_sentences(Path file) {
    List<String> questions = review(file).questions().stream().map(Question::question).toList();
    assertThat(questions.stream().flatMap(PlainWordsTest::sentences))
        .allMatch(sentence -> sentence.split("\\s+", -1).length <= MOST_WORDS);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void every_sentence_can_be_read_aloud_in_one_breath(Path file) {
    assertThat(Prose.sentences(new TextReport(false).render(review(file))))
        .allSatisfy(
            sentence ->
                assertThat(sentence.split("\\s+", -1)).hasSizeLessThanOrEqualTo(MOST_WORDS));
  }

  @Test
  void a_short_form_that_nobody_explains_is_found() {
    assertThat(unexplained("  The CRP is 46 mg/L, the aPTT is not told, MAJOR, n/a. [bone/xY]"))
        .containsExactly("CRP", "aPTT", "n/a");
    assertThat(unexplained("  why\n    source: AO, JBJS,\n     BMC 2020\n  then EMG"))
        .containsExactly("EMG");
  }

  private static Set<String> unexplained(String text) {
    String own = SOURCE.matcher(text).replaceAll("");
    own = HEADLINE.matcher(own).replaceAll("");
    Set<String> found = new TreeSet<>();
    ABBREVIATION
        .matcher(PLACE.matcher(own).replaceAll(m -> m.group().equals("n/a") ? "n/a" : ""))
        .results()
        .forEach(m -> found.add(m.group()));
    found.removeAll(EXPLAINED.keySet());
    found.removeAll(WEIGHTY);
    return found;
  }

  private static Stream<String> sentences(String text) {
    return Pattern.compile("(?<=[.:;?!])\\s+(?=[A-Z])").splitAsStream(text);
  }

  private static Review review(Path file) {
    return REVIEWS.computeIfAbsent(file, path -> REVIEWER.review(CaseFolder.read(path)));
  }
}
