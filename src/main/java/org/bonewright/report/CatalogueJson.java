package org.bonewright.report;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Words;
import org.bonewright.principles.Card;
import org.bonewright.principles.Promise;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.LocalChange;
import org.bonewright.review.LocalWording;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The catalogue of principles and measures as JSON. Absent values are left out; nothing is ever
 * null. Fields stand in a fixed order.
 */
public final class CatalogueJson {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final RuleSet rules;

  /** Make the catalogue of a rule set. */
  public CatalogueJson(RuleSet rules) {
    this.rules = rules;
  }

  /** Return the list of principles, format {@code bonewright/principles/1}. */
  public String principles() {
    ObjectNode root = root("bonewright/principles/1");
    ArrayNode all = root.putArray("principles");
    rules.cards().forEach(card -> head(all.addObject(), card));
    ArrayNode promises = root.putArray("promises");
    rules.promises().forEach(promise -> promise(promises.addObject(), promise));
    return text(root);
  }

  /** Return everything that a card says, format {@code bonewright/principle/1}. */
  public String principle(Card card) {
    ObjectNode root = root("bonewright/principle/1");
    head(root, card);
    root.put("statement", card.statement()).put("why", card.why());
    ArrayNode needs = root.putArray("needs");
    card.needs()
        .forEach((need, measure) -> needs.addObject().put("name", need).put("measure", measure));
    texts(root, "tells", card.tells().stream().map(Card.Told::of).toList());
    ArrayNode limits = root.putArray("limits");
    rules.published(card).limits().forEach((name, limit) -> limit(limits.addObject(), name, limit));
    texts(root, "grades", card.grades().stream().map(Severity::word).toList());
    texts(root, "verdicts", card.verdicts().stream().map(VerdictKind::word).toList());
    root.put("overridable", card.overridable());
    root.put("remedy", Remedy.of(card));
    texts(root, "remedyMoves", card.remedyMoves());
    card.disputed()
        .ifPresent(
            dispute ->
                texts(
                    root.putObject("disputed").put("otherView", dispute.view()),
                    "limits",
                    dispute.limits()));
    ArrayNode sources = root.putArray("sources");
    card.sources()
        .forEach(
            source ->
                sources
                    .addObject()
                    .put("text", source.text())
                    .put("read", source.read() ? "excerpt" : "from memory"));
    texts(root, "awaiting", card.awaiting());
    root.put("reviewedBy", card.reviewedBy());
    texts(root, "formerIds", card.formerIds());
    card.deprecated().ifPresent(reason -> root.put("deprecated", reason));
    card.siteMayNotChange().ifPresent(reason -> root.put("siteMayNotChange", reason));
    return text(root);
  }

  /** Return every measure, format {@code bonewright/measures/1}. */
  public String measures() {
    ObjectNode root = root("bonewright/measures/1");
    ArrayNode all = root.putArray("measures");
    rules.definitions().forEach(definition -> definition(all.addObject(), definition));
    return text(root);
  }

  private ObjectNode root(String schema) {
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", schema);
    root.putObject("ruleSet").put("version", rules.version()).put("content", rules.hash());
    rules
        .site()
        .ifPresent(
            site -> root.putObject("site").put("name", site.name()).put("content", site.hash()));
    return root;
  }

  private void head(ObjectNode node, Card card) {
    node.put("id", card.id())
        .put("family", rules.family(card).letter())
        .put("title", card.title())
        .put("level", card.level())
        .put("judgedOn", Words.written(card.subject()))
        .put("since", card.since());
    texts(node, "profiles", CatalogueText.profiles(rules, card));
    List<LocalChange> local =
        rules.site().stream()
            .flatMap(site -> new LocalWording(rules).changes(site).stream())
            .filter(change -> change.isOf(card.id()))
            .toList();
    if (!local.isEmpty()) {
      LocalJson.changes(node.putArray("local"), local);
    }
  }

  private void promise(ObjectNode node, Promise promise) {
    node.put("id", promise.id())
        .put("family", rules.family(promise).letter())
        .put("title", promise.title())
        .put("statement", promise.statement())
        .put("since", promise.since());
    texts(node, "provedBy", promise.provedBy());
  }

  private static void limit(ObjectNode node, String name, Card.Limit limit) {
    node.put("name", name).put("of", limit.of());
    texts(node, "by", limit.by());
    ObjectNode values = node.putObject("values");
    for (Map.Entry<String, Double> value : limit.values().entrySet()) {
      values.put(value.getKey(), value.getValue());
    }
    node.put("evidence", limit.evidence());
  }

  private static void definition(ObjectNode node, Definition definition) {
    node.put("id", definition.id()).put("title", definition.title());
    if (definition.domain() instanceof Definition.Domain.Numbers numbers) {
      node.put("kind", "number").put("unit", numbers.shownUnit());
    } else if (definition.domain() instanceof Definition.Domain.Words words) {
      node.put("kind", "word");
      texts(node, "words", words.words());
    }
    node.put("formula", definition.formula());
    texts(node, "inputs", definition.inputs());
    node.put("source", definition.source());
  }

  private static void texts(ObjectNode node, String name, Collection<String> texts) {
    ArrayNode array = node.putArray(name);
    List.copyOf(texts).forEach(array::add);
  }

  private static String text(ObjectNode root) {
    return JSON.writerWithDefaultPrettyPrinter()
            .writeValueAsString(root)
            .replace(System.lineSeparator(), "\n")
        + "\n";
  }
}
