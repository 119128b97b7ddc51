package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * What was written down for a demonstration before the engine was run on it. A field that nobody
 * reads is an error.
 *
 * @param subjects the lists of each operation and plan
 * @param redFlags every red flag, as it is shown
 * @param exit the exit code
 * @param mustSay words that stand in the text, short and verbose, and on the page
 * @param mustSayInFull words that stand in the verbose text
 * @param mustNotSay words that stand nowhere
 */
record Expected(
    Map<String, Lists> subjects,
    List<String> redFlags,
    int exit,
    List<String> mustSay,
    List<String> mustSayInFull,
    List<String> mustNotSay) {

  private static final Set<String> WHOLE =
      Set.of("operations", "redFlags", "exit", "mustSay", "mustSayInFull", "mustNotSay");
  private static final Set<String> LISTS =
      Set.of("firstUnmet", "alsoUnmet", "met", "unknown", "notApplicable");

  /** What is unmet: what a reader must meet first, and the rest. */
  record Lists(List<String> first, List<String> also) {}

  /** Read what is expected of a demonstration that has these operations and plans. */
  static Expected read(Path file, List<String> operations, List<String> plans) throws IOException {
    JsonNode root = new YAMLMapper().readTree(Files.readString(file));
    assertThat(root.propertyNames()).as(file + ": fields").containsAll(plans);
    assertThat(root.propertyNames())
        .as(file + ": fields that are read")
        .allMatch(field -> WHOLE.contains(field) || plans.contains(field));
    assertThat(root.path("operations").propertyNames())
        .as(file + ": operations")
        .containsExactlyElementsOf(operations);
    Map<String, Lists> subjects = new LinkedHashMap<>();
    operations.forEach(id -> subjects.put(id, lists(file, root.path("operations").path(id))));
    plans.forEach(id -> subjects.put(id, lists(file, root.path(id))));
    assertThat(root.path("exit").isInt()).as(file + ": exit").isTrue();
    return new Expected(
        subjects,
        texts(root, "redFlags"),
        root.path("exit").asInt(),
        texts(root, "mustSay"),
        root.has("mustSayInFull") ? texts(root, "mustSayInFull") : List.of(),
        texts(root, "mustNotSay"));
  }

  private static Lists lists(Path file, JsonNode subject) {
    assertThat(subject.propertyNames())
        .as(file + ": lists")
        .containsExactlyInAnyOrderElementsOf(LISTS);
    return new Lists(texts(subject, "firstUnmet"), texts(subject, "alsoUnmet"));
  }

  private static List<String> texts(JsonNode parent, String field) {
    JsonNode list = parent.path(field);
    assertThat(list.isArray()).as(field).isTrue();
    return list.values().stream().map(JsonNode::asString).toList();
  }
}
