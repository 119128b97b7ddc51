package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The share of a thread left by old tracks whose places are known, in a bone 24 mm thick. */
class ShareByVolumeTest {

  private static final double OUTER = 24;
  private static final double WALL = 5;

  private static double left(Drill screw, boolean near, List<Drill> older) {
    ShareLeft share = new ShareLeft(screw.track(), Drill.exactly(OUTER), Drill.exactly(WALL));
    var left = share.in(near, older.stream().map(Drill::old).toList());
    assertThat(left.min()).isEqualTo(left.max());
    return left.min();
  }

  private static void agrees(Drill screw, List<Drill> older) {
    agrees(screw, true, older);
    agrees(screw, false, older);
  }

  private static void agrees(Drill screw, boolean near, List<Drill> older) {
    double thrown = new RandomPoints(OUTER, WALL).left(screw, near, older);
    assertThat(left(screw, near, older))
        .as("%s cortex of %s among %s", near ? "near" : "far", screw, older)
        .isCloseTo(thrown, within(0.01));
  }

  @Example
  void of_typical_neighbours_is_their_volume() {
    Drill screw = Drill.at(100, 0);
    agrees(screw, List.of(Drill.at(102, 0)));
    agrees(screw, List.of(Drill.at(102, 180)));
    agrees(screw, List.of(Drill.at(98, 0), Drill.at(101.5, 0).thick(3.5)));
    agrees(screw, List.of(Drill.at(98, 0), Drill.at(98.5, 180), Drill.at(103, 0)));
    agrees(screw, List.of(Drill.at(100, 15)));
    agrees(screw, List.of(Drill.at(101, 12), Drill.at(99, 348)));
    agrees(screw, List.of(Drill.at(101, 195).thick(6.5)));
    agrees(screw, List.of(Drill.at(100, 0).tilted(15)));
    agrees(screw.tilted(-20), List.of(Drill.at(101, 0).tilted(15), Drill.at(88, 180)));
    agrees(screw.tilted(30), List.of(Drill.at(114, 180).tilted(-30)));
    agrees(screw.tilted(55), List.of(Drill.at(100, 8).tilted(55)));
    agrees(screw.thread(5, 4.35), List.of(Drill.at(102, 5)));
    agrees(screw.thread(6.5, 3), List.of(Drill.at(101, 10).thick(4.5)));
  }

  @Example
  void of_a_steep_old_screw_that_comes_out_beside_the_new_one_is_that_of_the_far_end() {
    // from the other side 13.86 mm nearer, tilted 30 degrees: out at 86.14 + 24 tan 30 = 100
    Drill old = Drill.at(100 - OUTER * Math.tan(Math.toRadians(30)), 180).tilted(30);
    agrees(Drill.at(100, 0), List.of(old));
    assertThat(left(Drill.at(100, 0), true, List.of(old))).isLessThan(0.7);
    assertThat(left(Drill.at(100, 0), false, List.of(old))).isEqualTo(1);
  }

  @Property(tries = 45)
  void of_any_tracks_is_their_volume(
      @ForAll("screws") Drill screw, @ForAll("several") List<Drill> older, @ForAll boolean near) {
    agrees(screw, near, older);
  }

  @Property(tries = 15)
  void of_parallel_tracks_is_their_volume(
      @ForAll("screws") Drill screw, @ForAll("several") List<Drill> older) {
    List<Drill> parallel = new ArrayList<>();
    for (int i = 0; i < older.size(); i++) {
      Drill old = older.get(i);
      double side = screw.direction().orElseThrow().degrees() + 180 * (i % 2);
      parallel.add(Drill.at(old.level().min(), side).thick(old.diameter().min()));
    }
    agrees(screw.tilted(0), true, parallel);
  }

  @Property(tries = 60)
  void never_grows_with_another_track(
      @ForAll("screws") Drill screw,
      @ForAll("several") List<Drill> older,
      @ForAll("olds") Drill another,
      @ForAll boolean near) {
    List<Drill> more = new ArrayList<>(older);
    more.add(another);
    assertThat(left(screw, near, more)).isLessThanOrEqualTo(left(screw, near, older) + 0.01);
  }

  @Property(tries = 60)
  void never_grows_with_a_thicker_track(
      @ForAll("screws") Drill screw, @ForAll("olds") Drill old, @ForAll boolean near) {
    Drill thicker = old.thick(old.diameter().min() + 0.7);
    assertThat(left(screw, near, List.of(thicker)))
        .isLessThanOrEqualTo(left(screw, near, List.of(old)));
  }

  @Property(tries = 60)
  void stays_when_all_is_turned_or_seen_in_a_mirror(
      @ForAll("screws") Drill screw, @ForAll("several") List<Drill> older, @ForAll boolean near) {
    double asIs = left(screw, near, older);
    List<Drill> turned = older.stream().map(old -> around(old, 1, 77)).toList();
    List<Drill> mirrored = older.stream().map(old -> around(old, -1, 0)).toList();
    List<Drill> upsideDown = older.stream().map(ShareByVolumeTest::upsideDown).toList();
    assertThat(left(around(screw, 1, 77), near, turned)).isCloseTo(asIs, within(0.004));
    assertThat(left(around(screw, -1, 0), near, mirrored)).isCloseTo(asIs, within(0.004));
    assertThat(left(upsideDown(screw), near, upsideDown)).isCloseTo(asIs, within(0.004));
  }

  private static Drill around(Drill drill, int sense, double by) {
    double degrees = sense * drill.direction().orElseThrow().degrees() + by;
    Drill turned = Drill.at(drill.level().min(), degrees).tilted(drill.tilt());
    return turned.thread(drill.diameter().min(), drill.core());
  }

  private static Drill upsideDown(Drill drill) {
    return drill.level(-drill.level().min(), -drill.level().min()).tilted(-drill.tilt());
  }

  @Property(tries = 60)
  void is_whole_far_away(@ForAll("screws") Drill screw, @ForAll("olds") Drill old) {
    // two screws through 24 mm at 35 degrees lean by 17 mm each at the most
    Drill far = old.level(145, 145);
    assertThat(left(screw, true, List.of(far))).isEqualTo(1);
    assertThat(left(screw, false, List.of(far))).isEqualTo(1);
  }

  @Provide
  Arbitrary<Drill> screws() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 359),
            Arbitraries.doubles().between(-35, 35),
            Arbitraries.of(
                List.of(3.5, 2.4), List.of(4.5, 3.0), List.of(5.0, 4.35), List.of(6.5, 3.0)))
        .as(
            (degrees, tilt, thread) ->
                Drill.at(100, degrees).tilted(tilt).thread(thread.get(0), thread.get(1)));
  }

  /** Mostly near enough to matter: within 6 mm, from about the same side or the opposite one. */
  @Provide
  Arbitrary<Drill> olds() {
    return Combinators.combine(
            Arbitraries.doubles().between(94, 106),
            Arbitraries.integers().between(0, 359),
            Arbitraries.doubles().between(-35, 35),
            Arbitraries.of(2.7, 3.5, 4.5, 5.0, 6.5))
        .as((level, degrees, tilt, thick) -> Drill.at(level, degrees).tilted(tilt).thick(thick));
  }

  @Provide
  Arbitrary<List<Drill>> several() {
    return olds().list().ofMinSize(1).ofMaxSize(4);
  }
}
