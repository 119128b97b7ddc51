package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.measures.force.Sketches.bridged;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.CaseText;
import org.bonewright.mechanics.answer.Stiffness;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is known of plated bones, held against constructs that differ in one thing, each pair under
 * the same sets of assumptions.
 */
class TrendsTest {

  /** Light enough that a gap of 2 mm stays open. */
  private static final Loading LIGHT = Sketches.load(100, 3, 1);

  private static final Solutions SOLUTIONS = new Solutions();

  private static Solutions.Answers<Solved> solved(CaseText text, Loading load) {
    Solutions.Answers<Solved> answers =
        SOLUTIONS.under(Sketches.of(text), List.of(load), BoneName.TIBIA, false).orElseThrow();
    assertThat(answers.samples()).hasSize(Draws.NUMBER);
    return answers;
  }

  private static Solved middle(CaseText text, Loading load) {
    return new Solver(Sketches.of(text), List.of(load), BoneName.TIBIA, false)
        .under(Draw.MIDDLE)
        .orElseThrow();
  }

  private static List<Double> each(
      Solutions.Answers<Solved> answers, ToDoubleFunction<Solved> number) {
    return answers.samples().stream().map(number::applyAsDouble).toList();
  }

  private static List<Double> ratios(
      CaseText text, CaseText other, ToDoubleFunction<Solved> number) {
    return ratios(each(solved(text, LIGHT), number), each(solved(other, LIGHT), number));
  }

  private static List<Double> ratios(List<Double> some, List<Double> others) {
    return IntStream.range(0, some.size()).mapToObj(i -> some.get(i) / others.get(i)).toList();
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().toList().get(values.size() / 2);
  }

  private static CaseText plate(CaseText text, String patch) {
    return text.at("/operations/0/fixation/0", patch);
  }

  @Nested
  class A_thicker_plate {

    private final CaseText thick = plate(bridged(), "{thicknessMm: 6}");

    @Test
    void bears_less_stress() {
      assertThat(ratios(thick, bridged(), Solved::stress)).allMatch(ratio -> ratio < 1);
    }

    @Test
    void strains_the_line_less() {
      // By bending alone: a thicker plate lies further out, where a press on the bone bends it
      // more.
      Loading bending = Sketches.load(0, 3, 0);
      assertThat(
              ratios(
                  each(solved(thick, bending), Solved::strain),
                  each(solved(bridged(), bending), Solved::strain)))
          .allMatch(ratio -> ratio < 1);
    }

    @Test
    void lasts_longer() {
      assertThat(ratios(thick, bridged(), Solved::use)).allMatch(ratio -> ratio < 1);
    }
  }

  @Test
  void a_smaller_gap_is_strained_more() {
    List<Double> strain = ratios(bridged(1, SIX), bridged(2, SIX), Solved::strain);
    assertThat(strain).allMatch(ratio -> ratio > 1);
    assertThat(median(strain)).isCloseTo(2, within(0.3));
  }

  private static final String SIX = "[1, 3, 5, 6, 8, 10]";

  @Nested
  class A_longer_free_length {

    private final CaseText near = bridged(3, SIX);
    private final CaseText far = bridged(3, "[1, 2, 3, 8, 9, 10]");

    @Test
    void hardly_changes_the_stress_over_an_open_gap() {
      assertThat(ratios(far, near, Solved::stress)).allMatch(ratio -> ratio > 0.95 && ratio < 1.05);
    }

