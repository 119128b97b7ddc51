package org.bonewright.measures.hold;

import org.bonewright.casefile.CaseText;
import tools.jackson.databind.node.ObjectNode;

/** Puts a locked nail into the bone beside what a case holds it with. */
final class BesideNail {

  private BesideNail() {}

  static CaseText of(CaseText text) {
    ObjectNode root = text.tree();
    root.withArray("/operations/0/fixation")
        .addObject()
        .put("id", "nail-1")
        .put("kind", "nail")
        .put("outerMm", 10)
        .put("locking", "static");
    return CaseText.of(root.toString());
  }
}
