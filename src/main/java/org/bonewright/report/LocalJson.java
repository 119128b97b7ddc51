package org.bonewright.report;

import java.util.List;
import java.util.Optional;
import org.bonewright.review.LocalChange;
import org.bonewright.review.LocalLimits;
import org.bonewright.review.LocalNote;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a site has set, as JSON. */
final class LocalJson {

  private LocalJson() {}

  static void section(ObjectNode root, LocalLimits local) {
    ObjectNode node =
        root.putObject("localLimits")
            .put("site", local.site())
            .put("content", local.hash())
            .put("invented", local.invented())
            .put("differing", local.differing())
            .put("unused", local.unused());
    ArrayNode inUse = node.putArray("inUse");
    local
        .inUse()
        .forEach(
            used -> {
              ObjectNode one = inUse.addObject();
              change(one, used.change());
              differing(one.putArray("differing"), used.differing());
            });
    differing(node.putArray("elsewhere"), local.elsewhere());
  }

  private static void differing(ArrayNode array, List<LocalLimits.Differing> verdicts) {
    verdicts.forEach(
        verdict ->
            array
                .addObject()
                .put("subject", verdict.subject())
                .put("principle", verdict.principle())
                .put("here", verdict.here())
                .put("published", verdict.published()));
  }

  /** Put a note into the node of a verdict; nothing where there is none. */
  static void note(ObjectNode verdict, Optional<LocalNote> note) {
    if (note.isPresent()) {
      ObjectNode node = verdict.putObject("local");
      changes(node.putArray("changes"), note.get().changes());
      note.get().byPublished().ifPresent(there -> node.put("byPublished", there));
    }
  }

  static void changes(ArrayNode array, List<LocalChange> changes) {
    changes.forEach(change -> change(array.addObject(), change));
  }

  private static void change(ObjectNode node, LocalChange change) {
    change.principle().ifPresent(id -> node.put("principle", id));
    if (change.principle().isEmpty()) {
      node.put("title", change.title());
    }
    node.put("what", change.what())
        .put("local", change.local())
        .put("published", change.published())
        .put("reason", change.reason())
        .put("by", change.by())
        .put("on", change.on());
  }
}
