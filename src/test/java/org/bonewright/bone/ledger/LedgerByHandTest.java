package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.bone.ledger.Histories.FRAME;
import static org.bonewright.bone.ledger.Histories.NAIL;
import static org.bonewright.bone.ledger.Histories.PLATE;
import static org.bonewright.bone.ledger.Histories.ledger;
import static org.bonewright.bone.ledger.Histories.plate;
import static org.bonewright.bone.ledger.Histories.put;
import static org.bonewright.bone.ledger.Histories.told;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the memory of a bone tells at its end; a tibia of 24 mm, the zone of 179 to 181 mm. */
class LedgerByHandTest {

  private static final String CUT =
      "fixation: [], resection: [{fromMm: 110, toMm: 120}], reduction: {gapNearMm: 0, gapFarMm: 0}";

  @Nested
  class AtTheEnd {

    @Test
    void every_track_is_left_the_last_ones_included_where_it_reads_now() {
      Ledger ledger =
          ledger(put(PLATE, FRAME), CUT, put("{id: 'lag-1', kind: 'lag-screw', atMm: 170}"));
      assertThat(told(ledger.leftBy(0))).hasSize(5);
      assertThat(told(ledger.leftBy(2)))
          .contains("op-1/plate-1 hole 1 100+", "op-1/frame pin 3 290+", "op-3/lag-1 170+")
          .noneMatch(line -> line.startsWith("op-1/plate-1 hole 2"));
    }

    @Test
    void a_level_read_before_a_cut_reads_nearer_now() {
      Ledger ledger = ledger(put(FRAME), CUT, "title: 'x'");
      assertThat(ledger.now(Drill.exactly(300), 0).orElseThrow().min()).isEqualTo(290);
      assertThat(ledger.now(Drill.exactly(300), 1).orElseThrow().min()).isEqualTo(300);
      assertThat(ledger.now(Drill.exactly(115), 0)).isEmpty();
      // the cut of the last operation counts as well
      assertThat(ledger(put(FRAME), CUT).now(Drill.exactly(300), 0).orElseThrow().min())
          .isEqualTo(290);
    }

    @Test
    void levels_and_zone_are_those_of_the_bone_where_the_file_tells_levels() {
      Ledger ledger = ledger(put(PLATE), "title: 'x'");
      Track first = ledger.drilledBy(0).get(0);
      assertThat(ledger.levelOnBone(first).orElseThrow().min()).isEqualTo(100);
      assertThat(ledger.zoneOfLevels(1).centre().orElseThrow().min()).isEqualTo(180);
    }

    @Test
    void levels_and_zone_are_told_from_the_middle_of_the_zone_where_it_tells_none() {
      CaseText zone =
          CaseText.plated().at("/injury", "{zone: {fromMm: null, toMm: null, lengthMm: 2}}");
      Ledger ledger =
          ledger(zone, put(plate("plate-1", "{zoneBetweenHoles: [1, 2]}")), "title: 'x'");
      Track first = ledger.drilledBy(0).get(0);
      assertThat(first.level()).isPresent();
      assertThat(ledger.levelOnBone(first)).isEmpty();
      assertThat(ledger.zoneOfLevels(1).centre().orElseThrow().max()).isZero();
      assertThat(ledger.zoneOfLevels(1).length().orElseThrow().max()).isEqualTo(2);
      assertThat(ledger.now(Drill.exactly(-8), 0).orElseThrow().min()).isEqualTo(-8);
    }
  }

  @Nested
  class Metal {

    @Test
    void without_a_level_is_not_lost_in_a_cut_of_the_operation_that_put_it_in() {
      String lag = "{id: 'lag-1', kind: 'lag-screw'}";
      String cutFirst =
          put(lag)
              + ", resection: [{fromMm: 50, toMm: 60}], reduction: {gapNearMm: 0, gapFarMm: 0}";
      assertThat(ledger(cutFirst, "title: 'x'").foundBy(1).get(0).mayBeGone()).isFalse();
      assertThat(ledger(cutFirst, CUT, "title: 'x'").foundBy(2).get(0).mayBeGone()).isTrue();
    }

