package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Line;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.Test;

/** What the program promises of a review can be seen in what it shows. */
class PromisesShownTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Review REVIEW =
      new Reviewer(RULES)
          .review(
              CaseText.plated()
                  .redone("plate-broken-at-empty-hole")
                  .with("{findings: [{day: 190, pulses: 'absent'}]}")
                  .file());

  private static Stream<Line> unmet() {
    return REVIEW.chapters().stream()
        .flatMap(chapter -> Stream.concat(chapter.fits().stream(), chapter.others().stream()))
        .flatMap(cause -> Stream.concat(Stream.of(cause.lead()), cause.nested().stream()));
  }

  @Test
  void red_flags_stand_above_everything_that_is_judged() {
    for (boolean verbose : new boolean[] {false, true}) {
      String text = new TextReport(verbose).render(REVIEW);

      String above = text.substring(0, text.indexOf("IN SHORT"));

      assertThat(above).contains("Pulses absent");
      assertThat(unmet()).isNotEmpty().noneMatch(line -> above.contains(line.title()));
    }
  }

  @Test
  void each_finding_shows_its_severity_and_its_sources() {
    String text = new TextReport(true).render(REVIEW).replaceAll("\\s+", " ");
    List<Line> lines = unmet().toList();

    assertThat(lines).isNotEmpty();
    for (Line line : lines) {
      assertThat(text).contains(line.severity().orElseThrow().name() + ": " + line.title() + ".");
      assertThat(line.sources()).isNotEmpty();
      assertThat(line.sources()).allSatisfy(source -> assertThat(text).contains(source));
    }
  }
}
