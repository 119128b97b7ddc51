package org.bonewright.cli;

/** The user's input cannot be used; the message is the whole answer. */
final class Unusable extends Exception {

  private static final long serialVersionUID = 1L;

  Unusable(String message) {
    super(message);
  }
}
