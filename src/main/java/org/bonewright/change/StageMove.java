package org.bonewright.change;

import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** What a move can do to a stage: each way once, the smallest first. */
interface StageMove {

  /**
   * Return the ways.
   *
   * @param stage the stage as it is; it is not changed
   */
  Stream<StageEdit> edits(ObjectNode stage);
}