    @Test
    void of_lag_screws_fills_its_track_until_it_is_out_and_wires_fill_none() {
      String lag = "{id: 'lag-1', kind: 'lag-screw', atMm: 170}";
      String wire = "{id: 'wire-1', kind: 'cerclage', atMm: [175]}";
      Ledger ledger =
          ledger(put(lag, wire), "fixation: [], removed: [{of: 'op-1/lag-1'}]", "title: 'x'");
      assertThat(told(ledger.foundBy(1))).containsExactly("op-1/lag-1 170+");
      assertThat(told(ledger.foundBy(2))).containsExactly("op-1/lag-1 170");
    }

    @Test
    void of_bolts_and_pins_has_a_core_in_proportion() {
      String nail = "{id: 'n', kind: 'nail', bolts: [{end: 'far', atMm: 310, diameterMm: 5}]}";
      String frame = "{id: 'f', kind: 'external-fixator', pins: [{atMm: 60, diameterMm: 6}]}";
      List<Track> tracks = ledger(put(nail, frame)).drilledBy(0);
      // 0.86 of the outer diameter
      assertThat(tracks.get(0).core()).isCloseTo(4.3, within(1e-9));
      assertThat(tracks.get(1).core()).isCloseTo(5.16, within(1e-9));
    }
  }

  @Nested
  class Screws {

    private static final String SECOND =
        "{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow-locking',"
            + " surface: 'medial', holes: 10, spacingMm: 16, place: {firstHoleMm: 100}, screws:"
            + " [{at: [1], type: 'locking', cortices: 2, track: 'old-hole'},"
            + " {at: [4], type: 'cortical', cortices: 2, track: 'fresh'}]}";

    @Test
    void of_plates_alone_are_asked_what_they_find_locking_or_not() {
      String lag = "{id: 'lag-1', kind: 'lag-screw', atMm: 170}";
      Ledger ledger = ledger(put(PLATE), put(SECOND, NAIL, FRAME, lag));
      assertThat(ledger.drilledBy(1)).hasSize(9);
      assertThat(ledger.drilledBy(1).subList(0, 2))
          .extracting(Track::kind)
          .containsExactly(Track.Kind.LOCKING_PLATE_SCREW, Track.Kind.PLATE_SCREW);
      assertThat(ledger.bites(1))
          .extracting(bite -> bite.track().name())
          .containsExactly("op-2/plate-1 hole 1", "op-2/plate-1 hole 4");
    }

    @Test
    void are_taken_at_the_word_of_their_own_row() {
      // the second plate lies where the first lay: hole 1 in the old hole, hole 4 32 mm beyond
      // the last one; a row of another hole or another plate says nothing of them
      String apart = SECOND.replace("firstHoleMm: 100", "firstHoleMm: 200");
      String beside = apart.replace("'plate-1'", "'plate-0'").replace("'old-hole'", "'fresh'");
      assertThat(ledger(put(PLATE), put(apart)).bites(1))
          .extracting(Bite::contact)
          .containsExactly(Bite.Contact.REUSED, Bite.Contact.FRESH);
      assertThat(ledger(put(PLATE), put(beside, apart)).bites(1))
          .extracting(Bite::contact)
          .containsExactly(
              Bite.Contact.FRESH, Bite.Contact.FRESH, Bite.Contact.REUSED, Bite.Contact.FRESH);
    }

    @Test
    void through_one_of_two_plates_take_level_and_side_from_that_one() {
      String other =
          PLATE
              .replace("'plate-1'", "'plate-0'")
              .replace("firstHoleMm: 100", "firstHoleMm: 20")
              .replace("'medial'", "'lateral'");
      String lag = "{id: 'lag-1', kind: 'lag-screw', throughPlate: 'plate-1', hole: 5}";
      Track track = ledger(put(other, PLATE, lag)).drilledBy(0).get(4);
      assertThat(track.level().orElseThrow().min()).isEqualTo(164);
      assertThat(track.direction().orElseThrow().degrees()).isEqualTo(270);
    }

    @Test
    void that_end_at_the_far_cortex_or_beyond_cross_both() {
      for (String tip : List.of("0", "{min: 0, max: 2}", "2")) {
        String plate =
            "{id: 'p', kind: 'plate', holes: 2, screws: [{at: [1], type: 'cortical', cortices: 2,"
                + " tipBeyondMm: "
                + tip
                + "}]}";
        assertThat(ledger(put(plate)).drilledBy(0).get(0).reach())
            .isEqualTo(Track.Reach.BOTH_CORTICES);
      }
    }
  }
}
