package org.bonewright.report;

import java.util.List;
import org.bonewright.change.PlanChange;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Changes to a plan, as JSON. */
final class ChangeJson {

  private ChangeJson() {}

  /** Put changes into a node. */
  static void section(ObjectNode root, List<PlanChange> changes) {
    ArrayNode all = root.putArray("changes");
    for (PlanChange change : changes) {
      ObjectNode one =
          all.addObject()
              .put("stage", change.stage())
              .put("move", change.move())
              .put("words", change.words())
              .put("becomes", change.becomes().word());
      turned(one.putArray("better"), change.better());
      turned(one.putArray("worse"), change.worse());
    }
  }

  private static void turned(ArrayNode array, List<PlanChange.Turned> all) {
    all.forEach(turned -> turned(array.addObject(), turned));
  }

  /** Put a verdict that is turned into a node. */
  static void turned(ObjectNode node, PlanChange.Turned turned) {
    node.put("principle", turned.principle())
        .put("subject", turned.subject())
        .put("from", turned.from().inWords())
        .put("to", turned.to().inWords());
  }
}
