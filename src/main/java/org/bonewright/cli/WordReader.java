package org.bonewright.cli;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine;

/** Reads a word of the command line, in capitals or not, and names all that are allowed. */
abstract class WordReader<E extends Enum<E>> implements CommandLine.ITypeConverter<E> {

  private final List<E> allowed;

  /** Read these words; there are two at least. */
  WordReader(E[] allowed) {
    this.allowed = List.of(allowed);
  }

  @Override
  public final E convert(String word) {
    return allowed.stream()
        .filter(value -> value.name().equalsIgnoreCase(word))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandLine.TypeConversionException(
                    "expected " + all() + ", but was '" + word + "'"));
  }

  private String all() {
    List<String> words =
        allowed.stream().map(value -> value.name().toLowerCase(Locale.ROOT)).toList();
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
