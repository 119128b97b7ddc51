package org.bonewright.handbook.content;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bonewright.principles.Severity;

/**
 * The verdict that an example expects, read from its shorthand: {@code met}, {@code unmet minor
 * bridged}, {@code unmet minor to major bridged}, {@code unknown at worst major}.
 *
 * @param words the verdict in words, without the limit
 * @param limit the limit or need that decides, where it is unmet
 * @param severity how grave the limit makes it, where it is unmet; of a range the gravest, since
 *     the milder may come of another limit
 */
record Expected(String words, Optional<String> limit, Optional<Severity> severity) {

  private static final Pattern UNMET = Pattern.compile("unmet (\\w+)(?: to (\\w+))? (\\w+)");
  private static final Pattern UNKNOWN = Pattern.compile("unknown(?: at worst (\\w+))?");

  /**
   * Read a shorthand.
   *
   * @throws IllegalArgumentException if it is none
   */
  static Expected of(String shorthand) {
    Matcher unmet = UNMET.matcher(shorthand);
    if (unmet.matches()) {
      Severity from = Severity.of(unmet.group(1));
      Optional<Severity> to = Optional.ofNullable(unmet.group(2)).map(Severity::of);
      return new Expected(
          "unmet, " + from.word() + to.map(grave -> " to " + grave.word()).orElse(""),
          Optional.of(unmet.group(3)),
          Optional.of(to.orElse(from)));
    }
    Matcher unknown = UNKNOWN.matcher(shorthand);
    if (unknown.matches()) {
      String worst = Optional.ofNullable(unknown.group(1)).map(w -> ", at worst " + w).orElse("");
      return new Expected("unknown" + worst, Optional.empty(), Optional.empty());
    }
    return switch (shorthand) {
      case "met" -> new Expected("met", Optional.empty(), Optional.empty());
      case "not-applicable" -> new Expected("not applicable", Optional.empty(), Optional.empty());
      default -> throw new IllegalArgumentException("no verdict: " + shorthand);
    };
  }
}
