package org.bonewright.measures.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The old holes lie at 108, 140, 172, 188, 220 and 252 mm, 4.5 mm wide in a bone of 24 mm. */
class CoverTest {

  private static CaseText instead(String fixation) {
    return Revised.turned().at("/plans/0/stages/0", "{fixation: [" + fixation + "]}");
  }

  private static CaseText laid(String firstHole) {
    return Revised.shortened().at(Revised.PLATE, "{place: {firstHoleMm: " + firstHole + "}}");
  }

  @ParameterizedTest(name = "hole 1 at {0} mm: {1} beyond")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # from 108 to 204: the first hole lies just under the end
          116                  | 2 fact
          117                  | 3 fact
          # from 156 to 252: so does the last
          164                  | 2 fact
          163                  | 3 fact
          # it may lie just under the end
          {min: 116, max: 120} | 2–3 fact, ask plan-a/stage-1/fixation
          {min: 160, max: 164} | 2–3 fact, ask plan-a/stage-1/fixation
          {min: 117, max: 120} | 3 fact
          """)
  void a_plate_spans_the_holes_up_to_its_very_ends(String firstHole, String beyond) {
    assertThat(Taken.of("open-holes-beyond", laid(firstHole))).isEqualTo(beyond);
  }

  @Test
  void a_nail_spans_from_bolt_to_bolt() {
    String nail =
        "{id: 'nail-1', kind: 'nail', outerMm: 10, reamedMm: 11, locking: 'static', bolts: [{end:"
            + " 'near', atMm: %d, diameterMm: 5, plane: 'medial'}, {end: 'far', atMm: %d,"
            + " diameterMm: 5, plane: 'medial'}]}";
    assertThat(Taken.of("open-holes-beyond", instead(nail.formatted(60, 300)))).isEqualTo("0 fact");
    CaseText inside = instead(nail.formatted(120, 240));
    assertThat(Taken.of("open-holes-beyond", inside)).isEqualTo("2 fact");
    // (120 - 108 - 2.25) / 24 and (252 - 240 - 2.25) / 24
    assertThat(Taken.of("open-hole-to-end", inside)).startsWith("0.406 ");
  }

  @Test
  void a_plate_without_a_stated_length_ends_about_where_its_kind_usually_ends() {
    // 8 mm beyond the last hole, give or take a fifth: from 140 - 9.6 to 140 - 6.4;
    // less 108 + 2.25, by 24
    CaseText text = Revised.shortened().at(Revised.PLATE, "{lengthMm: null}");
    assertThat(Taken.of("open-hole-to-end", text))
        .isEqualTo("0.84–0.973 assumed, ask plan-a/stage-1/fixation");
    // of a plate of unknown kind half a spacing, 8 mm too
    CaseText unknown =
        Revised.shortened().at(Revised.PLATE, "{lengthMm: null, family: null, spacingMm: 16}");
    assertThat(Taken.of("open-hole-to-end", unknown))
        .isEqualTo("0.84–0.973 assumed, ask plan-a/stage-1/fixation");
  }

  @Test
  void what_cannot_be_laid_is_asked_for() {
    assertThat(Taken.of("open-holes-beyond", laid("null").at(Revised.PLATE, "{place: null}")))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/place");
    assertThat(
            Taken.of("open-holes-beyond", Revised.shortened().at(Revised.PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/plate-1/screws");
    assertThat(Taken.of("open-holes-beyond", instead("{id: 'nail-1', kind: 'nail'}")))
        .isEqualTo("unknown, ask plan-a/stage-1/fixation/nail-1/bolts");
    assertThat(Taken.of("open-holes-beyond", Revised.turned().at(Revised.PLATE, "{holes: null}")))
        .startsWith("unknown, ask plan-a/stage-1/fixation");
  }
}
