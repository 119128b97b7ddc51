package org.bonewright.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Material;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.shelf.NailSizes;
import org.bonewright.shelf.PlateSizes;
import org.bonewright.shelf.Shelf;
import org.bonewright.shelf.StrutSizes;
import org.bonewright.shelf.UsualShelf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What is drawn in from the shelf fits the shelf and the bone, and reads as any case file does. */
class NewImplantTest {

  private static final DrawnCase PLATED = DrawnCase.base("femur-plate-revision-plan");
  private static final DrawnCase NAILED = DrawnCase.base("femur-nail-nonunion-plan");

  private static Shelf shelf(List<Integer> holes, List<Double> nails) {
    return new Shelf(
        "test",
        List.of(
            new PlateSizes(
                Plate.Family.LARGE_FRAGMENT_BROAD_LOCKING, Material.STEEL_COLD_WORKED, holes)),
        nails.isEmpty()
            ? List.of()
            : List.of(
                new NailSizes(
                    BoneName.FEMUR,
                    Material.TITANIUM_ALLOY,
                    nails,
                    List.of(380.0, 400.0, 500.0),
                    List.of(5.0))),
        List.of(new StrutSizes(Strut.Origin.ALLOGRAFT, List.of(9.0, 20.0), List.of(80.0))),
        List.of(),
        false,
        false);
  }

  private static List<Option> options(DrawnCase drawn, String move, Shelf shelf) {
    return new Options(shelf)
        .of(PlanInFile.of(drawn.bytes(), "plan-a").orElseThrow(), move, "plan-a");
  }

  private static List<Option> options(DrawnCase drawn, String move) {
    return options(drawn, move, UsualShelf.shelf());
  }

  private static JsonNode implant(Option option, int index) {
    return option.file().stage(0).path("fixation").path(index);
  }

  private static boolean reads(Option option) {
    return new Intake().read(option.file().bytes()).caseFile().isPresent();
  }

  @Test
  void a_second_plate_lies_at_a_right_angle_and_ends_short_of_the_first() {
    List<Option> options = options(PLATED, "second-plate");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    for (Option option : options) {
      JsonNode first = implant(option, 0);
      JsonNode second = implant(option, 1);
      assertThat(second.path("surface").asString()).isIn("posterolateral", "anteromedial");
      assertThat(Plates.lengthMm(second))
          .isLessThanOrEqualTo(Plates.lengthMm(first) - 2 * Plates.spacingMm(first));
      assertThat(Plates.lineMm(second)).isEqualTo(Plates.lineMm(first));
      assertThat(second.path("id").asString()).isEqualTo("plate-2");
    }
  }

  @Test
  void a_nail_instead_of_a_plate_fits_canal_bone_and_shelf() {
    List<Option> options =
        options(PLATED, "change-to-nail", shelf(List.of(10), List.of(9.0, 12.0, 18.0)));

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(options)
        .allSatisfy(
            option -> {
              JsonNode nail = implant(option, 0);
              assertThat(nail.path("kind").asString()).isEqualTo("nail");
              assertThat(nail.path("outerMm").asDouble()).isIn(9.0, 12.0);
              assertThat(nail.path("lengthMm").asDouble()).isEqualTo(400);
              assertThat(option.file().stage(0).path("fixation").size()).isEqualTo(1);
            });
    assertThat(options.get(0).words()).contains("12 × 400 mm");
  }

  @Test
  void a_plate_instead_of_a_nail_has_a_size_of_the_shelf_and_is_pressed_with_what_there_is() {
    List<Option> options = options(NAILED, "change-to-plate", shelf(List.of(7, 10, 30), List.of()));

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(options)
        .allSatisfy(
            option -> {
              assertThat(implant(option, 0).path("holes").asInt()).isEqualTo(10);
              assertThat(option.file().stage(0).at("/compression/method").asString())
                  .isEqualTo("eccentric-screws");
              assertThat(option.words()).contains("eccentric screws");
            });
  }

  @Test
  void a_plate_over_a_nail_lets_the_nail_stay_with_its_bolts_and_presses_nothing() {
    List<Option> options = options(NAILED, "plate-over-nail");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    for (Option option : options) {
      ObjectNode stage = option.file().stage(0);
      assertThat(stage.path("fixation")).hasSize(1);
      assertThat(implant(option, 0).path("kind").asString()).isEqualTo("plate");
      assertThat(implant(option, 0).at("/screws/0/type").asString()).isEqualTo("locking");
      assertThat(stage.path("removed")).isEmpty();
      assertThat(stage.at("/compression/method").asString()).isEqualTo("none");
      assertThat(stage.at("/infectionCare/implants").asString()).isEqualTo("kept");
      assertThat(option.words()).startsWith("op-1/nail-1 left in");
    }
    assertThat(options.get(0).words()).contains("near cortex");
  }

  @Test
  void a_nail_that_broke_or_a_bone_without_one_gets_no_plate_over_it() {
    ObjectNode broken = NAILED.root().deepCopy();
    ((ObjectNode) broken.at("/operations/0/outcome")).put("mode", "nail-broken");

    assertThat(options(new DrawnCase(broken), "plate-over-nail")).isEmpty();
    assertThat(options(PLATED.stage(s -> s.putArray("fixation")), "plate-over-nail")).isEmpty();
  }

