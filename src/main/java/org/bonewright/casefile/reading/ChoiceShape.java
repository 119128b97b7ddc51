package org.bonewright.casefile.reading;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One of several groups, told apart by the word in their field {@code kind}. */
final class ChoiceShape implements Shape {

  /** The field that names the alternative. */
  static final String KIND = "kind";

  private final Map<String, Object> alternatives = new LinkedHashMap<>();
  private final WordShape kinds = new WordShape(alternatives);

  /** Add an alternative. They come after the shape is made because one may contain the choice. */
  void add(String kind, Shape alternative) {
    if (alternatives.put(kind, alternative) != null) {
      throw new IllegalStateException("two alternatives of kind " + kind);
    }
  }

  @Override
  public @Nullable Object read(Spot spot) {
    if (!(spot.part() instanceof Part.Group group)) {
      return spot.refuse(allowed());
    }
    Part kind = group.fields().get(KIND);
    if (kind == null) {
      return spot.below(KIND, group).refuse("nothing", kinds.allowed(), Optional.empty());
    }
    return kinds.read(spot.below(KIND, kind)) instanceof Shape picked ? picked.read(spot) : null;
  }

  @Override
  public String allowed() {
    return "a group whose field kind is " + kinds.allowed();
  }
}
