package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.measures.force.Sketches.bridged;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.Load;
import org.junit.jupiter.api.Test;

class StrutShareTest {

  /** A load that bends by 10 N·m. */
  private static final Load LOAD = new Load(-100, 0, 0, 6000, 8000, 500);

  private static double share(StrutCut cut) {
    return StrutShare.of(HandAnswers.answer(LOAD, Optional.of(cut), List.of(), List.of()));
  }

  @Test
  void is_the_moment_in_the_strut_over_that_of_the_load() {
    assertThat(share(new StrutCut(-50, 1500, 2000, 90))).isCloseTo(25, within(1e-9));
    assertThat(share(new StrutCut(0, 6000, 8000, 0))).isCloseTo(100, within(1e-9));
  }

  @Test
  void counts_only_what_bends_the_way_of_the_load() {
    assertThat(share(new StrutCut(0, 8000, -6000, 0))).isCloseTo(0, within(1e-9));
    assertThat(share(new StrutCut(0, -600, -800, 0))).isZero();
  }

  @Test
  void is_nothing_without_a_strut_or_without_bending() {
    assertThat(StrutShare.of(HandAnswers.answer(LOAD, Optional.empty(), List.of(), List.of())))
        .isZero();
    assertThat(
            StrutShare.of(
                HandAnswers.answer(
                    Load.axial(-100),
                    Optional.of(new StrutCut(-50, 10, 10, 0)),
                    List.of(),
                    List.of())))
        .isZero();
  }

  @Test
  void is_read_where_a_strut_crosses_the_line_and_more_for_a_thicker_one() {
    Reading.Sampled thin = (Reading.Sampled) read(strut(7));
    Reading.Sampled thick = (Reading.Sampled) read(strut(10));
    for (int i = 0; i < thin.samples().size(); i++) {
      assertThat(thin.samples().get(i)).isBetween(0.0, 100.0);
    }
    assertThat(thin.nominal()).isPositive().isLessThan(thick.nominal());
    assertThat(read(bridged())).isEqualTo(new Reading.None("no strut crosses the line"));
  }

  private static Reading read(CaseText text) {
    return Sketches.scene(text).read("strut-share");
  }

  private static CaseText strut(double outer) {
    CaseText plain = bridged();
    String plate = plain.tree().at("/operations/0/fixation/0").toString();
    return plain.at(
        "/operations/0",
        "{fixation: ["
            + plate
            + ", {kind: 'strut', id: 'strut-1', where: 'intramedullary', fromMm: 100, toMm: 260,"
            + " outerMm: "
            + outer
            + ", wallMm: 2}]}");
  }
}
