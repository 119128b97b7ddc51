package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * How much of a ring that was closed all round stays closed under load. It can stand for a contact
 * that was seen, so it counts only where no gap was seen on either side: that the model takes ends
 * as touching because one side touches is not enough.
 */
final class ContactKept implements Measure {

  private static final double HALF_RING = 50;

  @Override
  public Definition definition() {
    return new Definition(
        "contact-kept",
        "Ring closed and kept closed",
        Definition.percent(),
        "share of the ring that touches under the load of the first six weeks (contact-under-load),"
            + " where no gap of 0.1 mm is left on either side; 0 where one is, where less than half of"
            + " the ring was seen in contact, and where the construct is not modelled",
        List.of("gap-widest", "contact-percent", "contact-under-load"),
        "frame model with ends that push and never pull; our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Reading gap = scene.read("gap-widest");
    if (!(gap instanceof Reading.Amount widest)) {
      return new Reading.Unknown(gap.missing());
    }
    if (widest.min() >= LineMaker.TOUCH) {
      return Reading.number(0, "a gap is left: " + widest.shown() + " mm");
    }
    if (scene.read("contact-percent") instanceof Reading.Amount seen && seen.max() < HALF_RING) {
      return Reading.number(0, "seen in contact: " + seen.shown() + " %");
    }
    Reading contact = scene.read("contact-under-load");
    if (contact instanceof Reading.None none) {
      return Reading.number(0, none.why());
    }
    return widest.max() < LineMaker.TOUCH
        ? contact
        : new Reading.Unknown(Reading.missingOf(gap, contact));
  }
}
