package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.page.ReviewPage;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.SiteChanges;
import org.bonewright.principles.VerdictKind;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.site.SiteText;
import org.junit.jupiter.api.Test;

/** What a site has set moves what it should, and is shown beside what is published. */
class LocalLimitsTest {

  private static final RuleSet PUBLISHED = RuleSet.built();
  private static final CaseFile DEMO = demo();
  private static final String SPAN = "plate-span-ratio";

  private static CaseFile demo() {
    try {
      byte[] bytes = Files.readAllBytes(Path.of("cases/demo/femur-three-operations/case.json"));
      return new Intake().read(bytes).caseFile().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Review by(SiteText site) {
    return new Reviewer(site.on(PUBLISHED)).review(DEMO);
  }

  /** The first plate of the demo has a ratio of 4.41. */
  private static SiteText pressed(double limit) {
    return new SiteText().limit(SPAN, "pressed", "simple compressed", limit, "1");
  }

  private static PrincipleTable.Cell cell(Review review, String principle, String column) {
    return review.table().rows().stream()
        .filter(row -> row.principle().equals(principle))
        .findFirst()
        .orElseThrow()
        .cells()
        .get(review.table().columns().indexOf(column));
  }

  private static List<PrincipleTable.Row> others(Review review) {
    return review.table().rows().stream().filter(row -> !row.principle().equals(SPAN)).toList();
  }

  @Test
  void a_limit_below_what_was_built_makes_it_met_and_moves_no_other_principle() {
    Review local = by(pressed(4.4));

    assertThat(cell(local, SPAN, "op-1").verdict()).isEqualTo(VerdictKind.MET);
    assertThat(others(local)).isEqualTo(others(new Reviewer(PUBLISHED).review(DEMO)));
  }

  @Test
  void a_remedy_asks_for_what_the_site_asks_for() {
    Review local = by(new SiteText().limit("five-deep-samples", "five", 4, "1"));

    assertThat(new TextReport(false).render(local))
        .contains("3 of at least 4.", "Take 4 or more deep")
        .doesNotContain("Take 5 or more");
  }

  @Test
  void a_limit_above_what_was_built_leaves_it_unmet_and_is_in_its_words() {
    Review local = by(pressed(4.5));

    assertThat(cell(local, SPAN, "op-1").verdict()).isEqualTo(VerdictKind.UNMET);
    assertThat(new TextReport(true).render(local)).contains("at least 4.5 if compressed");
    assertThat(local.local().orElseThrow().differing()).isZero();
    assertThat(local.local().orElseThrow().inShort()).contains("no verdict differs");
  }

  @Test
  void a_limit_for_other_words_is_said_to_be_out_of_use() {
    LocalLimits local =
        by(new SiteText().limit("nail-diameter-fits-isthmus", "thick", "tibia", 8, "mm"))
            .local()
            .orElseThrow();
    assertThat(local.inUse()).isEmpty();
    assertThat(local.unused()).isEqualTo(1);
  }

  @Test
  void a_severity_is_a_step_that_moves_no_verdict() {
    Review local = by(new SiteText().severity("two-bolts-each-end", "major", "critical"));
    PrincipleTable.Cell there = cell(local, "two-bolts-each-end", "op-3");

    assertThat(there.verdict()).isEqualTo(VerdictKind.UNMET);
    assertThat(there.severity()).contains(Severity.CRITICAL);
    assertThat(new TextReport(true).render(local))
        .contains("[set by this site, published as major]");
    assertThat(kinds(local)).isEqualTo(kinds(new Reviewer(PUBLISHED).review(DEMO)));
  }

  private static List<VerdictKind> kinds(Review review) {
    return review.table().rows().stream()
        .flatMap(row -> row.cells().stream())
        .map(PrincipleTable.Cell::verdict)
        .toList();
  }

  @Test
  void every_renderer_shows_both_values_the_grounds_and_the_published_verdict() {
    Review local = by(pressed(4.4));
    for (String shown :
        List.of(
            new TextReport(false).render(local).replaceAll("\\s+", " "),
            new TextReport(true).render(local).replaceAll("\\s+", " "),
            ReviewPage.render(DEMO, local))) {
      assertThat(shown)
          .contains("pressed for simple compressed: 4.4 here, published 5. Test")
          .contains("test bench, 2026-01-31")
          .contains("op-1: met here, unmet (minor) by the published limits")
          .contains("site test-site, content " + local.versions().site().orElseThrow().hash());
    }
    assertThat(new JsonReport().render(local))
        .contains("\"localLimits\"")
        .contains("\"local\" : \"4.4\"", "\"published\" : \"5\"", "\"by\" : \"test bench\"")
        .contains("\"byPublished\" : \"unmet (minor)\"");
  }

  @Test
  void every_line_and_cell_of_a_changed_principle_carries_the_note() {
    Review local = by(pressed(4.4));
    List<Line> lines = local.chapters().stream().flatMap(LocalLimitsTest::lines).toList();

    assertThat(lines)
        .filteredOn(line -> line.principle().equals(SPAN) && line.subject().startsWith("op-"))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.local()).isPresent());
    assertThat(lines)
        .filteredOn(line -> !line.principle().equals(SPAN))
        .allSatisfy(line -> assertThat(line.local()).isEmpty());
    assertThat(cell(local, SPAN, "op-1").local()).isPresent();
  }

