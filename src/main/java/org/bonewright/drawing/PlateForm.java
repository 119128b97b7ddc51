package org.bonewright.drawing;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlateSize;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.drawing.words.Standing;

/** The dimensions with which a plate is drawn: as recorded, else those of its family. */
final class PlateForm {

  private static final double WIDTH = 11;
  private static final double THICKNESS = 3.5;
  private static final double SCREW = 3.5;

  private final Standing standing;
  private final Standing.Laid laid;
  private final Plate plate;
  private final Optional<PlateSize> size;

  PlateForm(Standing standing, Standing.Laid laid) {
    this.standing = standing;
    this.laid = laid;
    this.plate = laid.placed().plate();
    this.size = laid.placed().size();
  }

  /** From where to where a plate lies, mm. */
  record Span(double from, double to) {}

  double width() {
    return plate.widthMm().map(Quantity::middle).orElse(size.map(PlateSize::width).orElse(WIDTH));
  }

  double thickness() {
    return plate
        .thicknessMm()
        .map(Quantity::middle)
        .orElse(size.map(PlateSize::thickness).orElse(THICKNESS));
  }

  double screw() {
    return size.map(PlateSize::screw).orElse(SCREW);
  }

  /** Return whether width, thickness or hole size are a guess of ours. */
  boolean isGuessed() {
    return size.isEmpty();
  }

  /**
   * Return from where to where it lies; nothing where its level is not known. With a number of
   * holes it ends half of what its length leaves beyond the outer holes, else beyond the last hole
   * named.
   */
  Optional<Span> span() {
    int last = plate.holes().orElseGet(() -> laid.placed().allHoles().max().orElse(1));
    Optional<Dimension> first = standing.level(laid, 1);
    Optional<Dimension> end = standing.level(laid, last);
    if (first.isEmpty() || end.isEmpty()) {
      return Optional.empty();
    }
    double holes = end.get().middle() - first.get().middle();
    double beyond =
        plate
            .lengthMm()
            .filter(length -> plate.holes().isPresent())
            .map(length -> (length.middle() - holes) / 2)
            .filter(over -> over > 1)
            .orElse(size.map(PlateSize::endOffset).orElse(6.0));
    return Optional.of(new Span(first.get().middle() - beyond, end.get().middle() + beyond));
  }
}
