package org.bonewright.principles;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One comparison of a rule, as its file has it: of a word with words, or of a number with a limit.
 */
sealed interface PlainTest {

  /** Return the need that it looks at. */
  String need();

  /** Return whether it is true in a world. */
  boolean holds(World world);

  /**
   * A word is, or is not, one of some.
   *
   * @param need the need
   * @param isOne whether it must be one of them, else it must not
   * @param words the words
   */
  record Word(String need, boolean isOne, Set<String> words) implements PlainTest {

    public Word {
      words = Set.copyOf(words);
    }

    @Override
    public boolean holds(World world) {
      return words.contains(world.choice(need)) == isOne;
    }
  }

  /**
   * A number compares with a limit; false where either is missing.
   *
   * @param need the need
   * @param comparison how
   * @param limit name of the limit
   */
  record Amount(String need, Comparison comparison, String limit) implements PlainTest {

    @Override
    public boolean holds(World world) {
      @Nullable Double value = world.value(need);
      @Nullable Double bound = world.limit(limit);
      return value != null && bound != null && comparison.holds(value, bound);
    }
  }

  /**
   * There is a number at all.
   *
   * @param need the need
   */
  record There(String need) implements PlainTest {

    @Override
    public boolean holds(World world) {
      return world.value(need) != null;
    }
  }

  /** How two numbers compare. */
  enum Comparison {
    BELOW("<", "below"),
    AT_MOST("<=", "at most"),
    ABOVE(">", "above"),
    AT_LEAST(">=", "at least"),
    EQUAL("==", "exactly");

    private final String sign;
    private final String words;

    Comparison(String sign, String words) {
      this.sign = sign;
      this.words = words;
    }

    /** Return its sign in a rule file. */
    String sign() {
      return sign;
    }

    /** Return it in words. */
    String words() {
      return words;
    }

    boolean holds(double value, double bound) {
      return switch (this) {
        case BELOW -> value < bound;
        case AT_MOST -> value <= bound;
        case ABOVE -> value > bound;
        case AT_LEAST -> value >= bound;
        case EQUAL -> value == bound;
      };
    }
  }
}
