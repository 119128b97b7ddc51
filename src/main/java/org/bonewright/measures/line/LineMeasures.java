package org.bonewright.measures.line;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of the fracture line and its zone. */
public final class LineMeasures {

  private LineMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new AxiallyUnstable(),
        new ConceptMeasure(),
        new ConceptTold(),
        new EndsResected(),
        new FarDefect(),
        new GapWidest(),
        new LineHandling(),
        new LineObliquity(),
        new NonunionType(),
        new PatternClass(),
        new ShortLine(),
        StatedQuantity.contact(),
        StatedQuantity.farGap(),
        StatedQuantity.step(),
        new TwoLinesApart(),
        new ZoneLength());
  }
}
