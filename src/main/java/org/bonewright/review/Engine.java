package org.bonewright.review;

/** The version of this program. A test holds it against the build's. */
public final class Engine {

  /** The version. */
  public static final String VERSION = "0.1.0";

  private Engine() {}
}
