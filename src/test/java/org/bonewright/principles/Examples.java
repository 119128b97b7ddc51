package org.bonewright.principles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.bonewright.measures.Reading;

/**
 * The examples of one principle.
 *
 * @param lines what it must say of given readings
 * @param cases what it must say of whole cases
 */
record Examples(List<Line> lines, List<CaseLine> cases) {

  static final String ENDING = ".examples.yaml";

  /** Return the file that holds those of a card. */
  static Path file(RuleSet rules, Card card) {
    return Path.of("rules", rules.family(card).id(), card.id() + ENDING);
  }

  /** Return those of a card. */
  static Examples of(RuleSet rules, Card card) {
    try {
      return new ExamplesReader(card, rules::definition).read(Files.readString(file(rules, card)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What a principle must say of given readings.
   *
   * @param say the situation, in a few words
   * @param readings what is read, by need
   * @param expect the verdict in shorthand
   */
  record Line(String say, Map<String, Reading> readings, String expect) {

    /** Return the number that a need is known to have, or NaN. */
    double number(String need) {
      return readings.get(need) instanceof Reading.Amount amount && amount.min() == amount.max()
          ? amount.min()
          : Double.NaN;
    }

    /** Return the word that a need is known to have, or an empty text. */
    String word(String need) {
      return readings.get(need) instanceof Reading.Word word && word.possible().size() == 1
          ? word.possible().first()
          : "";
    }
  }

  /**
   * What a principle must say of a base case with some changes.
   *
   * @param say the situation, in a few words
   * @param base name of the base case
   * @param patch the changes, as RFC 6902 says
   * @param on id of the subject
   * @param read some of what must be read on the way, as shown to people
   * @param expect the verdict in shorthand
   */
  record CaseLine(
      String say, String base, String patch, String on, Map<String, String> read, String expect) {}
}
