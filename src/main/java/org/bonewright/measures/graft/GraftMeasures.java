package org.bonewright.measures.graft;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of graft, struts and shortening. */
public final class GraftMeasures {

  private GraftMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of();
  }
}