  @Test
  void lag_screws_that_hold_the_bone_alone_get_a_plate_beside_them() {
    DrawnCase lagged =
        PLATED.stage(
            stage ->
                stage
                    .putArray("fixation")
                    .addObject()
                    .put("id", "lag-screw-1")
                    .put("kind", "lag-screw")
                    .put("diameterMm", 4.5));
    List<Option> options = options(lagged, "protect-lag-screw");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(options)
        .allSatisfy(
            option -> {
              assertThat(implant(option, 0)).isEqualTo(lagged.stage().at("/fixation/0"));
              assertThat(implant(option, 1).path("kind").asString()).isEqualTo("plate");
            });
    assertThat(options(PLATED, "protect-lag-screw")).isEmpty();
  }

  @Test
  void of_two_plates_with_ends_at_one_level_the_shorter_is_moved_and_the_longer_stays() {
    DrawnCase two =
        new DrawnCase(options(PLATED, "second-plate", UsualShelf.shelf()).get(0).file().root());
    List<Option> options = options(two, "stagger-plates");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(options)
        .allSatisfy(
            option -> {
              assertThat(implant(option, 0)).isEqualTo(two.stage().at("/fixation/0"));
              assertThat(implant(option, 1).path("place"))
                  .isNotEqualTo(two.stage().at("/fixation/1/place"));
              assertThat(Plates.lineMm(implant(option, 1)))
                  .isEqualTo(Plates.lineMm(two.stage().at("/fixation/1")));
            });
    assertThat(options(PLATED, "stagger-plates")).isEmpty();
  }

  @Test
  void two_plates_that_end_together_are_staggered_by_such_a_move() {
    DrawnCase level =
        PLATED.stage(
            stage -> {
              ObjectNode second = ((ObjectNode) stage.at("/fixation/0")).deepCopy();
              second.put("id", "plate-2").put("surface", "anteromedial");
              stage.withArrayProperty("fixation").add(second);
            });

    assertThat(
            new ChangeFinder(RuleSet.built(), UsualShelf.shelf())
                .changes(level.bytes(), "dual-plates-at-right-angle", "plan-a"))
        .extracting(PlanChange::move)
        .contains("stagger-plates");
  }

  @Test
  void a_stronger_plate_is_as_long_at_least_and_on_the_same_surface() {
    List<Option> options = options(DrawnCase.weakShortPlate(), "stronger-plate");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(options)
        .allSatisfy(
            option -> {
              assertThat(Plates.lengthMm(implant(option, 0))).isGreaterThanOrEqualTo(128);
              assertThat(implant(option, 0).path("surface").asString()).isEqualTo("anterolateral");
            });
  }

  @Test
  void a_strut_reaches_thirty_millimetres_beyond_the_zone_and_fits_the_canal() {
    List<Option> options = options(PLATED, "add-strut", shelf(List.of(10), List.of()));

    assertThat(options).singleElement().matches(NewImplantTest::reads);
    JsonNode strut = implant(options.get(0), 1);
    assertThat(strut.path("outerMm").asDouble()).isEqualTo(9);
    assertThat(strut.path("fromMm").asDouble()).isEqualTo(170);
    assertThat(strut.path("toMm").asDouble()).isEqualTo(250);
  }

  @ParameterizedTest
  @CsvSource({
    "second-plate",
    "change-to-nail",
    "stronger-plate",
    "add-strut",
    "longer-plate",
    "tension-device",
    "protect-lag-screw"
  })
  void an_empty_shelf_offers_no_new_implant(String move) {
    Shelf empty = new Shelf("empty", List.of(), List.of(), List.of(), List.of(), false, false);
    assertThat(options(DrawnCase.weakShortPlate(), move, empty)).isEmpty();
  }

  @Test
  void a_longer_plate_and_a_thicker_nail_have_sizes_of_the_shelf() {
    assertThat(options(PLATED, "longer-plate", shelf(List.of(16), List.of())))
        .singleElement()
        .extracting(option -> implant(option, 0).path("holes").asInt())
        .isEqualTo(16);
    assertThat(options(NAILED, "larger-nail", shelf(List.of(16), List.of(15.0))))
        .singleElement()
        .extracting(option -> implant(option, 0).path("outerMm").asDouble())
        .isEqualTo(15.0);
  }

  @Test
  void a_longer_nail_takes_its_far_bolts_along_and_stays_within_the_bone() {
    DrawnCase shorter = NAILED.implant(nail -> nail.put("lengthMm", 390));
    List<Option> options = options(shorter, "longer-nail", shelf(List.of(8), List.of(13.0)));

    assertThat(options).hasSize(1);
    assertThat(implant(options.get(0), 0).path("lengthMm").asDouble()).isEqualTo(400);
    assertThat(implant(options.get(0), 0).at("/bolts/2/atMm").asDouble()).isEqualTo(422);
    assertThat(implant(options.get(0), 0).at("/bolts/0/atMm").asDouble()).isEqualTo(35);
  }

