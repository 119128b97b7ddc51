package org.bonewright.casefile.reading;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A part of the file at the moment when it is held against a shape.
 *
 * @param pointer JSON pointer to the part
 * @param meaning what the field means, in the words of its record
 */
record Spot(Part part, String pointer, Optional<String> meaning, Problems problems) {

  /** Return the spot of a field or an element below this one, which means the same. */
  Spot below(String name, Part below) {
    return new Spot(below, Problem.pointer(pointer, name), meaning, problems);
  }

  /** Return this spot with a meaning of its own. */
  Spot meaning(Optional<String> own) {
    return new Spot(part, pointer, own, problems);
  }

  /** Note that the part is refused and return the absent value. */
  @Nullable Object refuse(String allowed) {
    return refuse(part.inWords(), allowed, Optional.empty());
  }

  /** Note that the part is refused, with a hint, and return the absent value. */
  @Nullable Object refuse(String found, String allowed, Optional<String> hint) {
    if (!(part instanceof Part.Spoilt)) {
      String why = meaning.map(m -> " (the field means: " + withoutFullStop(m) + ")").orElse("");
      Problem problem = Problem.error(pointer, found, allowed + why).at(part.place());
      problems.add(hint.map(problem::withHint).orElse(problem));
    }
    return null;
  }

  private static String withoutFullStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
