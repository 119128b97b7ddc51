package org.bonewright.casefile.checking;

import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Zone;

/** A zone begins no farther along than it ends, and is as long as its levels say. */
final class ZonesRunFromNearToFar implements Check {

  /** Two readings of one film differ by this much, in mm and as a share of the length. */
  private static final double READING_MM = 5;

  private static final double READING_SHARE = 0.1;

  @Override
  public void look(Contents contents, Objections objections) {
    CaseFile file = contents.file();
    Stream.concat(Zones.ofBone(file), Zones.ofCompanion(file))
        .filter(zone -> zone.value().fromMm().isPresent() && zone.value().toMm().isPresent())
        .forEach(zone -> look(zone, objections));
  }

  private static void look(Located<Zone> zone, Objections objections) {
    Quantity from = zone.value().fromMm().orElseThrow();
    Quantity to = zone.value().toMm().orElseThrow();
    if (Certainly.below(to, from)) {
      objections.refuse(
          zone.at().field("toMm"),
          "a zone from " + Wording.mm(from) + " back to " + Wording.mm(to),
          "an end at or beyond the beginning, " + Wording.mm(from));
      return;
    }
    Quantity byLevels = new Quantity(Math.max(0, to.min() - from.max()), to.max() - from.min());
    zone.value()
        .lengthMm()
        .filter(length -> apart(length, byLevels))
        .ifPresent(
            length ->
                objections.warn(
                    zone.at().field("lengthMm"),
                    "a zone of "
                        + Wording.mm(length)
                        + " whose levels are "
                        + Wording.mm(byLevels)
                        + " apart",
                    "the length that the levels give, or the length alone"));
  }

  private static boolean apart(Quantity one, Quantity other) {
    double reading = READING_MM + READING_SHARE * Math.max(one.max(), other.max());
    return one.max() + reading < other.min() || other.max() + reading < one.min();
  }
}
