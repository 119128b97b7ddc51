package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;

/**
 * The terms that cards use, each in one plain sentence. It explains and decides nothing.
 *
 * @param terms the terms, in the order of their file
 */
public record Glossary(List<Term> terms) {

  /**
   * One term.
   *
   * @param name the term as it stands in the list
   * @param also other forms in which texts use it
   * @param means what it means, in one sentence
   */
  public record Term(String name, List<String> also, String means) {}

  /** Return the glossary that Bonewright was built with. */
  public static Glossary built() {
    return read(RuleFiles.glossary());
  }

  /**
   * Read a glossary.
   *
   * @throws IllegalStateException if a field is missing or unknown
   */
  static Glossary read(String yaml) {
    CardText text = CardText.of(yaml, "glossary");
    List<Term> terms = new ArrayList<>();
    for (CardText part : text.parts("terms")) {
      terms.add(new Term(part.text("term"), part.texts("also"), part.text("means")));
      part.done();
    }
    text.done();
    return new Glossary(List.copyOf(terms));
  }
}
