package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.report.html.HtmlReport;
import org.bonewright.review.Line;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A principle whose number a model samples, from the measure to what is shown: the residual gap of
 * a plated base case, which is met up to 1 mm, is taken as if a model gave it.
 */
class SampledMeasureTest {

  private static final RuleSet BUILT = RuleSet.built();
  private static final String PRINCIPLE = "residual-gap-closed";
  private static final Card CARD = BUILT.card(PRINCIPLE).orElseThrow();
  private static final String MEASURE = Optional.ofNullable(CARD.needs().get("gap")).orElseThrow();
  private static final CaseFile CASE =
      BaseCase.of("humerus-locking-plate-nonunion-plan").caseFile();
  private static final String ON = "op-1";

  private static Reading.Sampled samples(int small, int wide, MissingFact... missing) {
    List<Double> samples = new ArrayList<>(Collections.nCopies(small, 0.4567));
    samples.addAll(Collections.nCopies(wide, 2.3456));
    return new Reading.Sampled(
        1.5432, samples, "frame model", "how hard the limb is loaded", List.of(missing));
  }

  private static RuleSet rules(Reading reading) {
    Definition definition = BUILT.definition(MEASURE);
    return BUILT.with(
        new Measure() {
          @Override
          public Definition definition() {
            return definition;
          }

          @Override
          public Reading take(Scene scene) {
            return reading;
          }
        });
  }

  private static Judgement judgement(Reading reading) {
    JudgedCase judged = new Judge(rules(reading)).judge(CASE);
    return judged.judgements().get(ON).stream()
        .filter(j -> j.card().id().equals(PRINCIPLE))
        .findFirst()
        .orElseThrow();
  }

  private static Review review(Reading reading) {
    return new Reviewer(rules(reading)).review(CASE);
  }

