package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Operation;

/** A line that a lag screw compressed has a lag screw among what was put in. */
final class LagCompressionHasALagScrew implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      Operation operation = procedure.operation();
      boolean byLagScrew =
          operation
              .compression()
              .map(Compression::method)
              .equals(Optional.of(Compression.Method.LAG_SCREW));
      boolean without =
          operation
              .fixation()
              .map(put -> put.stream().noneMatch(LagScrew.class::isInstance))
              .orElse(false);
      if (byLagScrew && without) {
        objections.refuse(
            procedure.at().field("compression").field("method"),
            "compression by a lag screw, and no lag screw among what was put in",
            "a lag screw in fixation, or another method");
      }
    }
  }
}
