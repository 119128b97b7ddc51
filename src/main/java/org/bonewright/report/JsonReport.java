package org.bonewright.report;

import java.util.List;
import java.util.Optional;
import org.bonewright.principles.Severity;
import org.bonewright.review.Chapter;
import org.bonewright.review.Headline;
import org.bonewright.review.History;
import org.bonewright.review.Line;
import org.bonewright.review.PlanDemands;
import org.bonewright.review.PrincipleTable;
import org.bonewright.review.Question;
import org.bonewright.review.Review;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A review as JSON, format {@code bonewright/review/1}. Absent values are left out; nothing is ever
 * null. Fields stand in a fixed order.
 */
public final class JsonReport {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** Return the text, indented, with a newline at its end. */
  public String render(Review review) {
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", "bonewright/review/1");
    heading(root, review);
    ArrayNode flags = root.putArray("redFlags");
    review
        .redFlags()
        .forEach(flag -> flags.addObject().put("what", flag.what()).put("since", flag.since()));
    root.put("summary", review.summary());
    root.put("leavesCriticalOpen", review.leavesCriticalOpen());
    review.local().ifPresent(local -> LocalJson.section(root, local));
    ArrayNode questions = root.putArray("questions");
    review.questions().forEach(question -> question(questions.addObject(), question));
    ArrayNode chapters = root.putArray("chapters");
    review.chapters().forEach(chapter -> chapter(chapters.addObject(), chapter));
    history(root.putObject("history"), review.history());
    table(root.putObject("table"), review.table());
    ForceJson.section(root, review.forces());
    ArrayNode demands = root.putArray("demands");
    review.demands().forEach(demand -> demands(demands.addObject(), demand));
    texts(root, "acceptances", review.acceptances());
    ArrayNode assumptions = root.putArray("assumptions");
    review
        .assumptions()
        .forEach(
            a -> texts(assumptions.addObject().put("what", a.what()), "subjects", a.subjects()));
    texts(root, "notChecked", review.notChecked());
    texts(root, "cautions", review.cautions());
    return JSON.writerWithDefaultPrettyPrinter()
            .writeValueAsString(root)
            .replace(System.lineSeparator(), "\n")
        + "\n";
  }

  private static void heading(ObjectNode root, Review review) {
    Review.Heading heading = review.heading();
    root.putObject("versions")
        .put("engine", review.versions().engine())
        .put("ruleSet", review.versions().ruleSet())
        .put("hash", review.versions().hash());
    ObjectNode versions = root.withObjectProperty("versions");
    review
        .versions()
        .site()
        .ifPresent(
            site ->
                versions.putObject("site").put("name", site.name()).put("content", site.hash()));
    review.versions().profile().ifPresent(profile -> versions.put("profile", profile));
    ObjectNode node =
        root.putObject("case")
            .put("reference", heading.reference())
            .put("provenance", heading.provenance());
    heading.source().ifPresent(source -> node.put("source", source));
    node.put("patient", heading.patient()).put("injury", heading.injury());
  }

  private static void question(ObjectNode node, Question question) {
    node.put("field", question.field()).put("question", question.question());
    ArrayNode settles = node.putArray("settles");
    question
        .settles()
        .forEach(
            s ->
                settles
                    .addObject()
                    .put("principle", s.principle())
                    .put("subject", s.subject())
                    .put("worst", s.worst().word()));
    node.put("touches", question.touches());
  }

  private static void chapter(ObjectNode node, Chapter chapter) {
    node.put("subject", chapter.subject())
        .put("planned", chapter.planned())
        .put("what", chapter.what());
    chapter.outcome().ifPresent(outcome -> node.put("outcome", outcome));
    node.put("unexplained", chapter.unexplained());
    texts(node, "hostBefore", chapter.hostBefore());
    headlines(node.putArray("fitsFailure"), chapter.fits());
    headlines(node.putArray("otherUnmet"), chapter.others());
    lines(node.putArray("unknown"), chapter.unknown());
    texts(node, "notRecordedThen", chapter.noRecord());
    lines(node.putArray("met"), chapter.met());
    node.put("notApplicable", chapter.notApplicable());
  }

