package org.bonewright.server.rest;

import java.util.List;

/** The case has no plan of this name, or none that is chosen; those that there are are told. */
class UnknownPlan extends Exception {

  private static final long serialVersionUID = 1L;

  UnknownPlan(String found, List<String> plans) {
    super(
        found
            + " "
            + (plans.isEmpty()
                ? "The case has no plan with a stage."
                : "It has: " + String.join(", ", plans) + "."));
  }
}
