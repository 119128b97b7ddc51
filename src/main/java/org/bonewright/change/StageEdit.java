package org.bonewright.change;

import tools.jackson.databind.node.ObjectNode;

/**
 * One way in which a move changes a stage.
 *
 * @param words what is done, as a surgeon would say it, without a full stop
 * @param stage the whole stage as it is then
 */
record StageEdit(String words, ObjectNode stage) {}
