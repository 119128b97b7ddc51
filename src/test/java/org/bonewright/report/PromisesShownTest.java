package org.bonewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Line;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the program promises of a review can be seen in what it shows. */
class PromisesShownTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
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
  void each_finding_shows_its_severity() {
    String text = new TextReport(true).render(REVIEW).replaceAll("\\s+", " ");
    List<Line> lines = unmet().toList();

    assertThat(lines).isNotEmpty();
    for (Line line : lines) {
      assertThat(text)
          .containsIgnoringCase(line.severity().orElseThrow() + ": " + line.title() + ".");
    }
  }

  @Test
  void each_finding_names_its_sources_in_what_programs_read() {
    JsonNode json = JSON.readTree(new JsonReport().render(REVIEW));
    Set<String> shown = new HashSet<>();
    json.findValues("sources").forEach(all -> all.forEach(one -> shown.add(one.asString())));
    List<Line> lines = unmet().toList();

    assertThat(lines).isNotEmpty();
    for (Line line : lines) {
      assertThat(line.sources()).isNotEmpty();
      assertThat(shown).containsAll(line.sources());
    }
  }
}
