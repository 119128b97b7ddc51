package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What a site has set holds where its words hold, and nowhere else. */
class SiteChangesTest {

  private static final LocalLimit.Grounds GROUNDS =
      new LocalLimit.Grounds("Kept so here.", "hygiene board", "2026-01-15");
  private static final Card SPAN = AllCells.RULES.card("plate-span-ratio").orElseThrow();
  private static final Card SAMPLES = AllCells.RULES.card("five-deep-samples").orElseThrow();
  private static final LocalLimit PRESSED =
      new LocalLimit(SPAN.id(), "pressed", Optional.of("simple compressed"), 4.25, 8, GROUNDS);
  private static final LocalLimit FIVE =
      new LocalLimit(SAMPLES.id(), "five", Optional.empty(), 3, 5, GROUNDS);

  private static SiteChanges site(List<LocalLimit> limits, LocalSeverity... severities) {
    return new SiteChanges("here", "0", true, limits, List.of(severities), List.of());
  }

  @Nested
  class A_severity {

    private static final SiteChanges SITE =
        site(
            List.of(),
            new LocalSeverity(SPAN.id(), Severity.MINOR, Severity.MAJOR, GROUNDS),
            new LocalSeverity(SPAN.id(), Severity.MAJOR, Severity.NOTE, GROUNDS));

    @Test
    void counts_as_the_site_says_once() {
      assertThat(SITE.severity(SPAN, Severity.MINOR)).isEqualTo(Severity.MAJOR);
      assertThat(SITE.severity(SPAN, Severity.MAJOR)).isEqualTo(Severity.NOTE);
    }

    @Test
    void stays_where_the_site_says_nothing_of_it() {
      assertThat(SITE.severity(SPAN, Severity.CRITICAL)).isEqualTo(Severity.CRITICAL);
      assertThat(SITE.severity(SAMPLES, Severity.MINOR)).isEqualTo(Severity.MINOR);
    }
  }

  @Nested
  class A_limit {

    @Test
    void replaces_one_value_of_one_card_and_no_other() {
      SiteChanges site = site(List.of(PRESSED, FIVE));
      Card local = site.on(SPAN);
      assertThat(local.limits().get("pressed").values()).containsEntry("simple compressed", 4.25);
      assertThat(without(local, "simple compressed")).isEqualTo(without(SPAN, "simple compressed"));
      assertThat(site.on(SAMPLES).limits().get("five").values())
          .isEqualTo(Map.of(Card.Limit.OTHERWISE, 3.0));
    }

    private static Map<String, Double> without(Card card, String key) {
      Map<String, Double> values = new java.util.TreeMap<>(card.limits().get("pressed").values());
      values.remove(key);
      return values;
    }

    @Test
    void that_the_card_does_not_have_is_refused() {
      assertThatThrownBy(() -> FIVE.on(SPAN)).hasMessageContaining("has no limit five");
    }

    @Test
    void says_why_by_whom_and_when() {
      assertThat(GROUNDS.inWords()).isEqualTo("Kept so here (hygiene board, 2026-01-15)");
    }
  }

  @Nested
  class A_limit_holds {

    private static List<LocalLimit> holding(Card card, Map<String, Reading> readings) {
      return site(List.of(PRESSED, FIVE))
          .holding(
              new Judgement(
                  card,
                  AllCells.RULES.family(card),
                  "op-1",
                  new Verdict.Met(),
                  Optional.empty(),
                  List.of(),
                  List.of(),
                  readings,
                  Map.of(),
                  List.of(),
                  Optional.empty()),
              AllCells.RULES);
    }

    private static Map<String, Reading> words(String first, String second) {
      List<String> by = SPAN.limits().get("pressed").by();
      return Map.of(by.get(0), Reading.word(first, ""), by.get(1), Reading.word(second, ""));
    }

    @Test
    void for_its_words() {
      assertThat(holding(SPAN, words("simple", "compressed"))).containsExactly(PRESSED);
    }

    @Test
    void for_no_other_words() {
      assertThat(holding(SPAN, words("simple", "bridged"))).isEmpty();
      assertThat(holding(SPAN, words("multifragmentary", "compressed"))).isEmpty();
    }

    @Test
    void where_its_words_may_still_be_read() {
      assertThat(holding(SPAN, Map.of())).containsExactly(PRESSED);
      List<String> by = SPAN.limits().get("pressed").by();
      Reading either =
          new Reading.Word(
              new TreeSet<>(List.of("simple", "multifragmentary")), Kind.FACT, "", List.of());
      assertThat(
              holding(SPAN, Map.of(by.get(0), either, by.get(1), Reading.word("compressed", ""))))
          .containsExactly(PRESSED);
    }

    @Test
    void always_where_it_hangs_on_no_words() {
      assertThat(holding(SAMPLES, Map.of())).containsExactly(FIVE);
    }

    @Test
    void not_where_what_it_hangs_on_is_nothing() {
      List<String> by = SPAN.limits().get("pressed").by();
      assertThat(
              holding(
                  SPAN,
                  Map.of(
                      by.get(0),
                      new Reading.None("nothing"),
                      by.get(1),
                      Reading.word("compressed", ""))))
          .isEmpty();
    }
  }
}
