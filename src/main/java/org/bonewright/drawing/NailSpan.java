package org.bonewright.drawing;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.drawing.words.Standing;

/**
 * From where to where a nail is drawn. The file records no level of a nail: it is drawn from the
 * end of the bone at which it went in, as long as it is, and moved so that it covers all its bolts.
 *
 * @param from level in mm
 * @param to level in mm
 * @param entersNear whether it went in at the end of the landmark
 * @param goesOn whether it goes on beyond the drawing, as far as anyone can tell
 */
record NailSpan(double from, double to, boolean entersNear, boolean goesOn) {

  private static final double COVER = 5;

  /**
   * Return the span of a nail in a bone.
   *
   * @param extent the part of the bone that is drawn; where that is not all of it, nothing tells
   *     where the nail ends, and it is drawn all through
   */
  static Optional<NailSpan> of(Standing standing, Standing.Metal metal, Extent extent) {
    Nail nail = (Nail) metal.implant();
    double near = extent.from();
    double far = extent.to();
    if (!extent.whole()) {
      return Optional.of(new NailSpan(near, far, true, true));
    }
    double[] bolts =
        standing.tracks().stream()
            .map(drilled -> drilled.old().track())
            .filter(track -> track.implant().equals(metal.path()))
            .flatMap(track -> track.level().stream())
            .mapToDouble(level -> level.middle())
            .toArray();
    boolean entersNear = !nail.entry().equals(Optional.of(Nail.Entry.RETROGRADE));
    double least = DoubleStream.of(bolts).min().orElse(near + 20) - COVER;
    double most = DoubleStream.of(bolts).max().orElse(far - 20) + COVER;
    Optional<Double> length = nail.lengthMm().map(Quantity::middle);
    if (length.isEmpty()) {
      return Optional.of(
          entersNear
              ? new NailSpan(Math.min(near, least), most, true, false)
              : new NailSpan(least, Math.max(far, most), false, false));
    }
    double from = entersNear ? near : far - length.get();
    if (bolts.length > 0) {
      from = Math.max(from, most - length.get());
      from = Math.min(from, least);
    }
    return Optional.of(new NailSpan(from, from + length.get(), entersNear, false));
  }
}
