package org.bonewright.report;

import java.util.List;
import java.util.Optional;
import org.bonewright.change.PlanChange;
import org.bonewright.measures.Words;
import org.bonewright.principles.RuleTrace;
import org.bonewright.review.Explanation;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Explanations as JSON, format {@code bonewright/explanation/1}. Absent values are left out;
 * nothing is ever null. Fields stand in a fixed order.
 */
public final class ExplanationJson {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private ExplanationJson() {}

  /** Return the text, indented, with a newline at its end. */
  public static String render(List<Explanation> explanations) {
    return render(explanations, Optional.empty());
  }

  /**
   * Return the text.
   *
   * @param changes to the plan, where they were looked for
   */
  public static String render(List<Explanation> explanations, Optional<List<PlanChange>> changes) {
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", "bonewright/explanation/1");
    explanations.stream()
        .findFirst()
        .ifPresent(
            first ->
                root.putObject("versions")
                    .put("engine", first.versions().engine())
                    .put("ruleSet", first.versions().ruleSet())
                    .put("hash", first.versions().hash()));
    ArrayNode all = root.putArray("explanations");
    explanations.forEach(explanation -> one(all.addObject(), explanation));
    changes.ifPresent(found -> ChangeJson.section(root, found));
    return JSON.writerWithDefaultPrettyPrinter()
            .writeValueAsString(root)
            .replace(System.lineSeparator(), "\n")
        + "\n";
  }

  private static void one(ObjectNode node, Explanation explanation) {
    node.put("subject", explanation.line().subject())
        .put("family", explanation.family())
        .put("statement", explanation.statement());
    JsonReport.line(node.putObject("verdict"), explanation.line());
    ArrayNode inputs = node.putArray("inputs");
    for (Explanation.Input input : explanation.inputs()) {
      ObjectNode one =
          inputs
              .addObject()
              .put("measure", input.reading().measure())
              .put("title", input.reading().title())
              .put("shown", input.reading().shown())
              .put("unit", input.reading().unit())
              .put("kind", input.reading().kind())
              .put("working", input.reading().working())
              .put("formula", input.formula());
      input.from().forEach(one.putArray("from")::add);
      one.put("source", input.source());
    }
    ArrayNode limits = node.putArray("limits");
    for (Explanation.HeldLimit limit : explanation.limits()) {
      limits
          .addObject()
          .put("name", limit.name())
          .put("of", limit.of())
          .put("value", limit.value())
          .put("unit", limit.unit())
          .put("evidence", limit.evidence());
    }
    ArrayNode rules = node.putArray("rules");
    explanation.rules().forEach(rule -> rule(rules.addObject(), rule));
    explanation.asks().forEach(node.putArray("asks")::add);
    explanation.dispute().ifPresent(view -> node.put("otherView", view));
    explanation.awaiting().forEach(node.putArray("awaiting")::add);
    node.put("reviewedBy", explanation.reviewedBy());
  }

  private static void rule(ObjectNode node, RuleTrace rule) {
    node.put("name", rule.name()).put("fires", Words.written(rule.fires()));
    rule.finds()
        .ifPresent(
            finds ->
                node.putObject("finds")
                    .put("severity", finds.severity().word())
                    .put("limit", finds.limit()));
    ArrayNode conditions = node.putArray("conditions");
    rule.conditions()
        .forEach(
            condition ->
                conditions
                    .addObject()
                    .put("words", condition.words())
                    .put("holds", Words.written(condition.holds())));
  }
}
