package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.bone.ledger.Cutting.NO_GAP;
import static org.bonewright.bone.ledger.Cutting.cuts;
import static org.bonewright.bone.ledger.Cutting.operation;
import static org.bonewright.bone.ledger.Cutting.piece;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Operation;
import org.junit.jupiter.api.Test;

/** Levels that are ranges, and what of them is assumed, where pieces are cut out. */
class CutsByHandTest {

  private static String told(Dimension level) {
    return level.numbers() + (level.assumed() ? " assumed" : "");
  }

  private static String moved(Cuts cuts, Dimension level) {
    return told(cuts.moved(level, 0, 1).orElseThrow());
  }

  @Test
  void what_may_lie_on_either_side_of_a_vague_cut_may_stay_or_come_nearer() {
    // from 148 to 152 up to 158 to 162: 6 to 14 mm closed
    Cuts cuts = cuts(operation(piece("{min: 148, max: 152}", "{min: 158, max: 162}"), NO_GAP));
    // before it up to 152, or beyond it: 158 less 14, 170 less 6
    assertThat(moved(cuts, Drill.between(149, 170))).isEqualTo("144–164");
    // at best before it: it stays
    assertThat(moved(cuts, Drill.exactly(150))).isEqualTo("150");
    assertThat(moved(cuts, Drill.between(140, 156))).isEqualTo("140–152");
    assertThat(moved(cuts, Drill.between(154, 170))).isEqualTo("144–164");
  }

  @Test
  void only_what_may_lie_beyond_a_cut_takes_over_that_its_gap_was_assumed() {
    Cuts cuts = cuts(operation(piece("{min: 148, max: 152}", "160"), ""));
    assertThat(moved(cuts, Drill.exactly(140))).isEqualTo("140");
    assertThat(moved(cuts, Drill.exactly(150))).isEqualTo("150");
    // 12 mm at the most
    assertThat(moved(cuts, Drill.exactly(170))).isEqualTo("158–170 assumed");
    Cuts known = cuts(operation(piece("150", "160"), NO_GAP));
    assertThat(moved(known, Drill.exactly(170))).isEqualTo("160");
    assertThat(moved(known, Dimension.assumed(170, 170, ""))).isEqualTo("160 assumed");
    assertThat(told(cuts.asInjured(Drill.exactly(170), 1))).isEqualTo("170–182 assumed");
    assertThat(told(known.asInjured(Drill.exactly(170), 1))).isEqualTo("180");
    assertThat(told(known.asInjured(Dimension.assumed(170, 170, ""), 1))).isEqualTo("180 assumed");
  }

  @Test
  void a_gap_told_on_one_side_leaves_the_other_to_be_assumed() {
    assertThat(shortened("gapNearMm: 1, gapFarMm: 4")).isEqualTo("6");
    assertThat(shortened("gapFarMm: 4")).isEqualTo("0–6 assumed");
    assertThat(shortened("gapNearMm: 4")).isEqualTo("0–6 assumed");
  }

  private static String shortened(String gaps) {
    return told(cuts(operation(piece("150", "160"), gaps)).shortenedBy(1));
  }

  @Test
  void a_zone_is_made_smaller_by_the_cuts_of_its_own_operation_alone() {
    Operation second = operation(piece("181", "185"), NO_GAP);
    Cuts cuts = cuts(operation(piece("150", "160"), NO_GAP), second);
    FractureZone found = zone(Drill.exactly(10), Drill.exactly(180));
    // 175 to 185, of which 181 to 185 are cut out
    assertZone(cuts.zoneAfter(second, found, 2), "6", "178");
  }

  @Test
  void a_vague_zone_stays_vague_when_a_piece_within_it_is_cut_out() {
    // from 149 to 151 up to 159 to 161, less 2 mm
    assertZone(after(zone(Drill.between(8, 12), Drill.exactly(155)), NO_GAP), "6–10", "153–155");
    assertZone(after(zone(Drill.exactly(10), Drill.between(154, 156)), NO_GAP), "6–10", "153–155");
  }

  @Test
  void a_zone_is_assumed_where_length_centre_or_gap_is() {
    Dimension ten = Dimension.assumed(10, 10, "");
    Dimension middle = Dimension.assumed(155, 155, "");
    assertZone(after(zone(ten, Drill.exactly(155)), NO_GAP), "8 assumed", "154 assumed");
    assertZone(after(zone(Drill.exactly(10), middle), NO_GAP), "8 assumed", "154 assumed");
    assertZone(after(zone(Drill.exactly(10), Drill.exactly(155)), NO_GAP), "8", "154");
    assertZone(
        after(zone(Drill.exactly(10), Drill.exactly(155)), ""), "8–10 assumed", "154–155 assumed");
  }

  private static FractureZone zone(Dimension length, Dimension centre) {
    return new FractureZone(Optional.of(length), Optional.of(centre));
  }

  private static FractureZone after(FractureZone zone, String reduction) {
    Operation operation = operation(piece("152", "154"), reduction);
    return cuts(operation).zoneAfter(operation, zone, 1);
  }

  private static void assertZone(FractureZone zone, String length, String centre) {
    assertThat(List.of(told(zone.length().orElseThrow()), told(zone.centre().orElseThrow())))
        .containsExactly(length, centre);
  }
}
