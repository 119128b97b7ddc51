package org.bonewright.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bonewright.measures.Definition;
import org.bonewright.principles.Card;
import org.bonewright.principles.Promise;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must be true of every page of the handbook. */
class WholeHandbookTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final HandbookSite SITE = HandbookSite.of(RULES);
  private static final Map<String, String> FILES = SITE.files();

  private static final Pattern ID = Pattern.compile("\\bid=\"([^\"]*)\"");
  private static final Map<String, Set<String>> ANCHORS = anchors();
  private static final Pattern LINK = Pattern.compile("\\b(?:href|src|action)=\"([^\"]*)\"");
  private static final Pattern HEADING = Pattern.compile("<h([1-6])[ >]");
  private static final Pattern SLOT = Pattern.compile("\\{[^}]*}|\\bnull\\b|\\bNaN\\b|Optional\\[");

  static Stream<String> pages() {
    return FILES.keySet().stream().filter(path -> path.endsWith(".html"));
  }

  static Collection<Card> cards() {
    return RULES.cards();
  }

  @Test
  void has_a_page_for_each_principle_and_each_promise_and_the_lists() {
    List<String> expected = new ArrayList<>();
    RULES.cards().forEach(card -> expected.add("principles/" + card.id() + ".html"));
    RULES.promises().forEach(promise -> expected.add("promises/" + promise.id() + ".html"));
    expected.addAll(
        List.of(
            "index.html",
            "measures.html",
            "failures.html",
            "remedies.html",
            "bibliography.html",
            "glossary.html",
            "history.html",
            "search.html"));
    assertThat(pages()).containsExactlyInAnyOrderElementsOf(expected);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void has_a_title_and_one_first_heading_and_no_level_left_out(String path) {
    String page = FILES.get(path);
    assertThat(page).containsPattern("<title>[^<]+</title>").contains("<html lang=\"en\">");
    List<Integer> levels =
        HEADING.matcher(page).results().map(h -> Integer.parseInt(h.group(1))).toList();
    assertThat(levels).startsWith(1);
    assertThat(levels.stream().filter(level -> level == 1)).hasSize(1);
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i)).as("heading %d", i).isLessThanOrEqualTo(levels.get(i - 1) + 1);
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void leaves_no_gap_unfilled_and_nothing_empty(String path) {
    String page = FILES.get(path);
    assertThat(SLOT.matcher(page).results().map(MatchResult::group)).isEmpty();
    assertThat(page)
        .doesNotContainPattern(
            "<(p|li|td|th|dd|dt|h1|h2|h3|caption|title|a)( (?!id=\"count\")[^>]*)?></\\1>")
        .doesNotContainPattern("\\.\\.(?!/)")
        .doesNotContain(" .<", ",,");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void leads_nowhere_but_to_what_is_there(String path) {
    List<String> dead = new ArrayList<>();
    LINK.matcher(FILES.get(path))
        .results()
        .map(link -> link.group(1))
        .filter(link -> !isThere(path, link))
        .forEach(dead::add);
    assertThat(dead).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void names_no_place_twice(String path) {
    List<String> ids = ID.matcher(FILES.get(path)).results().map(id -> id.group(1)).toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void says_on_every_page_that_it_is_no_decision_and_which_rules_it_shows(String path) {
    assertThat(FILES.get(path))
        .contains("Decision support, not a decision")
        .contains("No surgeon has yet reviewed these principles.")
        .contains("Rule set " + RULES.version() + ", content " + RULES.hash());
  }

  @ParameterizedTest
  @MethodSource("cards")
  void shows_every_field_of_a_card_on_its_page(Card card) {
    String page = shown("principles/" + card.id() + ".html");
    List<String> said = new ArrayList<>();
    said.addAll(List.of(card.id(), card.title(), card.statement(), card.why(), Remedy.of(card)));
    said.addAll(List.of(card.reviewedBy(), card.since(), RULES.family(card).title()));
    card.needs().values().forEach(need -> said.add(RULES.definition(need).title()));
    card.limits().values().forEach(limit -> said.add(firstWords(limit.evidence())));
    card.grades().forEach(grade -> said.add(grade.word()));
    said.add(card.highest().word());
    card.verdicts().forEach(verdict -> said.add(verdict.word().replace('-', ' ')));
    Stream.concat(
            Stream.of(card.say().met(), card.say().notApplicable()),
            card.say().unmet().values().stream())
        .filter(sentence -> !sentence.equals("Always applies."))
        .forEach(sentence -> said.addAll(withoutGaps(sentence)));
    card.tells().forEach(told -> said.addAll(withoutGaps(told.say())));
    card.remedyMoves().forEach(move -> said.add(RULES.moves().words().get(move)));
    card.sources().forEach(source -> said.add(lastWords(source.text())));
    card.disputed().ifPresent(dispute -> said.add(dispute.view()));
    card.awaiting().forEach(question -> said.add(firstWords(question)));
    said.addAll(card.formerIds());
    card.deprecated().ifPresent(said::add);
    card.siteMayNotChange().ifPresent(reason -> said.add(reason.substring(1)));
    said.add(card.overridable() ? "may accept it unmet" : "cannot be accepted");
    assertThat(page.toLowerCase(java.util.Locale.ROOT))
        .contains(said.stream().map(words -> plain(words)).toList());
  }

  @Test
  void shows_every_component_of_a_card_so_that_a_new_one_is_not_forgotten() {
    assertThat(Card.class.getRecordComponents())
        .as("shown by PrinciplePage; a new field needs its place there, and in the test above")
        .hasSize(25);
    assertThat(Promise.class.getRecordComponents()).hasSize(9);
    assertThat(Definition.class.getRecordComponents()).hasSize(6);
  }

  @Test
  void shows_every_promise_with_its_proof() {
    for (Promise promise : RULES.promises()) {
      String page = shown("promises/" + promise.id() + ".html");
      assertThat(page).contains(promise.title(), promise.statement(), promise.why());
      promise
          .provedBy()
          .forEach(
              test -> {
                String says = test.substring(test.indexOf('#') + 2).replace('_', ' ');
                assertThat(page).contains(says);
              });
      promise.awaiting().forEach(open -> assertThat(page).contains(open));
    }
  }

  @Test
  void shows_every_measure_with_formula_unit_inputs_and_source() {
    String page = plain(shown("measures.html"));
    for (Definition measure : RULES.definitions()) {
      assertThat(FILES.get("measures.html")).contains("id=\"" + measure.id() + "\"");
      assertThat(page).contains(plain(measure.title()), plain(firstWords(measure.formula())));
      assertThat(page).contains(plain(firstWords(measure.source())));
    }
  }

  @Test
  void holds_every_source_once_in_its_part() {
    String page = FILES.get("bibliography.html");
    Map<String, Integer> rows = new LinkedHashMap<>();
    Pattern.compile("<tr id=\"([^\"]*)\"")
        .matcher(page)
        .results()
        .forEach(row -> rows.merge(row.group(1), 1, Integer::sum));
    assertThat(rows.values()).hasSizeGreaterThan(200).containsOnly(1);
    assertThat(page).contains("No source was read as a whole");
  }

  @Test
  void needs_nothing_from_elsewhere() {
    FILES.forEach(
        (path, text) ->
            assertThat(text).as(path).doesNotContain("http:", "https:", "//fonts", "@import"));
  }

  @Test
  void has_no_use_for_a_clock_and_gives_the_same_bytes_again() {
    assertThat(HandbookSite.of(RuleSet.built()).files()).isEqualTo(FILES);
  }

  private static Map<String, Set<String>> anchors() {
    Map<String, Set<String>> anchors = new LinkedHashMap<>();
    FILES.forEach(
        (path, text) -> {
          Set<String> ids = new HashSet<>();
          ID.matcher(text).results().forEach(id -> ids.add(id.group(1)));
          anchors.put(path, ids);
        });
    anchors.put(HandbookSite.PDF, Set.of());
    return anchors;
  }

  private static boolean isThere(String from, String link) {
    String[] parts = link.split("#", 2);
    String folder = from.contains("/") ? from.substring(0, from.indexOf('/') + 1) : "";
    String path = parts[0].isEmpty() ? from : folder + parts[0];
    String resolved = path.replaceAll("[^/]+/\\.\\./", "");
    Set<String> there = ANCHORS.get(resolved);
    return there != null && (parts.length == 1 || there.contains(parts[1]));
  }

  private static String shown(String path) {
    return FILES
        .get(path)
        .replaceAll("<[^>]+>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  private static String plain(String words) {
    return words.strip().toLowerCase(java.util.Locale.ROOT);
  }

  /** Ids within a text are shown as titles; what stands before the first of them is shown as is. */
  private static String firstWords(String words) {
    return words.split("[a-z]+-[a-z-]+", 2)[0];
  }

  private static String lastWords(String words) {
    return words.substring(words.indexOf(": ") < 0 ? 0 : words.indexOf(": ") + 2);
  }

  private static List<String> withoutGaps(String sentence) {
    return Stream.of(sentence.split("\\{[^}]*}")).filter(part -> !part.isBlank()).toList();
  }
}
