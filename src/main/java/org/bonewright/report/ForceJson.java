package org.bonewright.report;

import org.bonewright.review.ForceTable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The forces, as JSON. */
final class ForceJson {

  private ForceJson() {}

  /** Write the section. */
  static void section(ObjectNode root, ForceTable table) {
    ObjectNode node = root.putObject("forces");
    table.columns().forEach(node.putArray("columns")::add);
    ArrayNode rows = node.putArray("rows");
    for (ForceTable.Row row : table.rows()) {
      ObjectNode one =
          rows.addObject()
              .put("measure", row.measure())
              .put("title", row.title())
              .put("unit", row.unit());
      ArrayNode cells = one.putArray("cells");
      row.cells()
          .forEach(
              cell -> cells.addObject().put("value", cell.shown()).put("working", cell.working()));
    }
    table.notModelled().forEach(node.putArray("notModelled")::add);
    table.limits().forEach(node.putArray("limits")::add);
  }
}
