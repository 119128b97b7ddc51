package org.bonewright.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.bonewright.handbook.model.Page;
import org.bonewright.principles.Glossary;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.Test;

/** The glossary explains what the pages use, all of it, and nothing else. */
class GlossaryInHandbookTest {

  private static final HandbookSite SITE = HandbookSite.of(RuleSet.built());
  private static final Map<String, String> FILES = SITE.files();

  @Test
  void uses_every_term_of_the_glossary_on_some_page() {
    Set<String> used = new TreeSet<>();
    FILES
        .values()
        .forEach(
            page ->
                Pattern.compile("class=\"term\" href=\"[^\"#]*#([^\"]*)\"")
                    .matcher(page)
                    .results()
                    .forEach(term -> used.add(term.group(1))));
    Set<String> terms = new TreeSet<>();
    Pattern.compile("<tr id=\"([^\"]*)\"")
        .matcher(FILES.get("glossary.html"))
        .results()
        .forEach(term -> terms.add(term.group(1)));
    assertThat(terms).hasSize(Glossary.built().terms().size());
    assertThat(used).containsExactlyElementsOf(terms);
  }

  @Test
  void explains_every_short_form_in_the_glossary() {
    Set<String> explained = new HashSet<>(Set.of("PDF", "II")); // a sort of file, a number
    for (Glossary.Term term : Glossary.built().terms()) {
      explained.add(term.name());
      explained.addAll(term.also());
    }
    Set<String> missing = new TreeSet<>();
    for (Page page : SITE.handbook().pages()) {
      Pattern.compile("\\b(?:[A-Z]{2,}|HbA1c)")
          .matcher(page.path().equals("glossary") ? "" : plainText(page))
          .results()
          .map(MatchResult::group)
          .filter(form -> !explained.contains(form))
          .forEach(missing::add);
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void says_each_term_in_one_short_sentence() {
    for (Glossary.Term term : Glossary.built().terms()) {
      assertThat(term.means()).as(term.name()).endsWith(".").doesNotContain(". ");
      assertThat(term.means().split(" ", -1)).as(term.name()).hasSizeLessThanOrEqualTo(25);
    }
  }

  private static String plainText(Page page) {
    return FILES.get(page.path() + ".html").replaceAll("<[^>]+>", " ");
  }
}
