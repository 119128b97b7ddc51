package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a card says must be fit to be read aloud in a meeting. */
class SentencesTest {

  private static final int MOST_WORDS = 25;
  private static final Pattern END = Pattern.compile("(?<=[.:;?!])\\s+(?=[A-Z{])");

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.bonewright.principles.AllCells#cards")
  void no_sentence_of_a_card_is_longer_than_twenty_five_words(Card card) {
    assertThat(texts(card).stream().flatMap(END::splitAsStream).filter(SentencesTest::isLong))
        .as(card.id())
        .isEmpty();
  }

  private static List<String> texts(Card card) {
    List<String> texts = new ArrayList<>();
    texts.add(card.statement());
    texts.add(card.why());
    texts.add(card.remedy());
    texts.add(card.say().met());
    texts.add(card.say().notApplicable());
    texts.addAll(card.say().unmet().values());
    card.tells().forEach(told -> texts.add(told.say()));
    card.disputed().map(Card.Dispute::view).ifPresent(texts::add);
    return texts;
  }

  private static boolean isLong(String sentence) {
    return sentence.strip().split("\\s+", -1).length > MOST_WORDS;
  }
}
