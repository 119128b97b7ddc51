package org.bonewright.measures.plate;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many times the plate is longer than the zone. */
final class PlateSpanRatio implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-span-ratio",
        "Span ratio",
        Definition.ratio(),
        "plate length divided by zone length",
        List.of("plate-length", "zone-length"),
        "Gautier and Sommer, Injury 2003, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    Reading plate = scene.read("plate-length");
    Reading zone = scene.read("zone-length");
    if (plate instanceof Reading.None none) {
      return none;
    }
    if (!(plate instanceof Reading.Amount length)
        || !(zone instanceof Reading.Amount span)
        || span.max() <= 0) {
      return new Reading.Unknown(Reading.missingOf(plate, zone));
    }
    double least = span.max() == 0 ? 0 : length.min() / span.max();
    double most = span.min() <= 0 ? Double.POSITIVE_INFINITY : length.max() / span.min();
    boolean assumed = length.kind() == Kind.ASSUMED || span.kind() == Kind.ASSUMED;
    return new Reading.Amount(
        least,
        most,
        assumed ? Kind.ASSUMED : Kind.FACT,
        "plate "
            + length.shown()
            + " mm / zone "
            + span.shown()
            + " mm = "
            + new Dimension(least, most, false, "").numbers(),
        least == most ? List.of() : Reading.missingOf(plate, zone));
  }
}
