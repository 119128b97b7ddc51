package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.bone.ledger.Cutting.NO_GAP;
import static org.bonewright.bone.ledger.Cutting.cuts;
import static org.bonewright.bone.ledger.Cutting.operation;
import static org.bonewright.bone.ledger.Cutting.piece;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Operation;

/** Levels before and after pieces of bone are cut out; operation 0 never cuts. */
class CutsTest {

  private static void moves(Cuts cuts, int upTo, double level, double min, double max) {
    Dimension now = cuts.moved(Drill.exactly(level), 0, upTo).orElseThrow();
    assertThat(now.min()).as("least of " + level).isCloseTo(min, within(1e-9));
    assertThat(now.max()).as("most of " + level).isCloseTo(max, within(1e-9));
  }

  @Example
  void what_lies_beyond_comes_nearer_by_what_was_closed() {
    Cuts cuts = cuts(operation(piece("150", "160"), NO_GAP));
    moves(cuts, 1, 149, 149, 149);
    moves(cuts, 1, 161, 151, 151);
    moves(cuts, 0, 161, 161, 161);
    assertThat(cuts.moved(Drill.exactly(155), 0, 1)).isEmpty();
    assertThat(cuts.moved(Drill.exactly(155), 1, 1)).isPresent();
  }

  @Example
  void a_gap_that_was_left_closes_less_and_one_not_recorded_anything() {
    moves(cuts(operation(piece("150", "160"), "gapNearMm: 1, gapFarMm: 4")), 1, 170, 164, 164);
    moves(cuts(operation(piece("150", "160"), "gapFarMm: 4")), 1, 170, 164, 170);
    moves(cuts(operation(piece("150", "160"), "gapNearMm: 12")), 1, 170, 170, 170);
    moves(
        cuts(operation(piece("150", "160"), "gapNearMm: {min: 2, max: 4}, gapFarMm: 0")),
        1,
        170,
        162,
        164);
    moves(cuts(operation(piece("150", "160"), "")), 1, 170, 160, 170);
    assertThat(cuts(operation(piece("150", "160"), "")).shortenedBy(1))
        .extracting(Dimension::min, Dimension::max, Dimension::assumed)
        .containsExactly(0.0, 10.0, true);
  }

  @Example
  void two_operations_cut_one_after_the_other() {
    // 10 mm at 150; then, as read after that, 5 mm at 180: 190 to 195 of the bone as injured
    Cuts cuts =
        cuts(operation(piece("150", "160"), NO_GAP), operation(piece("180", "185"), NO_GAP));
    moves(cuts, 2, 140, 140, 140);
    moves(cuts, 2, 185, 175, 175);
    moves(cuts, 2, 200, 185, 185);
    moves(cuts, 1, 200, 190, 190);
    assertThat(cuts.moved(Drill.exactly(192), 0, 2)).isEmpty();
    assertThat(cuts.moved(Drill.exactly(192), 0, 1)).isPresent();
    assertThat(cuts.shortenedBy(1).max()).isEqualTo(10);
    assertThat(cuts.shortenedBy(2).max()).isEqualTo(15);
    assertThat(cuts.before(2)).hasSize(1);
  }

  @Example
  void two_pieces_of_one_operation_are_both_read_before_it() {
    for (String pieces :
        List.of(
            piece("150", "160") + "," + piece("200", "210"),
            piece("200", "210") + "," + piece("150", "160"))) {
      Cuts cuts = cuts(operation(pieces, NO_GAP));
      assertThat(cuts.moved(Drill.exactly(205), 0, 1)).as("in the far piece").isEmpty();
      assertThat(cuts.moved(Drill.exactly(155), 0, 1)).as("in the near piece").isEmpty();
      moves(cuts, 1, 180, 170, 170);
      moves(cuts, 1, 215, 195, 195);
      assertThat(cuts.asInjured(Drill.exactly(170), 1).min()).isCloseTo(180, within(1e-9));
      assertThat(cuts.asInjured(Drill.exactly(195), 1).min()).isCloseTo(215, within(1e-9));
    }
  }

  @Example
  void what_may_have_been_cut_out_says_so() {
    Cuts cuts = cuts(operation(piece("150", "160"), NO_GAP));
    Dimension across = Drill.between(155, 165);
    // 160 to 165 come to 150 to 155
    assertThat(cuts.moved(across, 0, 1).orElseThrow())
        .extracting(Dimension::min, Dimension::max)
        .containsExactly(150.0, 155.0);
    assertThat(cuts.mayBeGone(across, 0, 1)).isTrue();
    assertThat(cuts.mayBeGone(Drill.between(160, 165), 0, 1)).isFalse();
    assertThat(cuts.mayBeGone(Drill.between(140, 150), 0, 1)).isFalse();
    Cuts vague = cuts(operation(piece("{min: 148, max: 152}", "160"), NO_GAP));
    assertThat(vague.moved(Drill.exactly(150), 0, 1)).isPresent();
    assertThat(vague.mayBeGone(Drill.exactly(150), 0, 1)).isTrue();
    assertThat(vague.moved(Drill.exactly(154), 0, 1)).isEmpty();
  }

