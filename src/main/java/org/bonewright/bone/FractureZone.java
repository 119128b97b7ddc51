package org.bonewright.bone;

import java.util.Optional;
import org.bonewright.casefile.Zone;

/**
 * The part of the bone that is broken or has not united, along the axis.
 *
 * @param length its length in mm, where known
 * @param centre the level of its middle in mm, where known
 */
public record FractureZone(Optional<Dimension> length, Optional<Dimension> centre) {

  /** A zone of which nothing is known. */
  public static final FractureZone UNKNOWN = new FractureZone(Optional.empty(), Optional.empty());

  /** Return the zone as a case file states it. */
  public static FractureZone of(Zone zone) {
    Optional<Dimension> from = zone.fromMm().map(q -> Dimension.stated(q, "zone stated"));
    Optional<Dimension> to = zone.toMm().map(q -> Dimension.stated(q, "zone stated"));
    Optional<Dimension> between = from.flatMap(a -> to.map(b -> b.minus(a).notBelowZero()));
    Optional<Dimension> length =
        zone.lengthMm().map(q -> Dimension.stated(q, "zone stated")).or(() -> between);
    Optional<Dimension> centre = from.flatMap(a -> to.map(b -> half(a.plus(b))));
    return new FractureZone(length, centre);
  }

  /** Return the same zone with a length of another origin. */
  public FractureZone withLength(Dimension other) {
    return new FractureZone(Optional.of(other), centre);
  }

  private static Dimension half(Dimension sum) {
    return new Dimension(sum.min() / 2, sum.max() / 2, sum.assumed(), sum.basis());
  }
}
