package org.bonewright.measures.compression;

import java.util.Collections;
import java.util.Set;
import org.bonewright.measures.Reading;

/** The methods that press the line by pulling along the plate. */
final class AlongThePlate {

  /** Their words in the reading of the method of compression. */
  static final Set<String> METHODS = Set.of("eccentric-screws", "tension-device");

  private AlongThePlate() {}

  /** Return whether the method may be one of them, as far as is known. */
  static boolean possible(Reading method) {
    return method instanceof Reading.Word word
        ? !Collections.disjoint(word.possible(), METHODS)
        : method instanceof Reading.Unknown;
  }
}
