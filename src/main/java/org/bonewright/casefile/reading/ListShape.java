package org.bonewright.casefile.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A list.
 *
 * @param element the shape of each element
 */
record ListShape(Shape element) implements Shape {

  /** Most elements that a list may have; those beyond are not looked at. */
  static final int LONGEST = 500;

  @Override
  public @Nullable Object read(Spot spot) {
    if (!(spot.part() instanceof Part.Row row)) {
      return spot.refuse(allowed());
    }
    int size = row.elements().size();
    if (size > LONGEST) {
      spot.refuse("a list of " + size, allowed(), Optional.empty());
    }
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < Math.min(size, LONGEST); i++) {
      Object value = element.read(spot.below(Integer.toString(i), row.elements().get(i)));
      if (value != null) {
        values.add(value);
      }
    }
    return values.size() == size ? List.copyOf(values) : null;
  }

  @Override
  public String allowed() {
    return "a list of at most " + LONGEST + " elements";
  }
}
