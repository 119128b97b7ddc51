package org.bonewright.change;

/**
 * A plan as one move would draw it.
 *
 * @param stage id of the plan and stage that the move changes; of the plan where it changes that
 * @param move name of the move in the cards
 * @param words what is done, without a full stop
 * @param file the file with the plan drawn so
 */
record Option(String stage, String move, String words, PlanInFile file) {}
