package org.bonewright.report;

import java.util.List;
import org.bonewright.change.Improvement;
import org.bonewright.change.PlanChange;
import org.bonewright.change.Price;
import org.bonewright.measures.Words;
import org.bonewright.review.Review;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A walk from a plan by single moves as JSON, format {@code bonewright/improvement/1}. The plan
 * with the steps stands at its end, as a case file holds it. Absent values are left out; nothing is
 * ever null. Fields stand in a fixed order.
 */
public final class ImprovementJson {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private ImprovementJson() {}

  /**
   * Return the text, indented, with a newline at its end.
   *
   * @param versions what judged it
   */
  public static String render(Improvement walk, Review.Versions versions) {
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", "bonewright/improvement/1");
    ObjectNode judge =
        root.putObject("versions")
            .put("engine", versions.engine())
            .put("ruleSet", versions.ruleSet())
            .put("hash", versions.hash());
    versions
        .site()
        .ifPresent(
            site -> judge.putObject("site").put("name", site.name()).put("hash", site.hash()));
    root.put("case", walk.reference())
        .put("invented", walk.invented())
        .put("plan", walk.plan())
        .put("outcome", Words.written(walk.outcome()))
        .put("infectionFirst", walk.infection() != Improvement.Infection.NOT_AT_ISSUE);
    walk.shortness().ifPresent(known -> root.put("shortness", Words.written(known)));
    root.put("judged", walk.judged()).put("most", walk.most()).put("shelf", walk.shelf());
    walk.notKept().forEach(root.putArray("notKept")::add);
    steps(root.putArray("steps"), walk.steps());
    price(root.putObject("priceAsDrawn"), walk.before());
    price(root.putObject("priceWithSteps"), walk.after());
    ArrayNode unmet = root.putArray("unmet");
    for (Improvement.Stays stays : walk.unmet()) {
      unmet
          .addObject()
          .put("principle", stays.principle())
          .put("title", stays.title())
          .put("subject", stays.subject())
          .put("standing", stays.standing().inWords())
          .put("found", stays.found())
          .put("why", stays.why())
          .put("remedy", stays.remedy());
    }
    walk.milder().forEach(root.putArray("milder")::add);
    ArrayNode find = root.putArray("toFindOut");
    for (Improvement.ToFindOut question : walk.toFindOut()) {
      ObjectNode one =
          find.addObject()
              .put("question", question.question())
              .put("worst", question.worst().word())
              .put("canBeAnswered", question.canBeAnswered());
      question.titles().forEach(one.putArray("titles")::add);
    }
    root.put("caution", "Options to discuss, not orders. Nothing here is thereby safe.");
    root.set("drawn", walk.drawn());
    return JSON.writerWithDefaultPrettyPrinter()
            .writeValueAsString(root)
            .replace(System.lineSeparator(), "\n")
        + "\n";
  }

  private static void steps(ArrayNode array, List<Improvement.Step> steps) {
    for (Improvement.Step step : steps) {
      ObjectNode one =
          array
              .addObject()
              .put("stage", step.stage())
              .put("move", step.move())
              .put("words", step.words())
              .put("principle", step.principle());
      turned(one.putArray("better"), step.better());
      turned(one.putArray("worse"), step.worse());
    }
  }

  private static void turned(ArrayNode array, List<PlanChange.Turned> all) {
    all.forEach(turned -> ChangeJson.turned(array.addObject(), turned));
  }

  private static void price(ObjectNode node, Price price) {
    node.put("implants", price.implants())
        .put("exposedMm", price.exposedMm())
        .put("holes", price.holes())
        .put("nailMm", price.nailMm())
        .put("graftMl", price.graftMl());
    price.strippedPercent().ifPresent(percent -> node.put("strippedPercent", percent));
    node.put("limitedDays", price.limitedDays());
  }
}
