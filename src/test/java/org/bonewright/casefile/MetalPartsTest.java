package org.bonewright.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Implants of a file, and what is left of them once parts were taken out. */
class MetalPartsTest {

  private static Implant implant(String fields) {
    return CaseText.bare()
        .at("/operations/0", "{fixation: [{id: 'x', " + fields + "}]}")
        .operation()
        .fixation()
        .orElseThrow()
        .get(0);
  }

  @Test
  void a_plate_keeps_the_rows_of_screws_that_are_left() {
    Plate plate =
        (Plate)
            implant(
                "kind: 'plate', holes: 8, screws: [{at: [1, 2, 3], type: 'cortical'},"
                    + " {at: [6, 8], type: 'locking'}]");
    Plate left = plate.withoutScrews(List.of(2, 8));
    assertThat(left.screws().orElseThrow())
        .extracting(ScrewRow::at)
        .containsExactly(List.of(1, 3), List.of(6));
    assertThat(left.screws().orElseThrow())
        .extracting(ScrewRow::type)
        .containsExactly(ScrewRow.Type.CORTICAL, ScrewRow.Type.LOCKING);
    assertThat(plate.withoutScrews(List.of())).isEqualTo(plate);
  }

  @Test
  void a_number_of_cortices_holds_no_longer_once_a_screw_is_out() {
    Plate plate = (Plate) implant("kind: 'plate', fewestCortices: 6");
    assertThat(plate.withoutScrews(List.of(3)).fewestCortices()).isEmpty();
    assertThat(plate.withoutScrews(List.of()).fewestCortices()).contains(Quantity.of(6));
  }

  @Test
  void a_number_of_bolts_holds_no_longer_once_one_is_out() {
    Nail nail = (Nail) implant("kind: 'nail', fewestBolts: 2");
    assertThat(nail.withoutBolts(List.of(1)).fewestBolts()).isEmpty();
    assertThat(nail.withoutBolts(List.of()).fewestBolts()).contains(Quantity.of(2));
  }

  @Test
  void a_nail_is_not_locked_as_it_was_stated_once_a_bolt_is_out() {
    Nail nail =
        (Nail)
            implant(
                "kind: 'nail', locking: 'static', bolts: [{end: 'near', atMm: 40}, {end: 'far'}]");
    assertThat(nail.withoutBolts(List.of(2)).locking()).isEmpty();
    assertThat(nail.withoutBolts(List.of()).locking()).contains(Nail.Locking.STATIC);
  }

  @Test
  void bolts_and_pins_are_taken_out_by_their_place_in_the_list_from_one() {
    Nail nail =
        (Nail)
            implant(
                "kind: 'nail', bolts: [{end: 'near', atMm: 40}, {end: 'far', atMm: 300},"
                    + " {end: 'far', atMm: 320}]");
    assertThat(nail.withoutBolts(List.of(1, 3)).bolts().orElseThrow())
        .extracting(bolt -> bolt.atMm().orElseThrow().min())
        .containsExactly(300.0);
    ExternalFixator frame =
        (ExternalFixator) implant("kind: 'external-fixator', pins: [{atMm: 60}, {atMm: 80}]");
    assertThat(frame.withoutPins(List.of(1)).pins().orElseThrow())
        .extracting(pin -> pin.atMm().min())
        .containsExactly(80.0);
  }

  @ParameterizedTest(name = "{0}: main {1}, not told {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          kind: 'plate'                        | true  | screws
          kind: 'plate', screws: []            | true  | none
          kind: 'nail'                         | true  | bolts
          kind: 'nail', bolts: []              | true  | none
          kind: 'external-fixator'             | true  | pins
          kind: 'external-fixator', pins: []   | true  | none
          kind: 'lag-screw'                    | false | none
          kind: 'cerclage', atMm: []           | false | none
          """)
  void what_holds_a_bone_says_which_screws_it_does_not_tell(
      String fields, boolean main, String untold) {
    assertThat(implant(fields).isMain()).isEqualTo(main);
    assertThat(implant(fields).untoldScrews().orElse("none")).isEqualTo(untold);
  }

  @ParameterizedTest(name = "{0}: whole {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          holes: []   | true
          holes: [1]  | false
          bolts: [1]  | false
          pins: [1]   | false
          """)
  void a_removal_is_of_the_whole_where_it_names_no_part(String parts, boolean whole) {
    Removal removal =
        CaseText.bare()
            .at("/operations/0", "{removed: [{of: 'op-0/x', " + parts + "}]}")
            .operation()
            .removed()
            .orElseThrow()
            .get(0);
    assertThat(removal.isWhole()).isEqualTo(whole);
  }

  @Test
  void an_operation_carries_a_main_implant_only_if_it_says_what_it_put_in() {
    assertThat(CaseText.bare().operation().carriesMainImplant()).isEmpty();
    assertThat(CaseText.plated().operation().carriesMainImplant()).contains(true);
    assertThat(
            CaseText.bare()
                .at("/operations/0", "{fixation: [{id: 'l', kind: 'lag-screw'}]}")
                .operation()
                .carriesMainImplant())
        .contains(false);
  }

  @Test
  void a_plan_does_nothing_that_it_does_not_name() {
    Operation bare = CaseText.bare().operation().asPlanned();
    assertThat(bare.fixation()).contains(List.of());
    assertThat(bare.resection()).contains(List.of());
    assertThat(bare.biology()).contains(List.of());
    assertThat(bare.pieces()).contains(List.of());
    assertThat(bare.removed()).isEmpty();
    Operation plated = CaseText.plated().operation();
    assertThat(plated.asPlanned().fixation()).isEqualTo(plated.fixation());
    assertThat(Operation.named("op-9", Optional.of(Quantity.of(4))))
        .extracting(Operation::id, Operation::day, Operation::fixation)
        .containsExactly("op-9", Optional.of(Quantity.of(4)), Optional.empty());
  }
}
