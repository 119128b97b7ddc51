package org.bonewright.casefile.reading;

import java.lang.reflect.Field;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.Named;
import org.jspecify.annotations.Nullable;

/**
 * One of a few fixed words.
 *
 * @param words the value that each word stands for, in the order in which they are told
 */
record WordShape(Map<String, Object> words) implements Shape {

  /** Return the shape of an enum. */
  static WordShape of(Class<?> type) {
    Map<String, Object> words = new LinkedHashMap<>();
    for (Object constant : type.getEnumConstants()) {
      words.put(wireName((Enum<?>) constant), constant);
    }
    return new WordShape(words);
  }

  /**
   * Return how a constant is written in a file: {@code NOT_DONE} is {@code not-done}, unless it has
   * a name of its own.
   */
  static String wireName(Enum<?> constant) {
    for (Field field : constant.getDeclaringClass().getFields()) {
      Named named = field.getAnnotation(Named.class);
      if (named != null && field.getName().equals(constant.name())) {
        return named.value();
      }
    }
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public @Nullable Object read(Spot spot) {
    if (!(spot.part() instanceof Part.Text text)) {
      return spot.refuse(allowed());
    }
    Object value = words.get(text.value());
    return value != null ? value : spot.refuse(text.inWords(), allowed(), hint(text.value()));
  }

  private Optional<String> hint(String written) {
    return Nearest.of(written, words.keySet()).map(word -> "Did you mean \"" + word + "\"?");
  }

  @Override
  public String allowed() {
    return (words.size() == 1 ? "the word " : "one of ") + String.join(", ", words.keySet());
  }
}
