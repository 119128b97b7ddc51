package org.bonewright.measures;

/**
 * One named input of principles. A new measure is one class like this, its line in the catalogue
 * and its test.
 */
public interface Measure {

  /** Return the published description. */
  Definition definition();

  /** Take the measure for one subject. */
  Reading take(Scene scene);
}
