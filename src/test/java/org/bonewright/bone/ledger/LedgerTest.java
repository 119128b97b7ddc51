package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.bone.ledger.Histories.FRAME;
import static org.bonewright.bone.ledger.Histories.PLATE;
import static org.bonewright.bone.ledger.Histories.ledger;
import static org.bonewright.bone.ledger.Histories.plate;
import static org.bonewright.bone.ledger.Histories.put;
import static org.bonewright.bone.ledger.Histories.told;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tibia of 24 mm; the zone of 179 to 181 mm. */
class LedgerTest {

  @Nested
  class Places {

    @Test
    void are_those_of_holes_bolts_pins_and_lag_screws() {
      Ledger ledger =
          ledger(
              put(PLATE, FRAME), put("{id: 'lag-1', kind: 'lag-screw', atMm: 170}"), "title: 'x'");
      assertThat(told(ledger.foundBy(2)))
          .contains("op-1/plate-1 hole 1 100+", "op-1/plate-1 hole 2 116+", "op-1/frame pin 3 300+")
          .anyMatch(line -> line.startsWith("op-2/lag-1 170"));
      assertThat(ledger.isFromZone()).isFalse();
      assertThat(ledger.round("op-3")).contains(2);
      assertThat(ledger.round("op-9")).isEmpty();
    }

    @Test
    void by_holes_alone_are_told_from_the_middle_of_the_zone_when_nothing_tells_a_level() {
      CaseText zone = CaseText.plated().at("/injury", "{zone: null}");
      Ledger ledger =
          ledger(zone, put(plate("plate-1", "{zoneBetweenHoles: [1, 2]}")), "title: 'x'");
      assertThat(ledger.isFromZone()).isTrue();
      // 8 mm either side, free by 8 mm
      assertThat(told(ledger.foundBy(1)))
          .containsExactly("op-1/plate-1 hole 1 -16 to 0+", "op-1/plate-1 hole 2 0–16+")
          .isEqualTo(told(ledger.foundBy(1)));
    }

    @Test
    void by_holes_alone_are_not_known_beside_levels_from_the_landmark() {
      CaseText zone = CaseText.plated().at("/injury", "{zone: null}");
      Ledger ledger =
          ledger(zone, put(plate("plate-1", "{zoneBetweenHoles: [1, 2]}"), FRAME), "title: 'x'");
      assertThat(ledger.isFromZone()).isFalse();
      assertThat(told(ledger.foundBy(1)))
          .contains("op-1/plate-1 hole 1 ?+", "op-1/frame pin 1 60+");
      assertThat(ledger.tellsAllBefore(1)).isFalse();
    }

    @Test
    void by_holes_are_levels_where_the_zone_has_one() {
      Ledger ledger = ledger(put(plate("plate-1", "{zoneBetweenHoles: [1, 2]}")), "title: 'x'");
      // zone of 2 mm about 180: 8 mm either side, free by (16 - 2) / 2 = 7 mm
      assertThat(told(ledger.foundBy(1)))
          .containsExactly("op-1/plate-1 hole 1 165–179+", "op-1/plate-1 hole 2 181–195+");
    }

    @Test
    void of_a_lag_screw_through_a_plate_are_those_of_its_hole() {
      String lag = "{id: 'lag-1', kind: 'lag-screw', throughPlate: 'plate-1', hole: 5}";
      Track track = ledger(put(PLATE, lag)).drilledBy(0).get(2);
      // 100 + 4 x 16
      assertThat(track.level().orElseThrow().min()).isEqualTo(164);
      assertThat(track.direction().orElseThrow().degrees()).isEqualTo(270);
      assertThat(track.tilt()).isEqualTo(0);
    }

