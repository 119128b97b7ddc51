package org.bonewright.change;

import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** What a move can do to a stage or a plan: each way once, the smallest first. */
interface Move {

  /**
   * Return the ways.
   *
   * @param drawn the stage or plan as it is; it is not changed
   */
  Stream<Edit> edits(ObjectNode drawn);
}
