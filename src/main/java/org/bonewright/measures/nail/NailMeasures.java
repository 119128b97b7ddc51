package org.bonewright.measures.nail;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of nails. */
public final class NailMeasures {

  private NailMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new BoltNumber(BoltNumber.What.DIAMETER),
        new BoltNumber(BoltNumber.What.FEWER_END),
        new BoltNumber(BoltNumber.What.TO_FRACTURE),
        new CanalReamed(),
        new LineAtIsthmus(),
        new NailLocked(),
        new NailLocking(),
        new NailNumber(NailNumber.What.DIAMETER),
        new NailNumber(NailNumber.What.FILL),
        new NailNumber(NailNumber.What.REAMED_OVER),
        new NailPutIn());
  }
}