  @Test
  void thicker_bolts_leave_none_thinner() {
    DrawnCase thin =
        NAILED.implant(nail -> ((ObjectNode) nail.at("/bolts/1")).put("diameterMm", 4));
    List<Option> options = options(thin, "thicker-bolt");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(implant(options.get(0), 0).at("/bolts/1/diameterMm").asDouble()).isEqualTo(5);
  }

  @Test
  void what_a_plan_has_and_a_shelf_has_not_is_told() {
    PlanInFile plated = PlanInFile.of(PLATED.bytes(), "plan-a").orElseThrow();
    PlanInFile nailed = PlanInFile.of(NAILED.bytes(), "plan-a").orElseThrow();
    Shelf kept = shelf(List.of(12), List.of(13.0));

    assertThat(OffShelf.of(plated, new Setting(PLATED.root(), kept))).isEmpty();
    assertThat(OffShelf.of(plated, new Setting(PLATED.root(), shelf(List.of(10), List.of()))))
        .containsExactly("plan-a/stage-1: plate-1, 12-hole large fragment broad locking");
    assertThat(OffShelf.of(nailed, new Setting(NAILED.root(), kept)))
        .containsExactly("plan-a/stage-1: nail-1, nail of 13 × 425 mm");
    assertThat(OffShelf.of(nailed, new Setting(NAILED.root(), UsualShelf.shelf()))).isEmpty();
  }

  @Test
  void a_lag_screw_is_offered_across_a_steep_line_only() {
    assertThat(options(PLATED, "lag-screw")).isEmpty();
    ObjectNode steep = PLATED.root().deepCopy();
    ((ObjectNode) steep.path("injury")).put("pattern", "oblique").put("obliquityDeg", 45);

    List<Option> options = options(new DrawnCase(steep), "lag-screw");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(implant(options.get(0), 1).path("glidingHole").asString()).isEqualTo("yes");
  }

  @Test
  void plugs_close_every_open_hole_over_the_line_of_a_locking_plate() {
    DrawnCase open =
        PLATED.implant(
            plate ->
                ((ObjectNode) plate.at("/screws/0")).putArray("at").add(1).add(5).add(8).add(12));
    List<Option> options = options(open, "plug-hole");

    assertThat(options).singleElement().matches(NewImplantTest::reads);
    assertThat(implant(options.get(0), 0).path("plugged").toString()).isEqualTo("[6,7]");
  }

  @Test
  void a_screw_that_is_added_is_as_long_as_its_neighbour() {
    List<Option> options = options(DrawnCase.demo("femur-three-operations"), "add-screw");

    assertThat(options).isNotEmpty();
    assertThat(options)
        .allSatisfy(
            option ->
                assertThat(implant(option, 0).path("screws"))
                    .allSatisfy(row -> assertThat(row.has("lengthMm")).isTrue()));
  }

  @Test
  void holes_that_the_nerve_crosses_move_along_with_their_numbers() {
    List<Option> options =
        options(DrawnCase.base("humerus-locking-plate-nonunion-plan"), "longer-plate");

    JsonNode stage = options.get(0).file().stage(0);
    assertThat(implant(options.get(0), 0).path("holes").asInt()).isEqualTo(12);
    assertThat(stage.at("/nerve/holesCrossed").toString()).isEqualTo("[10]");
  }

  @Test
  void where_other_metal_goes_in_nobody_knows_which_holes_the_nerve_crosses() {
    List<Option> options =
        options(DrawnCase.base("humerus-locking-plate-nonunion-plan"), "change-to-nail");

    assertThat(options).isNotEmpty().allMatch(NewImplantTest::reads);
    assertThat(options.get(0).file().stage(0).path("nerve").has("holesCrossed")).isFalse();
    assertThat(options.get(0).file().stage(0).path("nerve").has("seen")).isTrue();
  }

  @Test
  void a_load_limit_is_never_made_looser_or_shorter() {
    for (String move : List.of("protect-load", "set-aftercare")) {
      for (DrawnCase drawn :
          List.of(PLATED, NAILED, DrawnCase.base("humerus-locking-plate-nonunion-plan"))) {
        JsonNode before = drawn.stage().at("/aftercare/load");
        for (Option option : options(drawn, move)) {
          JsonNode after = option.file().stage(0).at("/aftercare/load");
          TreeSet<Integer> days = new TreeSet<>(List.of(1, 41, 42, 43, 56, 57, 83, 84, 85, 112));
          assertThat(days)
              .allSatisfy(
                  day ->
                      assertThat(limit(after, day))
                          .as(option.words() + ", day " + day)
                          .isLessThanOrEqualTo(limit(before, day)));
        }
      }
    }
  }

  private static double limit(JsonNode load, int day) {
    for (JsonNode step : load) {
      if (day <= step.path("untilDay").asDouble()) {
        return step.path("limitKg").asDouble();
      }
    }
    return Double.MAX_VALUE;
  }
}
