package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;

/** How a point that may change stands: what resists there, and what goes on acting. */
sealed interface Stand permits LagStand, PatchStand, RestStand {

  /** Return whether it still resists one of the six movements, counted from 0. */
  boolean resists(int movement);

  /** Return the forces that stay as they were: six numbers, as it resists them. */
  Six kept();

  /** Return whether nothing can change here any more. */
  boolean settled();

  /**
   * Return by how much a change is overdue, as a share of what it takes; below zero where it is
   * not, and without a limit where it cannot come.
   *
   * @param carried what it carries beyond what it keeps: six numbers
   * @param moved how it moved: six numbers
   */
  double excess(Change change, Six carried, Six moved);

  /** Return it after a change, while it carried these forces and had moved so far. */
  Stand after(Change change, Six carried, Six moved);
}