  private static Stream<Line> lines(Chapter chapter) {
    return Stream.of(
            chapter.met().stream(),
            chapter.unknown().stream(),
            Stream.concat(chapter.fits().stream(), chapter.others().stream())
                .flatMap(h -> Stream.concat(Stream.of(h.lead()), h.nested().stream())))
        .flatMap(found -> found);
  }

  @Test
  void a_profile_leaves_verdicts_severities_and_the_exit_as_they_are() {
    Reviewer reviewer = new Reviewer(PUBLISHED);
    Review whole = reviewer.review(DEMO);
    Review exam = reviewer.review(DEMO, PUBLISHED.profile("exam").orElseThrow());

    assertThat(whole.table().rows()).containsAll(exam.table().rows());
    assertThat(exam.table().rows()).hasSizeLessThan(whole.table().rows().size());
    assertThat(exam.leavesCriticalOpen()).isEqualTo(whole.leavesCriticalOpen());
    assertThat(exam.notChecked().get(0)).contains("The profile exam leaves out 8 of");
    assertThat(new TextReport(false).render(exam).lines().findFirst().orElseThrow())
        .endsWith("(invented case), profile exam");
    assertThat(new JsonReport().render(whole)).doesNotContain("\"profile\"", "\"localLimits\"");
  }

  @Test
  void loads_of_another_bone_are_out_of_use_and_move_nothing() {
    Review local = by(new SiteText().loads("humerus", "crutches"));

    assertThat(local.local().orElseThrow().inShort()).contains("0 changes in use, 1 not");
    assertThat(local.table().rows()).isEqualTo(new Reviewer(PUBLISHED).review(DEMO).table().rows());
  }

  @Test
  void loads_are_shown_beside_the_published_ones_for_the_same_weight() {
    RuleSet rules = new SiteText().loads("femur", "walking").on(PUBLISHED);

    assertThat(new LocalWording(PUBLISHED).changes(rules.site().orElseThrow()))
        .singleElement()
        .satisfies(
            change -> {
              assertThat(change.principle()).isEmpty();
              assertThat(change.title()).isEqualTo("Loads of the femur");
              assertThat(change.inWords())
                  .isEqualTo(
                      "with no limit to the load, of 75 kg body weight: walking, pressing 1000 N,"
                          + " bending 20 N·m, torsion 5 N·m here, published walking and stairs,"
                          + " pressing 1839–2281 N, bending 34.6–72.1 N·m, torsion 1.47–9.56 N·m."
                          + " Test (test bench, 2026-01-31)");
            });
  }

  @Test
  void loads_concern_the_principles_that_read_what_rests_on_them() {
    RuleSet rules = new SiteText().loads("femur", "walking").on(PUBLISHED);
    SiteChanges site = rules.site().orElseThrow();
    Card span = rules.card(SPAN).orElseThrow();

    assertThat(site.loads(DEMO, span, rules)).isEmpty();
    assertThat(site.loads(DEMO, reading(span, "load-bending"), rules)).isPresent();
    assertThat(rules.published().orElseThrow().site()).isEmpty();
  }

  private static Card reading(Card card, String measure) {
    Map<String, String> needs = new TreeMap<>(card.needs());
    needs.put("load", measure);
    return new Card(
        card.id(),
        card.level(),
        card.subject(),
        card.title(),
        card.statement(),
        card.cause(),
        needs,
        card.limits(),
        card.grades(),
        card.highest(),
        card.verdicts(),
        card.overridable(),
        card.why(),
        card.say(),
        card.tells(),
        card.remedy(),
        card.remedyMoves(),
        card.sources(),
        card.disputed(),
        card.awaiting(),
        card.reviewedBy(),
        card.since(),
        card.formerIds(),
        card.deprecated(),
        card.siteMayNotChange());
  }
}