  @Property(tries = 120)
  void as_injured_undoes_what_moved(
      @ForAll @IntRange(min = 50, max = 320) int level, @ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Cuts cuts = cuts(random(random), random(random));
    double read = level + 0.37;
    for (int upTo = 0; upTo <= 2; upTo++) {
      int now = upTo;
      cuts.moved(Drill.exactly(read), 0, upTo)
          .ifPresent(
              moved -> {
                assertThat(cuts.asInjured(moved, now).min()).isCloseTo(read, within(1e-9));
                assertThat(cuts.asInjured(moved, now).max()).isCloseTo(read, within(1e-9));
              });
    }
  }

  private static Operation random(SplittableRandom random) {
    double from = 100 + random.nextInt(60);
    double to = from + 4 + random.nextInt(8);
    double next = to + 10 + random.nextInt(20);
    String two = random.nextBoolean() ? "" : "," + piece("" + next, "" + (next + 5));
    return operation(piece("" + from, "" + to) + two, NO_GAP);
  }

  @Property(tries = 120)
  void every_exact_history_lies_in_the_range_of_a_vague_one(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int from = 140 + random.nextInt(20);
    int to = from + 6 + random.nextInt(10);
    int gap = random.nextInt(8);
    int level = 120 + random.nextInt(80);
    Cuts vague =
        cuts(
            operation(
                piece(
                    "{min: " + (from - 2) + ", max: " + (from + 3) + "}",
                    "{min: " + (to - 1) + ", max: " + (to + 2) + "}"),
                random.nextBoolean()
                    ? ""
                    : "gapFarMm: 0, gapNearMm: {min: 0, max: " + (gap + 1) + "}"));
    Cuts exact = cuts(operation(piece("" + from, "" + to), "gapFarMm: 0, gapNearMm: " + gap));
    Dimension around = Drill.between(level - random.nextInt(9), level + random.nextInt(9));
    Optional<Dimension> now = exact.moved(Drill.exactly(level + 0.25), 0, 1);
    Dimension read = Drill.between(around.min(), around.max() + 0.5);
    if (now.isEmpty()) {
      assertThat(vague.mayBeGone(read, 0, 1)).isTrue();
    } else {
      Dimension range = vague.moved(read, 0, 1).orElseThrow();
      assertThat(now.get().min()).isBetween(range.min() - 1e-9, range.max() + 1e-9);
      Dimension back = vague.asInjured(now.get(), 1);
      assertThat(level + 0.25).isBetween(back.min() - 1e-9, back.max() + 1e-9);
    }
  }

  @Example
  void the_zone_left_is_what_zone_and_cut_cover_less_what_was_closed() {
    FractureZone zone = zone(150, 160);
    // 145 to 165, 20 mm cut, 2 left open
    assertZone(after(zone, piece("145", "165"), "gapNearMm: 2, gapFarMm: 0"), 2, 2, 146, 146);
    // 150 to 170 of which 160 to 170 cut and closed: 10 mm from 150
    assertZone(after(zone, piece("160", "170"), NO_GAP), 10, 10, 155, 155);
    // gap not recorded: nothing to 10 mm closed
    assertZone(after(zone, piece("150", "160"), ""), 0, 10, 150, 155);
    assertThat(after(zone, piece("150", "160"), "").length().orElseThrow().assumed()).isTrue();
    assertThat(after(zone, "", NO_GAP)).isEqualTo(zone);
  }

  @Example
  void a_zone_of_which_only_the_length_is_known_lies_in_the_cut_as_far_as_it_can() {
    FractureZone zone = new FractureZone(Optional.of(Drill.exactly(10)), Optional.empty());
    // 20 mm cut, 2 left open: nothing is left beside that
    assertLength(after(zone, piece("145", "165"), "gapNearMm: 2, gapFarMm: 0"), 2, 2);
    // 4 mm cut and closed: 6 left
    assertLength(after(zone, piece("150", "154"), NO_GAP), 6, 6);
    // gap not recorded: 6 beside the cut, and nothing to 4 mm open
    assertLength(after(zone, piece("150", "154"), ""), 6, 10);
    assertThat(after(FractureZone.UNKNOWN, piece("150", "154"), NO_GAP))
        .isEqualTo(FractureZone.UNKNOWN);
  }

  private static void assertLength(FractureZone zone, double least, double most) {
    assertThat(zone.centre()).isEmpty();
    assertThat(zone.length().orElseThrow())
        .extracting(Dimension::min, Dimension::max)
        .containsExactly(least, most);
  }

  private static FractureZone zone(double from, double to) {
    return new FractureZone(
        Optional.of(Drill.exactly(to - from)), Optional.of(Drill.exactly((from + to) / 2)));
  }

  private static FractureZone after(FractureZone zone, String pieces, String reduction) {
    Operation operation = operation(pieces, reduction);
    return cuts(operation).zoneAfter(operation, zone, 1);
  }

  private static void assertZone(
      FractureZone zone, double least, double most, double from, double to) {
    assertThat(zone.length().orElseThrow())
        .extracting(Dimension::min, Dimension::max)
        .containsExactly(least, most);
    assertThat(zone.centre().orElseThrow())
        .extracting(Dimension::min, Dimension::max)
        .containsExactly(from, to);
  }
}
