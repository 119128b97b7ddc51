package org.bonewright.mechanics.answer;

/**
 * How the bone ends rest against each other.
 *
 * @param force that presses them together in N
 * @param closed share of the ring that is closed, from 0 to 1
 */
public record EndContact(double force, double closed) {

  /** Return the state in one word. */
  public String state() {
    return closed <= 0 ? "open" : closed >= 1 - 1e-9 ? "closed" : "partly closed";
  }
}
