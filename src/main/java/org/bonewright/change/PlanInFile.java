package org.bonewright.change;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One plan of a case file, with the file round it. Only the plan can be drawn otherwise: what else
 * the file says stays as it is.
 *
 * @param root the whole file; never changed
 * @param index the place of the plan among the plans
 */
record PlanInFile(ObjectNode root, int index) {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String PLANS = "plans";
  private static final String STAGES = "stages";
  private static final String ACCEPTED = "accepted";

  /**
   * Find a plan in a file.
   *
   * @param file a case file that was read without error
   * @param plan id of the plan
   * @return nothing where the file has no such plan, or the plan no stage
   */
  static Optional<PlanInFile> of(byte[] file, String plan) {
    JsonNode root = JSON.readTree(file);
    JsonNode plans = root.path(PLANS);
    return IntStream.range(0, plans.size())
        .filter(i -> id(plans.get(i)).equals(plan) && !plans.get(i).path(STAGES).isEmpty())
        .boxed()
        .findFirst()
        .flatMap(
            i ->
                root instanceof ObjectNode object
                    ? Optional.of(new PlanInFile(object, i))
                    : Optional.empty());
  }

  /** Return the plan. */
  ObjectNode plan() {
    return (ObjectNode) root.path(PLANS).get(index);
  }

  /** Return the id of the plan. */
  String planId() {
    return id(plan());
  }

  /** Return the file with the plan drawn otherwise. */
  PlanInFile with(ObjectNode plan) {
    ObjectNode copy = JSON.createObjectNode();
    copy.setAll(root);
    ArrayNode plans = copy.putArray(PLANS);
    JsonNode before = root.path(PLANS);
    for (int i = 0; i < before.size(); i++) {
      plans.add(i == index ? plan : before.get(i));
    }
    return new PlanInFile(copy, index);
  }

  /** Return the file with one stage of the plan drawn otherwise. */
  PlanInFile withStage(int stage, ObjectNode drawn) {
    ObjectNode plan = plan().deepCopy();
    ((ArrayNode) plan.path(STAGES)).set(stage, drawn);
    return with(plan);
  }

  /** Return a stage by its place. */
  ObjectNode stage(int stage) {
    return (ObjectNode) plan().path(STAGES).get(stage);
  }

  /** Return the id of a stage, with that of its plan before it. */
  String stageId(int stage) {
    return planId() + "/" + id(stage(stage));
  }

  /** Return the places of the stages that a subject has, or is. */
  List<Integer> stages(String subject) {
    return IntStream.range(0, plan().path(STAGES).size())
        .filter(i -> subject.equals(planId()) || subject.equals(stageId(i)))
        .boxed()
        .toList();
  }

  /** Return the file without the other plans and what was accepted of them, to be judged sooner. */
  PlanInFile alone() {
    ObjectNode copy = JSON.createObjectNode();
    copy.setAll(root);
    copy.putArray(PLANS).add(plan());
    JsonNode accepted = root.path(ACCEPTED);
    if (accepted.isArray()) {
      ArrayNode kept = copy.putArray(ACCEPTED);
      StageParts.each(accepted)
          .filter(each -> each.path("on").asString("").equals(planId()))
          .forEach(kept::add);
    }
    return new PlanInFile(copy, 0);
  }

  /** Return the file as text; the same text for the same content. */
  String text() {
    return root.toString();
  }

  /** Return the file as bytes. */
  byte[] bytes() {
    return text().getBytes(StandardCharsets.UTF_8);
  }

  private static String id(JsonNode node) {
    return node.path("id").asString("");
  }
}
