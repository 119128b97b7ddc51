package org.bonewright.change;

import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a move can do to a stage, where that hangs on the bone: each way once, the smallest first.
 */
interface SettingMove {

  /**
   * Return the ways.
   *
   * @param stage the stage as it is; it is not changed
   */
  Stream<Edit> edits(ObjectNode stage, Setting setting);
}
