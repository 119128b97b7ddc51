package org.bonewright.measures;

/**
 * Something the case file does not say, and how to find it out.
 *
 * @param field where it would stand, as a path with ids, for example {@code
 *     op-2/reduction/gapFarMm}
 * @param question the question to ask, in a surgeon's words
 */
public record MissingFact(String field, String question) implements Comparable<MissingFact> {

  @Override
  public int compareTo(MissingFact other) {
    int byField = field.compareTo(other.field);
    return byField != 0 ? byField : question.compareTo(other.question);
  }
}
