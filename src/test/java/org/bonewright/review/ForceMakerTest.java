package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.principles.JudgedCase;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How computed forces are told, whatever was computed. */
class ForceMakerTest {

  private static final MeasureCatalogue MEASURES = EveryMeasure.catalogue();
  private static final Reading TOUCHES = sampled(0.5);

  private static Reading sampled(Double... samples) {
    List<Double> all = List.of(samples);
    return new Reading.Sampled(all.get(all.size() / 2), all, "", "the load", List.of());
  }

  private static Reading share(int below, double low, double high) {
    List<Double> samples = new ArrayList<>(Collections.nCopies(below, low));
    samples.addAll(Collections.nCopies(100 - below, high));
    return new Reading.Sampled(high, samples, "", "the load", List.of());
  }

  /** A measure that reads what it is told to. */
  private record Told(Definition definition, Reading reading) implements Measure {

    @Override
    public Reading take(Scene scene) {
      return reading;
    }
  }

  /** Return the table of a case whose forces are these, and of which nothing else was modelled. */
  private static ForceTable table(CaseText text, Map<String, Reading> told) {
    CaseFile file = text.file();
    Reading none = new Reading.None("not here");
    MeasureCatalogue catalogue =
        MeasureCatalogue.of(
            MEASURES.definitions().stream()
                .map(d -> (Measure) new Told(d, told.getOrDefault(d.id(), none)))
                .toList());
    List<Subject> subjects = Subject.of(file);
    Map<String, Scene> scenes = new HashMap<>();
    for (Subject subject : subjects) {
      scenes.put(subject.id(), new Scene(subject, catalogue));
    }
    return new ForceMaker(new JudgedCase(file, subjects, scenes, Map.of()), JudgedByHand.RULES)
        .table();
  }

  private static String inShort(Map<String, Reading> told) {
    Map<String, Reading> all = new HashMap<>(told);
    all.putIfAbsent("contact-under-load", TOUCHES);
    return table(CaseText.plated(), all).inShort().get(0);
  }

  @Nested
  class Whether_the_metal_breaks_before_union {

    @ParameterizedTest
    @CsvSource({
      "0, metal not expected to break before union",
      "10, metal not expected to break before union",
      "11, metal may break before union",
      "89, metal may break before union",
      "90, metal likely breaks before union",
      "100, metal likely breaks before union"
    })
    void is_likely_where_nine_samples_in_ten_say_so(int of100, String said) {
      assertThat(inShort(Map.of("metal-life-over-union", share(of100, 0.5, 2)))).isEqualTo(said);
    }

    @Test
    void is_not_said_of_a_life_that_just_reaches_union() {
      assertThat(inShort(Map.of("metal-life-over-union", share(100, 1, 2))))
          .isEqualTo("metal not expected to break before union");
    }
  }

  @Nested
  class A_gain_in_stiffness {

    @ParameterizedTest
    @CsvSource({
      "0.9, softer than before",
      "0.95, no stiffer than before",
      "1, no stiffer than before",
      "1.05, no stiffer than before",
      "1.06, 1.1 times as stiff",
      "2.44, 2.4 times as stiff"
    })
    void is_told_from_a_twentieth_on(double gain, String said) {
      assertThat(inShort(Map.of("stiffness-gain", sampled(gain)))).isEqualTo(said);
    }

    @Test
    void is_called_softer_only_where_it_likely_is() {
      assertThat(inShort(Map.of("stiffness-gain", share(50, 0.5, 0.96))))
          .isEqualTo("no stiffer than before");
    }
  }

  @Nested
  class In_short {

    @Test
    void strain_life_and_gain_are_told_in_this_order() {
      assertThat(
              inShort(
                  Map.of(
                      "stiffness-gain", sampled(2.0),
                      "metal-life-over-union", sampled(2.0),
                      "gap-strain", sampled(7.0))))
          .startsWith("strain 7")
          .endsWith("; metal not expected to break before union; 2 times as stiff");
    }

    @Test
    void contact_is_told_first_where_ends_touch_and_there_is_something_else_to_say() {
      Reading touching = Reading.word("touching", "");
      assertThat(inShort(Map.of("stiffness-gain", sampled(2.0), "modelled-line", touching)))
          .startsWith("ring in contact 0.5 %")
          .endsWith("; 2 times as stiff");
      assertThat(inShort(Map.of("modelled-line", touching))).isEmpty();
      assertThat(
              inShort(
                  Map.of("stiffness-gain", sampled(2.0), "modelled-line", Reading.word("gap", ""))))
          .isEqualTo("2 times as stiff");
    }
  }

  @Nested
  class The_table {

    @Test
    void has_a_column_for_each_operation_and_plan_and_none_for_a_stage() {
      assertThat(
              table(CaseText.plated().redone("plate-bent"), Map.of("contact-under-load", TOUCHES))
                  .columns())
          .containsExactly("op-1", "plan-a");
    }

    @Test
    void has_a_row_for_what_was_computed_and_none_for_what_was_not() {
      ForceTable table =
          table(
              CaseText.plated(),
              Map.of(
                  "contact-under-load",
                  TOUCHES,
                  "gap-strain",
                  Reading.unknown(JudgedByHand.fact("a"))));
      assertThat(table.rows())
          .extracting(ForceTable.Row::measure)
          .containsExactly("contact-under-load");
    }

    @Test
    void says_why_an_operation_was_not_modelled() {
      ForceTable table = table(CaseText.plated(), Map.of());
      assertThat(table.columns()).isEmpty();
      assertThat(table.notModelled()).containsExactly("op-1: not here");
    }

    @Test
    void asks_for_what_was_not_told() {
      assertThat(
              table(
                      CaseText.plated(),
                      Map.of("contact-under-load", Reading.unknown(JudgedByHand.fact("a"))))
                  .notModelled())
          .containsExactly("op-1: not told: What about a?");
    }

    @Test
    void warns_of_the_clamps_of_a_fixator_only_where_there_are_pins() {
      int usual = table(CaseText.plated(), Map.of("contact-under-load", TOUCHES)).limits().size();
      assertThat(
              table(
                      CaseText.plated(),
                      Map.of("contact-under-load", TOUCHES, "pin-stress-range", sampled(90.0)))
                  .limits())
          .hasSize(usual + 1)
          .last()
          .asString()
          .startsWith("Clamps of a fixator");
    }
  }
}
