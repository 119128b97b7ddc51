package org.bonewright.casefile.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import org.bonewright.casefile.CaseFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The reader and the published schema accept and refuse the same files. */
class AgreementTest {

  private static final Agreement CABINETS = new Agreement(Cabinet.class);
  private static final Agreement CASES = new Agreement(CaseFile.class);
  private static final List<JsonNode> CABINET_VALUES =
      Mutation.values(RecordSchema.of(Cabinet.class));
  private static final List<JsonNode> CASE_VALUES =
      Mutation.values(RecordSchema.of(CaseFile.class));
  private static final String CASE_TEXT = SoundFile.text(CaseFile.class);

  @Provide
  Arbitrary<List<Mutation>> few() {
    return Mutation.few();
  }

  @Example
  void on_every_value_in_every_place_of_a_small_file() {
    int places = Mutation.places(SoundFile.of(Cabinet.class));
    for (int place = 0; place < places; place++) {
      for (int value = 0; value < CABINET_VALUES.size(); value++) {
        ObjectNode file = SoundFile.of(Cabinet.class);
        new Mutation(place, Mutation.Change.REPLACE, value).applyTo(file, CABINET_VALUES);
        CABINETS.holdsFor(file);
      }
    }
  }

  @Property(tries = 1000)
  void on_any_change_to_a_small_file(@ForAll("few") List<Mutation> mutations) {
    ObjectNode file = SoundFile.of(Cabinet.class);
    mutations.forEach(mutation -> mutation.applyTo(file, CABINET_VALUES));
    CABINETS.holdsFor(file);
  }

  @Property(tries = 200)
  void on_any_change_to_a_case(@ForAll("few") List<Mutation> mutations) {
    ObjectNode file = SoundFile.of(CaseFile.class);
    mutations.forEach(mutation -> mutation.applyTo(file, CASE_VALUES));
    CASES.holdsFor(file);
  }

  @Property(tries = 100)
  void a_line_given_twice_is_refused(@ForAll @IntRange(max = 100_000) int number) {
    List<String> lines =
        CASE_TEXT.lines().filter(line -> line.matches("\\s+\"\\w+\" : [^{\\[]*,")).toList();
    String line = lines.get(number % lines.size());
    String twice = CASE_TEXT.replaceFirst(Pattern.quote(line), "$0$0");
    assertThat(CASES.read(twice).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.found()).endsWith("once more"));
  }

  @Property(tries = 1000)
  void damaged_text_is_answered_and_never_thrown_at(
      @ForAll @IntRange(max = 1_000_000) int from,
      @ForAll @IntRange(max = 40) int length,
      @ForAll @CharRange(from = '\u0000', to = '\uffff') char inserted) {
    int begin = from % CASE_TEXT.length();
    int end = Math.min(CASE_TEXT.length(), begin + length);
    CASES.read(CASE_TEXT.substring(0, begin) + inserted + CASE_TEXT.substring(end));
  }

  @Property(tries = 300)
  void text_that_breaks_off_is_one_error(@ForAll @IntRange(max = 1_000_000) int at) {
    String cut = CASE_TEXT.substring(0, 1 + at % (CASE_TEXT.stripTrailing().length() - 2));
    assertThat(CASES.read(cut).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.found()).startsWith("the end of the file"));
  }
}