  private static Line line(Review review) {
    return review.chapters().stream()
        .filter(chapter -> chapter.subject().equals(ON))
        .flatMap(
            chapter ->
                Stream.of(
                        chapter.met().stream(),
                        chapter.unknown().stream(),
                        Stream.concat(chapter.fits().stream(), chapter.others().stream())
                            .flatMap(h -> Stream.concat(Stream.of(h.lead()), h.nested().stream())))
                    .flatMap(lines -> lines))
        .filter(line -> line.principle().equals(PRINCIPLE))
        .findFirst()
        .orElseThrow();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Nested
  class AVerdict {

    @Test
    void carries_the_share_of_its_samples_through_precedence() {
      Judgement met = judgement(samples(194, 6));
      assertThat(met.is(VerdictKind.MET)).isTrue();
      assertThat(met.share().orElseThrow().inWords())
          .isEqualTo(
              "in 194 of 200 sampled assumptions; most depends on how hard the limb is loaded");
    }

    @Test
    void offers_no_turn_of_what_a_model_samples() {
      assertThat(judgement(Reading.number(0.5, "")).turns()).extracting(Turn::need).contains("gap");
      assertThat(judgement(samples(200, 0)).turns()).extracting(Turn::need).doesNotContain("gap");
      assertThat(judgement(samples(194, 6)).turns()).isEmpty();
    }

    @Test
    void that_is_open_asks_for_what_would_narrow_the_samples() {
      MissingFact weight = new MissingFact("patient/weightKg", "How heavy is the patient?");
      Review review = review(samples(120, 80, weight));
      assertThat(line(review).words()).isEqualTo("Cannot be judged: How heavy is the patient?");
      assertThat(review.questions())
          .filteredOn(question -> question.field().equals("patient/weightKg"))
          .singleElement()
          .satisfies(question -> assertThat(question.touches()).isPositive());
    }
  }

  @Nested
  class InWords {

    @Test
    void a_number_stands_with_its_unit_and_its_likely_range() {
      assertThat(line(review(samples(10, 190))).words()).contains("1.5 mm (likely 0.5–2.3 mm)");
    }

    @Test
    void what_is_open_without_a_question_says_how_the_samples_are_shared() {
      Line open = line(review(samples(120, 80)));
      assertThat(open.words())
          .isEqualTo(
              "Cannot be judged: met in 120, unmet in 80 of 200 sampled assumptions; most depends"
                  + " on how hard the limb is loaded.");
      assertThat(open.shareBeside()).as("is not said twice").isEmpty();
      assertThat(open.share()).isPresent();
    }

    @Test
    void a_reading_says_that_it_is_of_a_model() {
      Line.Measured read =
          line(review(samples(194, 6))).readings().stream()
              .filter(reading -> reading.measure().equals(MEASURE))
              .findFirst()
              .orElseThrow();
      assertThat(read.kind()).isEqualTo("model");
      assertThat(read.unit()).isEqualTo("mm");
      assertThat(read.sampled())
          .contains(new Line.Sampled(1.54, 0.46, 0.46, 200, "how hard the limb is loaded"));
    }
  }

  @Nested
  class InTheReview {

    @Test
    void samples_are_not_among_what_was_assumed() {
      assertThat(review(samples(194, 6)).assumptions())
          .noneMatch(assumption -> assumption.what().contains("frame model"));
    }

    @Test
    void split_samples_of_something_critical_leave_a_plan_open() {
      List<Double> split = new ArrayList<>(Collections.nCopies(15, 0.5));
      split.addAll(Collections.nCopies(5, 6.0));
      Review open = review(new Reading.Sampled(0.5, split, "", "the load", List.of()));
      Review closed = review(new Reading.Sampled(0.5, split.subList(0, 15), "", "", List.of()));
      assertThat(closed.leavesCriticalOpen()).isFalse();
      assertThat(open.leavesCriticalOpen()).isTrue();
    }
  }

  @Nested
  class Shown {

    @Test
    void as_text_the_share_stands_behind_the_sentence() {
      String text = flat(new TextReport(true).render(review(samples(10, 190))));
      assertThat(text)
          .contains("[in 190 of 200 sampled assumptions; most depends on how hard")
          .contains("1.5 mm (likely 0.5–2.3 mm) (frame model)");
      String met = flat(new TextReport(true).render(review(samples(194, 6))));
      assertThat(met).contains("[in 194 of 200 sampled assumptions; most depends on how hard");
    }

    @Test
    void on_the_page_the_share_stands_behind_the_sentence() {
      String page = new HtmlReport(List.of()).render(review(samples(10, 190)));
      assertThat(page)
          .contains("<small>[in 190 of 200 sampled assumptions; most depends on how hard");
    }

    @Test
    void as_json_with_its_numbers_and_without_its_samples() {
      JsonNode root = new JsonMapper().readTree(new JsonReport().render(review(samples(10, 190))));
      JsonNode line = found(root);
      assertThat(line.get("share").toString())
          .isEqualTo(
              "{\"samples\":200,\"counts\":[{\"verdict\":\"unmet\",\"fewest\":190,\"most\":190}],"
                  + "\"decides\":\"how hard the limb is loaded\"}");
      JsonNode reading =
          line.get("readings").values().stream()
              .filter(read -> read.get("measure").asString().equals(MEASURE))
              .findFirst()
              .orElseThrow();
      assertThat(reading.toString())
          .isEqualTo(
              "{\"measure\":\""
                  + MEASURE
                  + "\",\"value\":\"1.5 (likely 0.5–2.3)\",\"unit\":\"mm\",\"kind\":\"model\","
                  + "\"nominal\":1.5,\"low\":0.5,\"high\":2.3,\"samples\":200,"
                  + "\"decides\":\"how hard the limb is loaded\",\"working\":\"frame model\"}");
    }

    private static JsonNode found(JsonNode root) {
      return root.findParents("principle").stream()
          .filter(node -> node.get("principle").asString().equals(PRINCIPLE))
          .filter(node -> node.has("share"))
          .findFirst()
          .orElseThrow();
    }
  }
}
