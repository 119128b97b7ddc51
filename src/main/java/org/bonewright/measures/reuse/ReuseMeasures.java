package org.bonewright.measures.reuse;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of bone that earlier operations have used. */
public final class ReuseMeasures {

  private ReuseMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of();
  }
}