    @ParameterizedTest(name = "from {0} to {1}: {2} degrees")
    @CsvSource({"180, 204, 45", "180, 156, -45", "180, 180, 0", "180, 193.856, 30"})
    void of_a_lag_screw_lean_from_entry_to_exit(String in, String out, double tilt) {
      // the bone is 24 mm thick at 180 mm
      String lag = "{id: 'lag-1', kind: 'lag-screw', atMm: " + in + ", exitMm: " + out + "}";
      assertThat(ledger(put(lag)).drilledBy(0).get(0).tilt()).isCloseTo(tilt, within(0.01));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            type: 'cortical'                                         | BOTH_CORTICES
            type: 'locking'                                          | UNSURE
            type: 'locking', cortices: 1                             | NEAR_CORTEX
            type: 'locking', cortices: 2                             | BOTH_CORTICES
            type: 'cortical', cortices: {min: 1, max: 2}             | UNSURE
            type: 'cortical', tipBeyondMm: -1                        | NEAR_CORTEX
            type: 'cortical', tipBeyondMm: {min: -2, max: 1}         | UNSURE
            type: 'cortical', cortices: 2, tipBeyondMm: {min: -2, max: 1} | UNSURE
            type: 'locking', tipBeyondMm: 0                          | BOTH_CORTICES
            type: 'locking', tipBeyondMm: {min: -2, max: 1}          | UNSURE
            """)
    void reach_as_far_as_the_file_tells(String screw, Track.Reach reach) {
      String plate = "{id: 'plate-1', kind: 'plate', holes: 2, screws: [{at: [1], " + screw + "}]}";
      assertThat(ledger(put(plate)).drilledBy(0).get(0).reach()).isEqualTo(reach);
    }
  }

  @Nested
  class Resections {

    private static final String CUT =
        "fixation: [], resection: [{fromMm: 110, toMm: 120}], reduction: {gapNearMm: 0, gapFarMm: 0}";

    @Test
    void take_tracks_away_and_bring_those_beyond_nearer() {
      Ledger ledger = ledger(put(PLATE, FRAME), CUT, "title: 'x'");
      List<String> before =
          List.of(
              "op-1/plate-1 hole 1 100+",
              "op-1/plate-1 hole 2 116+",
              "op-1/frame pin 1 60+",
              "op-1/frame pin 2 80+",
              "op-1/frame pin 3 300+");
      assertThat(told(ledger.foundBy(1))).isEqualTo(before);
      assertThat(told(ledger.foundBy(2)))
          .containsExactly(
              "op-1/plate-1 hole 1 100+",
              "op-1/frame pin 1 60+",
              "op-1/frame pin 2 80+",
              "op-1/frame pin 3 290+");
      assertThat(ledger.metBy(1).stream().map(old -> old.track().name()))
          .isEqualTo(ledger.foundBy(2).stream().map(old -> old.track().name()).toList());
      OldTrack last = ledger.foundBy(2).get(3);
      assertThat(last.asInjured().orElseThrow().min()).isEqualTo(300);
      assertThat(last.mayBeGone()).isFalse();
    }

    @Test
    void of_one_operation_do_not_move_its_own_tracks() {
      Ledger ledger =
          ledger(
              put(PLATE)
                  + ", resection: [{fromMm: 50, toMm: 60}], reduction: {gapNearMm: 0, gapFarMm: 0}",
              "title: 'x'");
      OldTrack first = ledger.foundBy(1).get(0);
      assertThat(first.track().level().orElseThrow().min()).isEqualTo(100);
      assertThat(first.asInjured().orElseThrow().min()).isEqualTo(110);
    }

    @Test
    void make_what_has_no_level_uncertain() {
      Ledger ledger = ledger(put("{id: 'lag-1', kind: 'lag-screw'}"), CUT, "title: 'x'");
      assertThat(ledger.foundBy(1).get(0).mayBeGone()).isFalse();
      assertThat(ledger.foundBy(2).get(0).mayBeGone()).isTrue();
    }

    @Test
    void leave_the_next_operation_a_smaller_zone_unless_it_was_described_again() {
      String cut =
          "fixation: [], resection: [{fromMm: 179, toMm: 187}], reduction: {gapNearMm: 3, gapFarMm: 0}";
      // 179 to 187 cut, 3 mm left: 179 to 182
      Dimension left = ledger(put(PLATE), cut, "title: 'x'").zoneFoundBy(2).length().orElseThrow();
      assertThat(left.min()).isEqualTo(3);
      String again = "{findings: [{day: 150, zone: {fromMm: 170, toMm: 176}}]}";
      Ledger seen = ledger(CaseText.plated().with(again), put(PLATE), cut, "title: 'x'");
      assertThat(seen.zoneFoundBy(2).length().orElseThrow().min()).isEqualTo(6);
      assertThat(seen.zone(1).length().orElseThrow().min()).isEqualTo(3);
    }

    @Test
    void do_not_outweigh_a_zone_found_to_be_the_same_again() {
      String same = "zone: {lengthMm: 8}";
      CaseText text =
          CaseText.plated().with("{findings: [{day: 50, " + same + "}, {day: 150, " + same + "}]}");
      String cut =
          "fixation: [], resection: [{fromMm: 176, toMm: 184}], reduction: {gapNearMm: 0, gapFarMm: 0}";
      Ledger ledger = ledger(text, put(PLATE), cut, "title: 'x'");
      assertThat(ledger.zone(1).length().orElseThrow().max()).isEqualTo(0);
      assertThat(ledger.zoneFoundBy(2).length().orElseThrow().min()).isEqualTo(8);
    }
  }

  @Nested
  class Stages {

    @Test
    void of_a_plan_see_the_tracks_and_the_zone_that_the_stages_before_leave() {
      CaseText text =
          CaseText.plated()
              .at("/operations/0", "{fixation: [" + PLATE + "]}")
              .with(
                  "{plans: [{id: 'plan-a', stages: [{id: 'a-1', fixation: ["
                      + FRAME
                      + "], resection: [{fromMm: 176, toMm: 186}], reduction: {gapNearMm: 4, gapFarMm: 0}},"
                      + " {id: 'a-2', fixation: ["
                      + plate("plate-2", "{firstHoleMm: 100}")
                      + "]}]}]}");
      List<Subject> subjects = Subject.of(text.file());
      Subject second =
          subjects.stream().filter(s -> s.id().equals("plan-a/a-2")).findFirst().orElseThrow();
      Ledger ledger = new Scene(second, Taken.CATALOGUE).ledger();
      assertThat(ledger.rounds()).isEqualTo(3);
      // frame pins stand as read in the stage that cut
      assertThat(told(ledger.metBy(2)))
          .containsExactly(
              "op-1/plate-1 hole 1 100",
              "op-1/plate-1 hole 2 116",
              "a-1/frame pin 1 60",
              "a-1/frame pin 2 80",
              "a-1/frame pin 3 300");
      assertThat(ledger.zoneFoundBy(2).length().orElseThrow().min()).isEqualTo(4);
      assertThat(ledger.bites(2))
          .extracting(Bite::contact)
          .containsExactly(Bite.Contact.REUSED, Bite.Contact.REUSED);
      Subject plan = subjects.get(subjects.size() - 1);
      Ledger whole = new Scene(plan, Taken.CATALOGUE).ledger();
      assertThat(names(whole, 2)).isEqualTo(names(ledger, 2));
    }

    private static String names(Ledger ledger, int round) {
      return ledger.metBy(round).stream()
          .sorted(Comparator.comparing(old -> old.track().name()))
          .map(old -> old.track().name())
          .collect(Collectors.joining(", "));
    }
  }

  @Test
  void tells_all_only_where_every_implant_tells_its_screws_with_levels() {
    assertThat(ledger(put(PLATE, FRAME), put()).tellsAllBefore(1)).isTrue();
    assertThat(ledger("title: 'x'", put()).tellsAllBefore(1)).isFalse();
    assertThat(ledger("title: 'x'", put()).tellsAllBefore(0)).isTrue();
    assertThat(ledger(put("{id: 'n', kind: 'nail'}"), put()).tellsAllBefore(1)).isFalse();
    assertThat(ledger(put("{id: 'n', kind: 'nail', bolts: []}"), put()).tellsAllBefore(1)).isTrue();
    assertThat(
            ledger(put("{id: 'n', kind: 'nail', bolts: [{end: 'far'}]}"), put()).tellsAllBefore(1))
        .isFalse();
    assertThat(ledger(put("{id: 'f', kind: 'external-fixator'}"), put()).tellsAllBefore(1))
        .isFalse();
  }
}
