package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** {@code true} or {@code false}. */
final class FlagShape implements Shape {

  @Override
  public @Nullable Object read(Spot spot) {
    if (spot.part() instanceof Part.Flag flag) {
      return flag.value();
    }
    return spot.refuse(spot.part().inWords(), allowed(), hint(spot.part()));
  }

  private static Optional<String> hint(Part part) {
    return part instanceof Part.Text text
        ? Nearest.of(text.value(), List.of("true", "false"))
            .map(word -> "Write " + word + " without quotation marks if that is meant.")
        : Optional.empty();
  }

  @Override
  public String allowed() {
    return "true or false";
  }
}
