package org.bonewright.change;

/**
 * A principle on a plan or one of its stages.
 *
 * @param principle id of the principle
 * @param subject id of the plan or stage
 */
record Place(String principle, String subject) {}
