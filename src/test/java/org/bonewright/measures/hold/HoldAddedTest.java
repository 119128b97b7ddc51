package org.bonewright.measures.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.node.ObjectNode;

/** The zone lies at 179 to 181 mm, between holes 5 and 6 of ten, 16 mm apart. */
class HoldAddedTest {

  private static final String PLATE = "/operations/0/fixation/0";
  private static final String NO_SIGN =
      "{findings: [{day: 1, infection: {sinus: 'absent', woundBreakdown: 'absent', pus: 'absent',"
          + " samples: {taken: 0, sameOrganism: 0, organisms: []}, histology: 'not-done'}}]}";

  private static String added(CaseText text) {
    return Taken.of("hold-added", text);
  }

  /** Hole 1 at 111 mm, so that hole 5 lies at 175 and hole 6 at 191. */
  private static CaseText placed(CaseText text) {
    return text.at(PLATE, "{place: {zoneBetweenHoles: [5, 6], firstHoleMm: 111}}");
  }

  private static CaseText strut(int from, int to) {
    ObjectNode root = placed(CaseText.plated()).tree();
    root.withArray("/operations/0/fixation")
        .addObject()
        .put("id", "strut-1")
        .put("kind", "strut")
        .put("where", "intramedullary")
        .put("fromMm", from)
        .put("toMm", to);
    return CaseText.of(root.toString());
  }

  private static CaseText cement(String holes) {
    return placed(CaseText.plated())
        .with(NO_SIGN)
        .at(
            PLATE,
            "{screws: [{at: "
                + holes
                + ", type: 'cortical', cortices: 2, augmentation: 'cement'}]}");
  }

  @Test
  void a_plate_alone_has_nothing() {
    assertThat(added(CaseText.plated())).isEqualTo("nothing fact");
  }

  @Test
  void a_nail_counts_alone_and_beside_a_plate() {
    assertThat(added(CaseText.nailed())).isEqualTo("nail fact");
    assertThat(added(BesideNail.of(CaseText.plated()))).isEqualTo("nail fact");
  }

  @Test
  void without_plate_and_nail_it_is_other() {
    assertThat(added(CaseText.plated().at("/operations/0", "{fixation: []}")))
        .isEqualTo("other fact");
    assertThat(added(CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
  }

  @Test
  void a_second_plate_counts_unless_it_holds_no_screw() {
    CaseText two = secondPlate("[{at: [1, 4], type: 'cortical'}]");
    assertThat(added(two)).isEqualTo("second-plate fact");
    assertThat(added(secondPlate("[]"))).isEqualTo("nothing fact");
  }

  private static CaseText secondPlate(String screws) {
    ObjectNode root = CaseText.plated().tree();
    root.withArray("/operations/0/fixation").addObject().put("id", "plate-2").put("kind", "plate");
    return CaseText.of(root.toString())
        .at("/operations/0/fixation/1", "{holes: 4, screws: " + screws + "}");
  }

  @ParameterizedTest(name = "strut from {0} to {1} mm: {2}")
  @CsvSource({
    "170, 195, strut fact",
    "175, 191, strut fact",
    // no screw between 175 and 191 but those two holes
    "176, 195, nothing fact",
    "170, 190, nothing fact"
  })
  void a_strut_counts_when_a_screw_crosses_it_on_both_sides(int from, int to, String reads) {
    assertThat(added(strut(from, to))).isEqualTo(reads);
  }

  @Test
  void a_strut_under_a_plate_at_an_unknown_level_may_count() {
    CaseText text = strut(170, 195).at("/injury", "{zone: null}").at(PLATE, "{place: null}");
    assertThat(added(text)).isEqualTo("nothing or strut fact, ask op-1/fixation/place");
  }

  @ParameterizedTest(name = "cement in {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # hole 4 lies 179 - 159 = 20 off, hole 6 lies 191 - 181 = 10 off
          [4, 6]  | cement fact
          # hole 5 lies 179 - 175 = 4 off
          [5, 6]  | nothing fact
          [1, 4]  | nothing fact
          [6, 8]  | nothing fact
          """)
  void cement_counts_on_both_sides_ten_millimetres_off_the_zone(String holes, String reads) {
    assertThat(added(cement(holes))).isEqualTo(reads);
  }

  @Test
  void a_nut_is_no_cement() {
    CaseText nut =
        cement("[4, 6]")
            .at(PLATE, "{screws: [{at: [4, 6], type: 'cortical', augmentation: 'nut'}]}");
    assertThat(added(nut)).isEqualTo("nothing fact");
  }

  @Test
  void cement_may_count_where_the_zone_is_a_range_that_reaches_ten_millimetres() {
    // hole 6 at 191: 191 - 185 = 6 to 191 - 181 = 10 off
    CaseText text = cement("[4, 6]").with("{injury: {zone: {toMm: {min: 181, max: 185}}}}");
    assertThat(added(text)).startsWith("cement or nothing fact");
  }

  @Test
  void cement_does_not_count_in_infection_and_may_not_where_that_is_open() {
    CaseText infected =
        cement("[4, 6]").with(NO_SIGN.replace("sinus: 'absent'", "sinus: 'present'"));
    assertThat(added(infected)).isEqualTo("nothing fact");
    CaseText open = cement("[4, 6]").with("{findings: []}");
    assertThat(added(open))
        .isEqualTo("cement or nothing fact, ask op-1/fixation/screws/augmentation");
  }
}
