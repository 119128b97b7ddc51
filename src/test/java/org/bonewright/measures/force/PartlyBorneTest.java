package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.CaseText;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.fatigue.Goodman;
import org.bonewright.mechanics.model.MechanicalModel;
import org.junit.jupiter.api.Test;

/**
 * Constructs that bear a part of a load only, and how they let go, under one set of assumptions.
 */
class PartlyBorneTest {

  private static final String ALL = "[1, 3, 5, 6, 8, 10]";
  private static final Sketch LOCKED = Sketches.of(Sketches.bridged(8, ALL));
  private static final Sketch PRESSED =
      Sketches.of(
          Sketches.bridged(8, ALL)
              .at(
                  "/operations/0/fixation/0",
                  "{family: 'large-fragment-narrow', screws: [{at: [1, 3, 5, 6, 8, 10], type:"
                      + " 'cortical', diameterMm: 4.5, cortices: 2, track: 'fresh'}]}"));

  /** One screw on each side of a zone of 40 mm: the fragments pivot about them. */
  private static final Sketch PIVOTS =
      Sketches.of(
          CaseText.plated()
              .at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}}")
              .at(
                  "/operations/0",
                  "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm: 2,"
                      + " gapFarMm: 2, contactPercent: 0}, fixation: [{id: 'plate-1', kind:"
                      + " 'plate', family: 'large-fragment-narrow', surface: 'medial', holes: 10,"
                      + " lengthMm: 160, place: {zoneBetweenHoles: [4, 7]}, screws: [{at: [3, 8],"
                      + " type: 'locking', cortices: 2}]}]}"));

  private static final Goodman METAL = new Goodman(200, 800);

  @Test
  void what_is_borne_as_a_whole_has_a_share_of_one() {
    MechanicalModel model = new MechanicalModel(new Builder(LOCKED, Draw.MIDDLE).build());
    Load light = Sketches.load(100, 1, 0).under(Draw.MIDDLE, Optional.empty());
    assertThat(Borne.of(model, light).orElseThrow().share()).isEqualTo(1);
    assertThat(Borne.of(model, light).orElseThrow().whole()).isTrue();
  }

  private static LetGo letGo(Sketch sketch, Draw draw, Loading... loads) {
    return new LettingGo(sketch, List.of(loads)).under(draw).orElseThrow();
  }

  @Test
  void locked_screws_let_go_together_at_a_share_that_falls_as_the_load_grows() {
    LetGo once = letGo(LOCKED, Draw.MIDDLE, Sketches.load(2500, 150, 7.5));
    LetGo more = letGo(LOCKED, Draw.MIDDLE, Sketches.load(3000, 180, 9));
    assertThat(once.mode()).isEqualTo(LetGo.Mode.TOGETHER);
    assertThat(once.share()).isBetween(0.1, 60.0);
    assertThat(more.share() * 1.2).isCloseTo(once.share(), withinPercentage(1));
    // and under hardly any load not at all
    LetGo never = letGo(LOCKED, Draw.MIDDLE, Sketches.load(1, 0.01, 0));
    assertThat(never).isEqualTo(new LetGo(64, LetGo.Mode.HOLDS));
  }

  @Test
  void of_several_loads_the_one_counts_under_which_it_lets_go_first() {
    Loading light = Sketches.load(2500, 150, 7.5);
    Loading heavy = Sketches.load(3000, 180, 9);
    assertThat(letGo(LOCKED, Draw.MIDDLE, light, heavy))
        .isEqualTo(letGo(LOCKED, Draw.MIDDLE, heavy));
    assertThat(letGo(LOCKED, Draw.MIDDLE, heavy, light))
        .isEqualTo(letGo(LOCKED, Draw.MIDDLE, heavy));
  }

  @Test
  void fragments_that_come_off_each_other_slip_at_once() {
    Draw folding = new Draw(Map.of(Assumption.SIDE, 0.0));
    assertThat(letGo(PIVOTS, folding, Sketches.load(2600, 40, 4)))
        .isEqualTo(new LetGo(0, LetGo.Mode.SLIPS));
  }

  @Test
  void a_pressed_plate_slips_where_it_bears_a_part_only_and_holds_beyond_a_small_load() {
    LetGo slips = letGo(PRESSED, Draw.MIDDLE, Sketches.load(4000, 120, 6));
    assertThat(slips.mode()).isEqualTo(LetGo.Mode.SLIPS);
    assertThat(slips.share()).isBetween(0.0, 0.99);
    LetGo holds = letGo(PRESSED, Draw.MIDDLE, Sketches.load(40, 2, 0.1));
    assertThat(holds.share()).isGreaterThanOrEqualTo(1);
    assertThat(holds.mode()).isNotEqualTo(LetGo.Mode.TOGETHER);
  }

  /** 21 sets, the one with the largest margin first: ranks 1, 10 and 19 from below are taken. */
  @Test
  void the_sets_in_which_the_margin_stands_at_5_50_and_95_in_a_hundred_are_raised() {
    List<Draw> draws = Draws.all().subList(0, 21);
    List<Solved> samples = new ArrayList<>();
    for (int i = 0; i < draws.size(); i++) {
      samples.add(new Solved(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 100 - i, 0, 0));
    }
    Forces.Known known =
        new Forces.Known(LOCKED, new Solutions.Answers<>(draws, samples), List.of());
    Loading load = Sketches.load(2500, 150, 7.5);
    assertThat(new HoldOuts().of(known, List.of(load)))
        .contains(
            List.of(
                letGo(LOCKED, draws.get(19), load),
                letGo(LOCKED, draws.get(10), load),
                letGo(LOCKED, draws.get(1), load)));
  }

  @Test
  void metal_carries_in_proportion_what_is_borne_in_part() {
    for (CaseText text : List.of(Sketches.bridged(8, ALL), nailed())) {
      MetalWear all = worn(text, 1);
      MetalWear half = worn(text, 0.5);
      assertThat(half.plate().range()).isCloseTo(2 * all.plate().range(), within(1e-9));
      assertThat(half.nail().range()).isCloseTo(2 * all.nail().range(), within(1e-9));
      assertThat(half.bolt().range()).isCloseTo(2 * all.bolt().range(), within(1e-9));
      assertThat(half.use()).isGreaterThan(1.9 * all.use());
      assertThat(all.use()).isPositive();
    }
    assertThat(worn(nailed(), 1).bolt().use())
        // half of the range to and fro, and half of it steady
        .isCloseTo(worn(nailed(), 1).bolt().range() / 2 * (1 / 200.0 + 1 / 800.0), within(1e-9));
  }

  @Test
  void metal_has_no_life_under_a_load_that_is_hardly_borne_at_all() {
    CaseText text = Sketches.bridged(8, ALL);
    assertThat(worn(text, 0.0099).cycles()).isZero();
    assertThat(worn(text, 0.0099).use()).isEqualTo(100);
    assertThat(worn(text, 0.01).plate().range()).isPositive();
    assertThat(worn(text, 0.0099).plate().range()).isZero();
  }

  private static CaseText nailed() {
    return CaseText.nailed()
        .at("/operations/0", "{reduction: {gapNearMm: 8, gapFarMm: 8, contactPercent: 0}}")
        .at("/operations/0/fixation/0", "{entry: 'antegrade', lengthMm: 330}");
  }

  private static MetalWear worn(CaseText text, double share) {
    FixedBone fixed = new Builder(Sketches.of(text), Draw.MIDDLE).build();
    MechanicalModel model = new MechanicalModel(fixed);
    LoadAnswer before = Borne.answer(model, Load.axial(0)).orElseThrow();
    Load load = Sketches.load(300, 5, 1).under(Draw.MIDDLE, Optional.empty());
    List<Goodman> plates = fixed.plates().stream().map(plate -> METAL).toList();
    List<Goodman> nails = fixed.nail().stream().map(nail -> METAL).toList();
    MetalWear wear = new MetalWear(fixed, before, plates, nails);
    wear.add(Borne.answer(model, load).orElseThrow(), share);
    return wear;
  }

  @Test
  void a_gap_may_open_by_more_than_its_width_and_close_by_all_of_it_at_most() {
    Sketch narrow = Sketches.of(Sketches.bridged(0.5, ALL));
    Solved opened =
        new Solver(narrow, List.of(Sketches.load(10, 60, 0)), BoneName.TIBIA, false)
            .under(Draw.MIDDLE)
            .orElseThrow();
    assertThat(opened.far()).isGreaterThan(0.5);
    assertThat(opened.strain()).isGreaterThan(100);
    Solved closed =
        new Solver(narrow, List.of(Sketches.load(3000, 0, 0)), BoneName.TIBIA, false)
            .under(Draw.MIDDLE)
            .orElseThrow();
    assertThat(closed.far()).isNegative();
    assertThat(closed.strain()).isLessThanOrEqualTo(100);
  }

  @Test
  void the_share_of_a_strut_is_that_under_the_load_that_bends_most_and_of_the_part_that_is_borne() {
    StrutCut cut = new StrutCut(0, 0, 2000, 0);
    LoadAnswer heavy = answer(10_000, cut);
    LoadAnswer light = answer(2_500, cut);
    // 2 of 10, and 2 of 2.5 N·m
    assertThat(StrutShare.of(List.of(new Borne(light, 1), new Borne(heavy, 1))))
        .isCloseTo(20, within(1e-9));
    assertThat(StrutShare.of(List.of(new Borne(light, 1)))).isCloseTo(80, within(1e-9));
    assertThat(StrutShare.of(List.of())).isZero();
    // half of the load reached: 2 of 5
    assertThat(StrutShare.of(reached(heavy, 0.5))).isCloseTo(40, within(1e-9));
  }

  private static LoadAnswer answer(double bending, StrutCut cut) {
    return HandAnswers.answer(
        new Load(0, 0, 0, 0, bending, 0), Optional.of(cut), List.of(), List.of());
  }

  private static LoadAnswer reached(LoadAnswer all, double share) {
    return new LoadAnswer(
        all.load(),
        all.end(),
        all.gap(),
        all.contact(),
        all.plates(),
        all.screws(),
        all.nail(),
        all.fixator(),
        all.lags(),
        all.strut(),
        all.onlay(),
        all.events(),
        all.slipCautious(),
        share);
  }
}
