package org.bonewright.server.rest;

/** Says that the handbook has no page of a name. */
final class UnknownPage extends Exception {

  private static final long serialVersionUID = 1L;

  UnknownPage(String path) {
    super("The handbook has no page " + path + ". It begins at /handbook/.");
  }
}
