package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cerclage, protected load, and what all operations took together. */
class HeldOtherwiseTest {

  private static final String WIRE = "{id: 'wire-1', kind: 'cerclage', atMm: [200]%s}";

  private static CaseText wired(String holds) {
    return CaseText.plated().at("/operations/0", "{fixation: [" + WIRE.formatted(holds) + "]}");
  }

  @Test
  void cerclage_holds_what_the_file_says() {
    assertThat(Taken.of("cerclage-holds", wired(", holds: 'fragment'"))).isEqualTo("fragment fact");
    assertThat(Taken.of("cerclage-holds", wired(", holds: 'wedge'"))).isEqualTo("other fact");
    assertThat(Taken.of("cerclage-holds", wired(", holds: 'strut'"))).isEqualTo("other fact");
    assertThat(Taken.of("cerclage-holds", wired("")))
        .isEqualTo("fragment or other fact, ask op-1/fixation/wire-1/holds");
    assertThat(Taken.of("cerclage-holds", CaseText.plated())).isEqualTo("none fact");
    assertThat(Taken.of("cerclage-holds", CaseText.bare()))
        .isEqualTo("fragment or none or other fact, ask op-1/fixation");
  }

  @Test
  void cerclage_of_an_earlier_operation_that_is_not_told_may_still_hold() {
    CaseText text = Revised.turned().at("/operations/0", "{fixation: null}");
    assertThat(Taken.of("cerclage-holds", text))
        .isEqualTo("fragment or none or other fact, ask plan-a/stage-1/fixation");
    assertThat(working(CaseText.plated())).isEqualTo("no cerclage recorded");
    assertThat(working(wired(", holds: 'wedge'"))).isEqualTo("1 recorded");
  }

  private static String working(CaseText text) {
    return Taken.reading("cerclage-holds", Taken.subject(text.file(), "op-1")).working();
  }

  @Test
  void a_side_is_bare_without_screw_bolt_or_pin() {
    assertThat(Taken.of("side-without-screw", CaseText.plated())).isEqualTo("no fact");
    assertThat(
            Taken.of(
                "side-without-screw",
                CaseText.plated()
                    .at("/operations/0/fixation/0", "{screws: [{at: [1, 3], type: 'cortical'}]}")))
        .isEqualTo("yes fact");
    assertThat(Taken.of("side-without-screw", CaseText.nailed())).isEqualTo("no fact");
    assertThat(Taken.of("side-without-screw", wired(""))).isEqualTo("yes fact");
    assertThat(Taken.of("side-without-screw", CaseText.bare()))
        .isEqualTo("unknown, ask op-1/fixation");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [{untilDay: 42, limitKg: 15}, {untilDay: 84, limitKg: 30}]  | 84 fact
          # a tibia: up to 50 kg
          [{untilDay: 42, limitKg: 50}, {untilDay: 84, limitKg: 51}]  | 42 fact
          [{untilDay: 42, limitKg: 15}, {untilDay: 84, limitKg: {min: 40, max: 60}}] | 42–84 fact, ask op-1/aftercare/load
          []                                                          | 0 fact
          null                                                        | unknown, ask op-1/aftercare/load
          """)
  void load_is_protected_as_long_as_a_low_limit_holds(String load, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/aftercare", "{load: " + load + "}");
    assertThat(Taken.of("load-protected-days", text)).isEqualTo(reads);
  }

  @Test
  void an_arm_is_protected_up_to_ten_kilograms_only() {
    CaseText text = CaseText.plated().with("{bone: {name: 'humerus'}}");
    assertThat(Taken.of("load-protected-days", text)).isEqualTo("0 fact");
  }

  @Test
  void a_plan_without_a_word_protects_nothing() {
    CaseText text = Revised.same().at("/plans/0/stages/0", "{aftercare: null}");
    assertThat(Taken.of("load-protected-days", text)).isEqualTo("0 fact");
  }

  @Nested
  class Totals {

    @Test
    void every_hole_counts_less_those_cut_out() {
      assertThat(Taken.of("holes-drilled-total", Revised.turned())).isEqualTo("12 fact");
      // old holes at 172 and 188 go
      CaseText cut =
          Revised.takenOut().at("/plans/0/stages/0", "{resection: [{fromMm: 165, toMm: 195}]}");
      assertThat(Taken.of("holes-drilled-total", cut)).isEqualTo("4 fact");
      assertThat(Taken.of("holes-drilled-total", Revised.unmapped()))
          .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    }

    @Test
    void shortening_is_what_was_cut_less_the_gap_left() {
      CaseText text =
          Revised.same()
              .at("/operations/0", "{resection: [{fromMm: 175, toMm: 181}]}")
              .at("/plans/0/stages/0", "{resection: [{fromMm: 170, toMm: 182}]}");
      // 6 - 1 and 12 - 1
      assertThat(Taken.of("shortened-total", text)).isEqualTo("16 fact");
      assertThat(Taken.of("shortened-total", text.at("/operations/0", "{resection: null}")))
          .isEqualTo("unknown, ask op-1/resection");
    }
  }
}