  private static void headlines(ArrayNode array, List<Headline> headlines) {
    headlines.forEach(
        headline -> {
          ObjectNode node = array.addObject().put("cause", headline.cause());
          node.put("placedBy", headline.placedBy());
          line(node.putObject("lead"), headline.lead());
          lines(node.putArray("nested"), headline.nested());
        });
  }

  private static void history(ObjectNode node, History history) {
    texts(node, "neverAddressed", history.neverAddressed());
    texts(node, "triedTwice", history.triedTwice());
    history.prognosis().ifPresent(line -> node.put("prognosis", line));
  }

  private static void table(ObjectNode node, PrincipleTable table) {
    texts(node, "columns", table.columns());
    ArrayNode rows = node.putArray("rows");
    table
        .rows()
        .forEach(
            row -> {
              ObjectNode rowNode =
                  rows.addObject()
                      .put("principle", row.principle())
                      .put("title", row.title())
                      .put("family", row.family());
              ArrayNode cells = rowNode.putArray("cells");
              row.cells()
                  .forEach(
                      cell -> {
                        ObjectNode one = cells.addObject().put("verdict", cell.verdict().word());
                        severity(one, cell.severity());
                        LocalJson.note(one, cell.local());
                      });
            });
  }

  private static void demands(ObjectNode node, PlanDemands demands) {
    node.put("plan", demands.plan()).put("decisive", demands.decisive());
    texts(node, "tensions", demands.tensions());
    ArrayNode array = node.putArray("demands");
    demands
        .demands()
        .forEach(
            demand -> {
              ObjectNode one = array.addObject().put("statement", demand.statement());
              texts(one, "taughtBy", demand.taughtBy());
              line(one.putObject("answer"), demand.answer());
            });
  }

  private static void lines(ArrayNode array, List<Line> lines) {
    lines.forEach(line -> line(array.addObject(), line));
  }

  /** Put a verdict with all that was read into a node. */
  static void line(ObjectNode node, Line line) {
    node.put("principle", line.principle())
        .put("title", line.title())
        .put("subject", line.subject())
        .put("verdict", line.verdict().word());
    severity(node, line.severity());
    node.put("words", line.words());
    if (!line.remedy().isEmpty()) {
      node.put("remedy", line.remedy());
    }
    texts(node, "labels", line.labels());
    texts(node, "severitySteps", line.steps());
    line.otherView().ifPresent(view -> node.put("otherView", view));
    line.accepted().ifPresent(reason -> node.put("accepted", reason));
    node.put("sourcesFromMemory", line.fromMemory());
    node.put("why", line.why());
    texts(node, "sources", line.sources());
    ArrayNode readings = node.putArray("readings");
    line.readings()
        .forEach(
            reading -> {
              ObjectNode one =
                  readings
                      .addObject()
                      .put("measure", reading.measure())
                      .put("value", reading.shown())
                      .put("unit", reading.unit())
                      .put("kind", reading.kind());
              reading.sampled().ifPresent(sampled -> ModelJson.numbers(one, sampled));
              one.put("working", reading.working());
            });
    ObjectNode limits = node.putObject("limits");
    line.limits().forEach(limits::put);
    texts(node, "turns", line.turns());
    line.share().ifPresent(share -> ModelJson.share(node.putObject("share"), share));
    LocalJson.note(node, line.local());
  }

  private static void severity(ObjectNode node, Optional<Severity> severity) {
    severity.ifPresent(s -> node.put("severity", s.word()));
  }

  private static void texts(ObjectNode node, String field, List<String> texts) {
    ArrayNode array = node.putArray(field);
    texts.forEach(array::add);
  }
}
