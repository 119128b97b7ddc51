package org.bonewright.measures.limb;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of nerves, skin, approach and blood flow. */
public final class LimbMeasures {

  private LimbMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new AnkleBrachialIndex(),
        new CoverPlanned(),
        new FixationsBefore(),
        new IncisedBefore(),
        new LimbAtRisk(),
        new NerveFollowUpMissing(),
        new NerveHolesNoted(),
        new NerveInsideZone(),
        new NervePalsy(),
        new NerveSeen(),
        new Pulses(),
        new RadialNerveNoted(RadialNerveNoted.When.BEFORE),
        new RadialNerveNoted(RadialNerveNoted.When.AFTER),
        new SkinBridge(),
        new SkinState(),
        new StrippedOfLate());
  }
}
