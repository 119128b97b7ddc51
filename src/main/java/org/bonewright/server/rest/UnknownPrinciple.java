package org.bonewright.server.rest;

/** Says that there is no principle of a name. */
final class UnknownPrinciple extends Exception {

  private static final long serialVersionUID = 1L;

  UnknownPrinciple(String id) {
    super("There is no principle " + id + ". GET /api/principles lists them.");
  }
}
