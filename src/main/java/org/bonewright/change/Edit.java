package org.bonewright.change;

import java.util.function.Consumer;
import tools.jackson.databind.node.ObjectNode;

/**
 * One way in which a move changes a stage or a plan.
 *
 * @param words what is done, as a surgeon would say it, without a full stop
 * @param drawn the whole stage or plan as it is then
 */
record Edit(String words, ObjectNode drawn) {

  /** Return the way that changes a copy of a stage or plan. */
  static Edit of(ObjectNode before, String words, Consumer<ObjectNode> change) {
    ObjectNode copy = before.deepCopy();
    change.accept(copy);
    return new Edit(words, copy);
  }

  /** Return the way that changes one implant in a copy of a stage. */
  static Edit of(ObjectNode stage, int implant, String words, Consumer<ObjectNode> change) {
    return of(stage, words, copy -> change.accept(StageParts.implant(copy, implant)));
  }
}
