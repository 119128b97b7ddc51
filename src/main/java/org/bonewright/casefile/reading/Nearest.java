package org.bonewright.casefile.reading;

import java.util.Collection;
import java.util.Optional;

/** Finds the known word that a person most likely meant. */
public final class Nearest {

  private static final int LONGEST = 60;
  private static final int SHORTEST_STEM = 4;

  private Nearest() {}

  /**
   * Return the known word nearest to what was written, if one is near enough.
   *
   * <p>Case, underscores, hyphens and blanks do not count. Near enough is up to one slip in three
   * characters, a slip being a character too many, missing, wrong or changed with its neighbour; or
   * else the only known word that begins as written, such as {@code lengthMm} for {@code length}.
   * Of two words equally near the one that comes first is taken.
   */
  public static Optional<String> of(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = plain(written);
    String best = "";
    int fewest = Math.max(1, plain.length() / 3) + 1;
    for (String word : known) {
      String other = plain(word);
      if (Math.abs(plain.length() - other.length()) < fewest) {
        int slips = slips(plain, other);
        best = slips < fewest ? word : best;
        fewest = Math.min(fewest, slips);
      }
    }
    return best.isEmpty() ? continuation(plain, known) : Optional.of(best);
  }

  private static Optional<String> continuation(String plain, Collection<String> known) {
    if (plain.length() < SHORTEST_STEM) {
      return Optional.empty();
    }
    var longer = known.stream().filter(word -> plain(word).startsWith(plain)).toList();
    return longer.size() == 1 ? Optional.of(longer.get(0)) : Optional.empty();
  }

  private static String plain(String word) {
    StringBuilder plain = new StringBuilder(word.length());
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (c != '_' && c != '-' && c != ' ') {
        plain.append(Character.toLowerCase(c));
      }
    }
    return plain.toString();
  }

  /** Count the slips between two words: the Damerau–Levenshtein distance, adjacent swaps only. */
  static int slips(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, i, j, cost);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int i, int j, int[][] cost) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
