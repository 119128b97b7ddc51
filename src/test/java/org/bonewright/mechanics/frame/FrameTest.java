package org.bonewright.mechanics.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.Give;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;
import org.junit.jupiter.api.Test;

class FrameTest {

  private static final Material STEEL = Material.isotropic(200_000, 0.3);
  private static final Rectangle BAR = new Rectangle(12, 4);
  private static final double LENGTH = 100;
  private static final Vector ROOT = new Vector(0, 0, 0);
  private static final Vector TIP = new Vector(0, 0, LENGTH);
  private static final Vector AWAY = new Vector(1, 0, 0);

  @Test
  void a_cantilever_bends_as_timoshenko_says() {
    Movements moved = tip(new Vector(10, 0, 0), new Vector(0, 0, 0), List.of(whole()), List.of());
    double bent = 10 * Math.pow(LENGTH, 3) / 3 / (200_000 * BAR.weak());
    double sheared = 10 * LENGTH / BAR.of(STEEL).shearWeak();
    assertThat(moved.shift(1).x()).isCloseTo(bent + sheared, within(1e-9));
    assertThat(moved.turn(1).y())
        .isCloseTo(10 * LENGTH * LENGTH / 2 / (200_000 * BAR.weak()), within(1e-12));
  }

  @Test
  void across_it_the_strong_axis_counts() {
    Movements moved = tip(new Vector(0, 10, 0), new Vector(0, 0, 0), List.of(whole()), List.of());
    double bent = 10 * Math.pow(LENGTH, 3) / 3 / (200_000 * BAR.strong());
    double sheared = 10 * LENGTH / BAR.of(STEEL).shearStrong();
    assertThat(moved.shift(1).y()).isCloseTo(bent + sheared, within(1e-9));
    assertThat(moved.turn(1).x())
        .isCloseTo(-10 * LENGTH * LENGTH / 2 / (200_000 * BAR.strong()), within(1e-12));
  }

  @Test
  void it_twists_and_stretches() {
    Movements moved =
        tip(new Vector(0, 0, 1000), new Vector(0, 0, 500), List.of(whole()), List.of());
    assertThat(moved.shift(1).z()).isCloseTo(1000 * LENGTH / (200_000 * 48), within(1e-12));
    assertThat(moved.turn(1).z())
        .isCloseTo(500 * LENGTH / (STEEL.shear() * BAR.torsion()), within(1e-12));
  }

  @Test
  void a_stepped_beam_gives_as_its_pieces_one_after_another() {
    BeamStiffness thin = HollowCircle.solid(6).of(STEEL);
    BeamStiffness thick = HollowCircle.solid(9).of(STEEL);
    List<Beams.Piece> pieces = List.of(new Beams.Piece(70, thick), new Beams.Piece(30, thin));
    Movements one = tip(new Vector(3, -2, 5), new Vector(40, 50, 60), pieces, List.of());
    Frame frame = new Frame();
    Vector step = new Vector(0, 0, 70);
    frame.node(ROOT);
    frame.node(step);
    frame.node(TIP);
    frame.link(Beams.link(0, 1, ROOT, step, AWAY, List.of(pieces.get(0)), List.of()));
    frame.link(Beams.link(1, 2, step, TIP, AWAY, List.of(pieces.get(1)), List.of()));
    SolvedFrame solved = frame.hold(0).orElseThrow();
    Movements two =
        solved.under(solved.loads().add(2, new Vector(3, -2, 5), new Vector(40, 50, 60)));
    assertThat(one.shift(1).minus(two.shift(2)).length()).isLessThan(1e-9);
    assertThat(one.turn(1).minus(two.turn(2)).length()).isLessThan(1e-12);
  }

  @Test
  void a_soft_place_adds_a_kink_there_and_nowhere_else() {
    Beams.Soft soft = new Beams.Soft(25, new Give(0, 0, 1e-6, 0));
    Movements stiff = tip(new Vector(10, 0, 0), new Vector(0, 0, 0), List.of(whole()), List.of());
    Movements softer =
        tip(new Vector(10, 0, 0), new Vector(0, 0, 0), List.of(whole()), List.of(soft));
    double kink = 10 * 25 * 1e-6;
    assertThat(softer.turn(1).y() - stiff.turn(1).y()).isCloseTo(kink, within(1e-12));
    assertThat(softer.shift(1).x() - stiff.shift(1).x()).isCloseTo(kink * 25, within(1e-9));
  }

  @Test
  void the_order_in_which_nodes_come_makes_no_difference() {
    Frame frame = new Frame();
    frame.node(TIP);
    frame.node(new Vector(0, 0, 40));
    frame.node(ROOT);
    BeamStiffness bar = BAR.of(STEEL);
    frame.link(
        Beams.link(
            1, 0, new Vector(0, 0, 40), TIP, AWAY, List.of(new Beams.Piece(60, bar)), List.of()));
    frame.link(
        Beams.link(
            2, 1, ROOT, new Vector(0, 0, 40), AWAY, List.of(new Beams.Piece(40, bar)), List.of()));
    SolvedFrame solved = frame.hold(2).orElseThrow();
    Movements there = solved.under(solved.loads().add(0, new Vector(10, 0, 0), ROOT));
    Movements here = tip(new Vector(10, 0, 0), ROOT, List.of(whole()), List.of());
    assertThat(there.shift(0).x()).isCloseTo(here.shift(1).x(), within(1e-9));
  }

  @Test
  void forces_of_a_link_balance_what_is_loaded_beyond_it() {
    Movements moved =
        tip(new Vector(3, -2, 5), new Vector(40, 50, 60), List.of(whole()), List.of());
    assertThat(moved.force(0).values())
        .containsExactly(new double[] {5, 3, -2, 60, 40, 50}, within(1e-6));
  }

  @Test
  void what_is_tied_to_nothing_is_not_solved() {
    Frame frame = new Frame();
    frame.node(ROOT);
    frame.node(TIP);
    frame.node(new Vector(0, 0, 200));
    frame.link(Beams.link(0, 1, ROOT, TIP, AWAY, List.of(whole()), List.of()));
    assertThat(frame.hold(0)).isEmpty();
  }

  @Test
  void a_hinge_is_found_to_be_loose() {
    Frame frame = new Frame();
    frame.node(ROOT);
    frame.node(TIP);
    frame.link(Link.springs(0, 1, TIP, Axes.SPACE, new Six(1, 1, 1, 1, 0, 1)));
    assertThat(frame.hold(0)).isEmpty();
  }

  private static Beams.Piece whole() {
    return new Beams.Piece(LENGTH, BAR.of(STEEL));
  }

  private static Movements tip(
      Vector force, Vector moment, List<Beams.Piece> pieces, List<Beams.Soft> soft) {
    Frame frame = new Frame();
    frame.node(ROOT);
    frame.node(TIP);
    frame.link(Beams.link(0, 1, ROOT, TIP, AWAY, pieces, soft));
    SolvedFrame solved = frame.hold(0).orElseThrow();
    return solved.under(solved.loads().add(1, force, moment));
  }
}
