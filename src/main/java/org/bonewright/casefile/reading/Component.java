package org.bonewright.casefile.reading;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One named field of a group.
 *
 * @param shape the shape of its value; inside the {@code Optional} for an optional one
 * @param meaning what the field means
 * @param argument the name that the record has for it
 */
record Component(
    String name, Shape shape, Presence presence, Optional<String> meaning, String argument) {

  /** What it means when the field is absent. */
  enum Presence {
    /** It must not be absent. */
    REQUIRED,
    /** Not known; written {@code null}, it means the same. */
    OPTIONAL,
    /** The list is empty. */
    LIST;

    /** Return what the absence of a record's component means, which its type tells. */
    static Presence of(RecordComponent component) {
      if (component.getType() == Optional.class) {
        return OPTIONAL;
      }
      return component.getType() == List.class ? LIST : REQUIRED;
    }
  }

  /** Return the value of the field as the record takes it; absent if it is unfit. */
  @Nullable Object read(Spot spot) {
    Spot own = spot.meaning(meaning);
    if (!(spot.part() instanceof Part.Nothing)) {
      Object value = shape.read(own);
      return value != null && presence == Presence.OPTIONAL ? Optional.of(value) : value;
    }
    return presence == Presence.OPTIONAL
        ? Optional.empty()
        : own.refuse("null", shape.allowed(), Optional.of(nullHint()));
  }

  private String nullHint() {
    return presence == Presence.LIST
        ? "Leave the field out when there is nothing to list."
        : "This field must have a value; null is only for fields that may be left out.";
  }

  /** Return the value that stands for an absent field; absent itself, noted, if it is required. */
  @Nullable Object missing(Spot group) {
    return switch (presence) {
      case OPTIONAL -> Optional.empty();
      case LIST -> List.of();
      case REQUIRED ->
          group
              .below(name, group.part())
              .meaning(meaning)
              .refuse("nothing", shape.allowed(), Optional.empty());
    };
  }
}
