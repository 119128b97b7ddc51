package org.bonewright.handbook.content;

import java.util.Comparator;
import java.util.List;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Glossary;

/** The page of terms. */
final class GlossaryPage {

  private GlossaryPage() {}

  static Page page(Glossary glossary) {
    return new Page(
        Places.GLOSSARY,
        Page.Kind.LIST,
        "Glossary",
        List.of(
            Block.says(
                "The terms as this handbook uses them, one sentence each, from common knowledge. The"
                    + " first use on each page leads here.")),
        List.of(
            Section.of(
                "terms",
                "Terms",
                new Block.Table(
                    "Terms",
                    List.of("Term", "Meaning"),
                    glossary.terms().stream()
                        .sorted(Comparator.comparing(term -> Places.sorted(term.name())))
                        .map(
                            term ->
                                new Block.Row(
                                    Places.anchor(term.name()),
                                    List.of(
                                        Text.of(Wordings.capital(term.name())),
                                        Text.of(term.means()))))
                        .toList()))));
  }
}
