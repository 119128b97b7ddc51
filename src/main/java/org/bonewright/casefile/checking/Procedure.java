package org.bonewright.casefile.checking;

import java.util.List;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Operation;

/**
 * An operation, done or planned, with its place in the file and in the course of events.
 *
 * @param operation what was done, or is to be done
 * @param at its place in the file
 * @param sequence the list it belongs to
 * @param index its position in that list
 */
record Procedure(Operation operation, At at, Sequence sequence, int index) {

  /**
   * A list of operations that follow each other.
   *
   * @param at the place of the list, which tells it from the others
   * @param scene what it is about
   */
  record Sequence(At at, Scene scene) {}

  /** What a list of operations is about. */
  enum Scene {
    /** Done on the broken bone. */
    BONE,
    /** Done on the bone beside. */
    COMPANION,
    /** The stages of one plan. */
    PLAN
  }

  /** Return whether it is a stage of a plan. */
  boolean isPlanned() {
    return sequence.scene() == Scene.PLAN;
  }

  /** Return whether the other one belongs to the same course of events: not to another plan. */
  boolean mayMeet(Procedure other) {
    return !other.isPlanned() || other.sequence.equals(sequence);
  }

  /** Return whether the other one certainly comes later. */
  boolean comesBefore(Procedure other) {
    if (sequence.equals(other.sequence)) {
      return index < other.index;
    }
    if (other.isPlanned()) {
      return !isPlanned();
    }
    return !isPlanned()
        && operation.day().isPresent()
        && other.operation.day().isPresent()
        && Certainly.below(operation.day().get(), other.operation.day().get());
  }

  /** Return what it puts in, each with its place; empty as well when that is not known. */
  List<Fitted<Implant>> fitted() {
    return Located.each(operation.fixation(), at.field("fixation"))
        .map(implant -> new Fitted<>(implant.value(), implant.at(), this))
        .toList();
  }
}
