package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How the frame model takes the line: as a gap, or as ends that touch. */
final class ModelledLine implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "modelled-line",
        "Line as modelled",
        Definition.words("gap", "touching"),
        "touching where no gap of 0.1 mm is left anywhere, or where one side touches and the ends"
            + " were pressed together or touch over half of the ring; else a gap, taken as even. A"
            + " zone in pieces that was not pressed together is a gap. None where the construct is"
            + " not modelled",
        List.of("operations/reduction", "pattern-class", "compression-method", "zone-length"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Sketch.Attempt attempt = SketchMaker.of(scene);
    if (attempt instanceof Refused refused) {
      return refused.reading();
    }
    Sketch sketch = ((Sketch.Attempt.Ready) attempt).sketch();
    return Reading.word(sketch.line().closed() ? "touching" : "gap", sketch.told());
  }
}
