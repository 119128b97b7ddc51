package org.bonewright.report;

import org.bonewright.principles.SampleShare;
import org.bonewright.review.Line;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a mechanical model sampled, as JSON: counts and ends, never each sample. */
final class ModelJson {

  private ModelJson() {}

  /** Put the numbers of a reading; one that has no end is left out. */
  static void numbers(ObjectNode reading, Line.Sampled sampled) {
    number(reading, "nominal", sampled.nominal());
    number(reading, "low", sampled.low());
    number(reading, "high", sampled.high());
    reading.put("samples", sampled.samples()).put("decides", sampled.decides());
  }

  private static void number(ObjectNode node, String field, double value) {
    if (Double.isFinite(value)) {
      node.put(field, value);
    }
  }

  static void share(ObjectNode node, SampleShare share) {
    node.put("samples", share.samples());
    ArrayNode counts = node.putArray("counts");
    share
        .counts()
        .forEach(
            count ->
                counts
                    .addObject()
                    .put("verdict", count.verdict().word())
                    .put("fewest", count.fewest())
                    .put("most", count.most()));
    node.put("decides", share.decides());
  }
}