    @Test
    void moves_the_line_more() {
      assertThat(ratios(far, near, Solved::most)).allMatch(ratio -> ratio > 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void makes_the_construct_less_stiff(int mode) {
      assertThat(ratios(stiffness(far, mode), stiffness(near, mode))).allMatch(ratio -> ratio < 1);
    }
  }

  @Nested
  class Statics {

    /** Two screws far from the line: the holes between bear what the line bears. */
    private final CaseText open = plate(bridged(3, "[1, 2, 9, 10]"), "{holes: 10}");

    @ParameterizedTest(name = "{0} N, {1} N·m")
    @CsvSource({"0, 3", "100, 0", "100, 3", "200, 2"})
    void give_the_stress_over_an_open_gap_by_hand(double press, double bend) {
      // The plate of 13.5 by 4.5 mm lies on a bone of 24 mm: its axis is 14.25 mm from that of the
      // bone. In the middle of all assumptions the load bends the line open opposite the plate; the
      // press on the axis of the bone works against that. Holes of 6 mm leave 7.5 mm.
      double moment = Math.abs(bend * 1000 - press * (12 + 2.25));
      double stress = moment * 6 / (7.5 * 4.5 * 4.5) + press / (7.5 * 4.5);
      Solved nominal = middle(open, Sketches.load(press, bend, 0));
      assertThat(nominal.contact()).isZero();
      assertThat(nominal.stress()).isCloseTo(stress, within(1e-6 * stress));
      assertThat(nominal.steady()).isCloseTo(0, within(1e-9));
    }

    @Test
    void twice_a_small_load_does_twice_as_much() {
      Solved once = middle(open, Sketches.load(20, 1, 0.5));
      Solved twice = middle(open, Sketches.load(40, 2, 1));
      assertThat(twice.stress()).isCloseTo(2 * once.stress(), within(1e-6 * once.stress()));
      assertThat(twice.near()).isCloseTo(2 * once.near(), within(1e-6));
      assertThat(twice.far()).isCloseTo(2 * once.far(), within(1e-6));
      assertThat(twice.shear()).isCloseTo(2 * once.shear(), within(1e-6));
    }

    @Test
    void no_load_does_nothing() {
      Solved none = middle(open, Sketches.load(0, 0, 0));
      assertThat(List.of(none.near(), none.far(), none.shear(), none.strain(), none.stress()))
          .allSatisfy(value -> assertThat(value).isCloseTo(0, within(1e-9)));
      assertThat(none.life()).isEqualTo(Solver.MUCH);
      assertThat(none.margin()).isEqualTo(Solver.MUCH);
    }
  }

  @Test
  void ends_that_are_pressed_together_spare_the_plate_several_fold() {
    CaseText closed =
        bridged()
            .at(
                "/operations/0",
                "{reduction: {gapNearMm: 0, gapFarMm: 0, contactPercent: 100}, compression:"
                    + " {method: 'tension-device', prebent: 'yes', screws: null}}");
    List<Double> stress = ratios(closed, bridged(), Solved::stress);
    assertThat(stress).allMatch(ratio -> ratio < 1);
    assertThat(median(stress)).isLessThan(1.0 / 3);
  }

  @Test
  void a_strut_across_the_line_spares_the_plate_and_moves_less() {
    CaseText plain = bridged();
    String plate = plain.tree().at("/operations/0/fixation/0").toString();
    CaseText strutted =
        plain.at(
            "/operations/0",
            "{fixation: ["
                + plate
                + ", {kind: 'strut', id: 'strut-1', where: 'intramedullary', fromMm: 100,"
                + " toMm: 260}]}");
    assertThat(ratios(strutted, plain, Solved::stress)).allMatch(ratio -> ratio < 1);
    assertThat(ratios(strutted, plain, Solved::most)).allMatch(ratio -> ratio < 1);
  }

  @Test
  void poor_bone_lowers_the_margin_of_the_screws() {
    CaseText poor = bridged().at("/bone", "{quality: [{method: 'cortical-thickness', value: 2}]}");
    assertThat(Sketches.of(poor).young().max()).isLessThan(Sketches.of(bridged()).young().min());
    Loading heavy = Sketches.load(600, 20, 5);
    List<Double> good = each(solved(bridged(), heavy), Solved::margin);
    List<Double> less = each(solved(poor, heavy), Solved::margin);
    for (int i = 0; i < good.size(); i++) {
      assertThat(less.get(i)).isLessThanOrEqualTo(good.get(i));
    }
    assertThat(median(less)).isLessThan(0.8 * median(good));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[1, 3, 8, 10] | [1, 3, 5, 6, 8, 10]",
        "[1, 3, 5, 6, 8, 10] | [1, 2, 3, 5, 6, 8, 9, 10]",
        "[1, 2, 9, 10] | [1, 2, 5, 6, 9, 10]"
      })
  void two_more_screws_never_make_it_less_stiff(String few, String more) {
    for (int mode = 0; mode < 4; mode++) {
      assertThat(ratios(stiffness(bridged(2, more), mode), stiffness(bridged(2, few), mode)))
          .allMatch(ratio -> ratio > 1 - 1e-9);
    }
  }

  private static List<Double> stiffness(CaseText text, int mode) {
    List<ToDoubleFunction<Stiffness>> modes =
        List.of(
            Stiffness::bendingWeakPlus,
            Stiffness::bendingWeakMinus,
            Stiffness::bendingStrong,
            Stiffness::torsion);
    List<Stiffness> samples =
        SOLUTIONS.stiffness(Sketches.of(text)).orElseThrow().sampled().samples();
    assertThat(samples).hasSize(Draws.NUMBER);
    return samples.stream().map(modes.get(mode)::applyAsDouble).toList();
  }

  @Test
  void a_smaller_load_stresses_less_and_is_borne_longer() {
    List<Solved> small = solved(bridged(), Sketches.load(60, 2, 0.5)).samples();
    List<Solved> large = solved(bridged(), Sketches.load(600, 20, 5)).samples();
    for (int i = 0; i < small.size(); i++) {
      assertThat(small.get(i).stress()).isLessThan(large.get(i).stress());
      assertThat(small.get(i).life()).isGreaterThanOrEqualTo(large.get(i).life());
      assertThat(small.get(i).margin()).isGreaterThanOrEqualTo(large.get(i).margin());
    }
    assertThat(large).anyMatch(one -> one.life() < Solver.MUCH);
  }
}
