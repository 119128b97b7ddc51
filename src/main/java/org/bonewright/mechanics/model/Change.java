package org.bonewright.mechanics.model;

import java.util.Locale;

/** What may change at a point of a fixed bone while a load is raised. */
enum Change {
  /** Nothing. */
  STICK,
  /** A patch is pressed at its edge only and resists no further tilting. */
  TILT,
  /** A patch slips. */
  SLIP,
  /** A plate leaves the bone at a screw. */
  LIFTED,
  /** A thread is pulled out. */
  PULLED,
  /** A nail comes to lie against the wall of its canal. */
  TOUCHES,
  /** The head of a lag screw is no longer pulled onto the bone. */
  LOOSENS;

  /** Return it as one word. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
