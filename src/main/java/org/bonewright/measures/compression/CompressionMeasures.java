package org.bonewright.measures.compression;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of compression of the line. */
public final class CompressionMeasures {

  private CompressionMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of();
  }
}
