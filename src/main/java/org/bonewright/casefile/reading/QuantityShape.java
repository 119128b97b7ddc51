package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A number, or a group with both its bounds.
 *
 * @param exact the shape of a number that stands alone
 * @param range the shape of the group with the fields {@code min} and {@code max}
 */
record QuantityShape(NumberShape exact, RecordShape range) implements Shape {

  @Override
  public @Nullable Object read(Spot spot) {
    if (spot.part() instanceof Part.Figure) {
      return exact.read(spot) instanceof Double value ? Quantity.of(value) : null;
    }
    if (!(spot.part() instanceof Part.Group group)) {
      return NumberShape.refuseOther(spot, allowed());
    }
    return range.values(group, spot).map(bounds -> between(bounds, spot)).orElse(null);
  }

  private static @Nullable Object between(List<Object> bounds, Spot spot) {
    double min = (Double) bounds.get(0);
    double max = (Double) bounds.get(1);
    if (min > max) {
      return spot.refuse("a min above the max", "a min that is at most the max", Optional.empty());
    }
    return new Quantity(min, max);
  }

  @Override
  public String allowed() {
    return exact.allowed() + ", or a range such as {\"min\": 1, \"max\": 2}";
  }
}
