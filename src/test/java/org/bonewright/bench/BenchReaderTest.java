package org.bonewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.reading.Problem;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class BenchReaderTest {

  private static final JsonMapper MAPPER = JsonMapper.shared();
  private static final Path PLATE = Path.of("cases/bench/locking-plate-open-gap.json");

  static Stream<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("cases/bench"))) {
      return all.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void every_shipped_file_is_answered_in_json_and_text_the_same_each_time(Path file)
      throws IOException {
    BenchAnswer answer = answer(Files.readString(file));
    assertThat(BenchText.of(answer)).isNotBlank().doesNotContain("NaN", "Infinity", "-0.000 ");
    assertThat(json(answer).toString())
        .doesNotContain("NaN", "Infinity")
        .isEqualTo(json(answer(Files.readString(file))).toString());
  }

  @Nested
  class A_fixator {

    private static final Path BARS = Path.of("cases/bench/fixator-two-bars.json");

    @Test
    void tells_what_its_bars_and_pins_carry_and_that_its_clamps_are_rigid() throws IOException {
      BenchAnswer answer = answer(Files.readString(BARS));
      JsonNode fixator = json(answer).get("loads").get(0).get("fixator");
      double borne = 0;
      for (JsonNode bar : fixator.get("bars")) {
        for (JsonNode section : bar.get("sections")) {
          borne += section.get("z").asDouble() == 0 ? section.get("N").asDouble() : 0;
        }
      }
      assertThat(borne).isCloseTo(-200, within(1e-3));
      assertThat(fixator.get("pins")).hasSize(6);
      assertThat(BenchText.of(answer)).contains("bar 1", "pins        z mm", "Clamps of a fixator");
    }

    @Test
    void has_pins_in_bone_and_a_second_bar_beyond_the_first() throws IOException {
      String file =
          Files.readString(BARS)
              .replace("-40, 40", "-1, 40")
              .replace("\"distance\": 65", "\"distance\": 45")
              .replace("\"coreDiameter\": 4", "\"coreDiameter\": 6");
      assertThat(problems(file))
          .extracting(Problem::pointer)
          .containsExactlyInAnyOrder(
              "/fixator/bars/1/distance", "/fixator/pins/0/at/2", "/fixator/pins/0/coreDiameter");
    }

    @Test
    void has_one_bar_or_two_and_one_pin_at_a_level() throws IOException {
      String file =
          Files.readString(BARS)
              .replace(
                  ", \"distance\": 65}",
                  ", \"distance\": 65}, {\"E\": 120000, \"nu\": 0.3, \"outerDiameter\": 11, \"innerDiameter\": 12, \"distance\": 80}")
              .replace("85, 120", "85, 85");
      assertThat(problems(file))
          .extracting(Problem::pointer)
          .containsExactlyInAnyOrder(
              "/fixator/bars", "/fixator/bars/2/innerDiameter", "/fixator/pins/0/at/5");
    }
  }

  @Nested
  class A_strut_on_the_bone {

    private static final Path STRUT = Path.of("cases/bench/onlay-strut-opposite.json");

    @Test
    void carries_with_the_plate_what_the_gap_does_not() throws IOException {
      BenchAnswer answer = answer(Files.readString(STRUT));
      JsonNode pressed = json(answer).get("loads").get(0);
      double borne = pressed.get("strut").get("N").asDouble();
      for (JsonNode section : pressed.get("plates").get(0).get("sections")) {
        borne += section.get("z").asDouble() == 0 ? section.get("N").asDouble() : 0;
      }
      assertThat(borne).isCloseTo(-500, within(1e-2));
      assertThat(BenchText.of(answer)).contains("  strut       along", "A strut on the bone rests");
    }

    @Test
    void has_a_width_and_a_side_or_diameters_but_not_both() throws IOException {
      String file = Files.readString(STRUT);
      assertThat(problems(file.replace("\"width\": 16", "\"outerDiameter\": 16")))
          .extracting(Problem::pointer)
          .containsExactly("/strut");
      assertThat(problems(file.replace("\"width\": 16, \"thickness\": 5,", "")))
          .extracting(Problem::pointer)
          .containsExactlyInAnyOrder("/strut/width", "/strut/thickness");
      String inside =
          file.replace("\"width\": 16, \"thickness\": 5, \"azimuth\": 180,", "")
              .replace(", \"wires\": [-65, 65]", "");
      assertThat(problems(inside))
          .extracting(Problem::pointer)
          .containsExactlyInAnyOrder("/strut/outerDiameter", "/strut/innerDiameter");
    }

    @Test
    void has_wires_along_it_and_no_plate_on_it() throws IOException {
      String file = Files.readString(STRUT);
      assertThat(problems(file.replace("[-65, 65]", "[-0.5, 80]")))
          .extracting(Problem::pointer)
          .containsExactly("/strut/wires/0", "/strut/wires/1");
      assertThat(problems(file.replace("\"azimuth\": 180", "\"azimuth\": 20")))
          .extracting(Problem::pointer)
          .containsExactly("/strut/azimuth");
    }
  }

  @Nested
  class A_lag_screw {

    private static final Path LAG = Path.of("cases/bench/lag-screw-and-plate.json");

    @Test
    void tells_its_pull_and_what_its_thread_holds() throws IOException {
      BenchAnswer answer = answer(Files.readString(LAG));
      JsonNode pressed = json(answer).get("loads").get(0).get("lagScrews").get(0);
      assertThat(pressed.get("tension").asDouble()).isBetween(1400.0, 1500.0);
      assertThat(pressed.get("margin").asDouble()).isGreaterThan(1);
      assertThat(pressed.get("state").asString()).isEqualTo("tight");
      assertThat(json(answer).get("openingMoment").asDouble()).isPositive();
      assertThat(BenchText.of(answer)).contains("lag screws  z mm", "The head of a lag screw");
    }

    @Test
    void lies_across_the_fracture_and_presses_only_ends_that_touch() throws IOException {
      String file =
          Files.readString(LAG)
              .replace("{\"at\": 11, \"out\": -2}", "{\"at\": -15, \"out\": -2}")
              .replace("\"majorDiameter\": 3.5", "\"majorDiameter\": 2.3")
              .replace("\"contact\": \"unilateral\"", "\"contact\": \"none\"");
      assertThat(problems(file))
          .extracting(Problem::pointer)
          .containsExactlyInAnyOrder(
              "/lagScrews/0/thread/at", "/lagScrews/0/majorDiameter", "/lagScrews/0/preload");
    }

    @Test
    void has_its_head_in_bone() throws IOException {
      String file = Files.readString(LAG).replace("{\"at\": -11", "{\"at\": -211");
      assertThat(problems(file)).extracting(Problem::pointer).contains("/lagScrews/0/head/at");
    }
  }

  @Nested
  class A_nail {

    private static final Path WIDE = Path.of("cases/bench/nail-in-wide-canal.json");

    @Test
    void tells_what_it_and_its_bolts_carry_and_where_it_meets_the_canal() throws IOException {
      JsonNode across = json(answer(Files.readString(WIDE))).get("loads").get(2);
      JsonNode sections = across.get("nail").get("sections");
      for (JsonNode section : sections) {
        if (section.get("z").asDouble() == 0) {
          assertThat(section.get("Mx").asDouble()).isCloseTo(8000, within(1e-2));
        }
      }
      assertThat(across.get("nail").get("bolts")).hasSize(3);
      assertThat(across.get("events").toString()).contains("touches");
      assertThat(BenchText.of(answer(Files.readString(WIDE))))
          .contains("the nail at 4 mm: touches", "bolts       z mm");
    }

    @Test
    void plays_by_the_slack_of_its_bolts() {
      JsonNode play =
          json(
              answer(
                  "{\"kind\": \"nailPlay\", \"holeDiameter\": 5.2, \"boltDiameter\": 5,"
                      + " \"nailDiameter\": 10}"));
      assertThat(play.get("axial").asDouble()).isCloseTo(0.1, within(1e-9));
      assertThat(play.get("torsion").asDouble()).isCloseTo(Math.toDegrees(0.02), within(1e-9));
    }

    @Test
    void cannot_rest_within_the_gap() throws IOException {
      String file = Files.readString(WIDE).replace("\"at\": 4,", "\"at\": 1,");
      assertThat(problems(file)).extracting(Problem::pointer).contains("/nail/rests/1/at");
    }
  }

  @Nested
  class A_construct {

    @Test
    void carries_the_whole_load_in_the_plate_over_an_open_gap() throws IOException {
      JsonNode loads = json(answer(Files.readString(PLATE))).get("loads");
      JsonNode section = section(loads.get(0), 0);
      assertThat(section.get("N").asDouble()).isCloseTo(-200, within(1e-3));
      assertThat(section.get("Mweak").asDouble()).isCloseTo(-200 * 14.6, within(1e-2));
      assertThat(section(loads.get(1), 0).get("Mweak").asDouble()).isCloseTo(2500, within(1e-2));
    }

    @Test
    void tells_its_stiffness_in_units_that_give_its_movement_back() throws IOException {
      JsonNode answer = json(answer(Files.readString(PLATE)));
      JsonNode stiffness = answer.get("stiffness");
      JsonNode loads = answer.get("loads");
      // N over N/mm is mm; N·m over N·m/deg is degrees, and the end is told in radians.
      double pressed = -200 / stiffness.get("axial").asDouble();
      double bent = Math.toRadians(2.5 / stiffness.get("bendingWeakPlus").asDouble());
      double across = Math.toRadians(1.0 / stiffness.get("bendingStrong").asDouble());
      double twisted = Math.toRadians(1.5 / stiffness.get("torsion").asDouble());
      assertThat(loads.get(0).get("end").get("dz").asDouble()).isCloseTo(pressed, within(1e-9));
      assertThat(loads.get(1).get("end").get("ry").asDouble()).isCloseTo(bent, within(1e-9));
      assertThat(loads.get(2).get("end").get("rx").asDouble()).isCloseTo(across, within(1e-9));
      assertThat(loads.get(2).get("end").get("rz").asDouble()).isCloseTo(twisted, within(1e-9));
    }

    @Test
    void may_name_all_holes_by_a_word_and_one_kind_of_screw_without_brackets() throws IOException {
      ObjectNode file = (ObjectNode) MAPPER.readTree(Files.readString(PLATE));
      ((ObjectNode) file.get("screws")).put("at", "all");
      assertThat(json(answer(file.toString())).get("loads").get(0).get("screws")).hasSize(10);
    }

    @Test
    void shifts_nothing_when_its_gap_is_bonded() throws IOException {
      ObjectNode file = (ObjectNode) MAPPER.readTree(Files.readString(PLATE));
      file.put("interface", "bonded").put("gap", 0);
      JsonNode gap = json(answer(file.toString())).get("loads").get(0).get("gap");
      assertThat(Math.abs(gap.get("far").asDouble())).isLessThan(1e-3);
      assertThat(gap.has("farStrain")).isFalse();
    }

    @Test
    void with_pressed_screws_tells_at_what_load_they_are_pulled_out() throws IOException {
      String pressed = Files.readString(Path.of("cases/bench/compressed-plate.json"));
      JsonNode load = json(answer(pressed)).get("loads").get(1);
      JsonNode holdOut = load.get("holdOut");
      assertThat(holdOut.get("first").asDouble()).isGreaterThan(1);
      assertThat(holdOut.get("pulledOut").get(0).get("load").asDouble())
          .isEqualTo(holdOut.get("first").asDouble());
      assertThat(BenchText.of(answer(pressed))).contains("pulled out", "hold-out");
    }

    @Test
    void without_the_strength_of_its_bone_tells_no_hold_out() throws IOException {
      ObjectNode file =
          (ObjectNode)
              MAPPER.readTree(Files.readString(Path.of("cases/bench/compressed-plate.json")));
      ((ObjectNode) file.get("bone")).remove("shearStrength");
      assertThat(json(answer(file.toString())).get("loads").get(1).has("holdOut")).isFalse();
      assertThat(BenchText.of(answer(file.toString()))).doesNotContain("hold-out", "pulled out");
    }

    @Test
    void compares_the_pressure_of_its_screws_with_the_strength_of_its_bone() throws IOException {
      ObjectNode file = (ObjectNode) MAPPER.readTree(Files.readString(PLATE));
      JsonNode without = json(answer(file.toString())).get("loads").get(0).get("screws").get(0);
      ((ObjectNode) file.get("bone")).put("compressiveStrength", 170);
      JsonNode with = json(answer(file.toString())).get("loads").get(0).get("screws").get(0);
      assertThat(without.has("crushed")).isFalse();
      assertThat(with.get("crushed").asDouble())
          .isCloseTo(without.get("bearing").asDouble() / 170, within(1e-12));
    }

    @Test
    void whose_plate_does_not_reach_across_gets_no_number() throws IOException {
      ObjectNode file = (ObjectNode) MAPPER.readTree(Files.readString(PLATE));
      ((ObjectNode) file.get("screws")).putArray("at").add(18).add(54);
      JsonNode answer = json(answer(file.toString()));
      assertThat(answer.get("loads").get(0).get("noAnswer").asString()).contains("move without");
      assertThat(answer.has("stiffness")).isFalse();
    }
  }

  @Nested
  class A_single_question {

    @Test
    void on_intact_bone_is_answered_by_the_closed_formula() {
      JsonNode stiffness =
          json(answer(
                  "{\"kind\":\"intact\",\"bone\":{\"E\":15000,\"nu\":0.3,\"outerDiameter\":24,"
                      + "\"innerDiameter\":13,\"length\":250}}"))
              .get("stiffness");
      assertThat(stiffness.get("axial").asDouble()).isCloseTo(15000 * 319.66 / 250, within(1.0));
      assertThat(stiffness.get("bending").asDouble())
          .isCloseTo(15000 * 14884.03 / 250 * Math.PI / 180 / 1000, within(0.01));
    }

    @Test
    void on_a_thread_is_answered_by_the_closed_formula() {
      JsonNode answer =
          json(
              answer(
                  "{\"kind\":\"pullout\",\"majorDiameter\":4.5,\"coreDiameter\":3,\"pitch\":1.75,"
                      + "\"boneShearStrength\":50,\"engagedLength\":10}"));
      double shape = 0.5 + 0.57735 * 0.75 / 1.75;
      assertThat(answer.get("capacity").asDouble())
          .isCloseTo(50 * 10 * Math.PI * 4.5 * shape, within(1e-6));
    }

    @Test
    void on_an_old_hole_agrees_whether_it_is_told_as_parallel_or_by_point_and_direction() {
      double parallel =
          json(answer(
                  "{\"kind\":\"reuse\",\"majorDiameter\":4.5,\"coreDiameter\":3,"
                      + "\"parallel\":[{\"oldDiameter\":3.2,\"offset\":2}]}"))
              .get("engagedFraction")
              .get(0)
              .asDouble();
      JsonNode slanted =
          json(
              answer(
                  "{\"kind\":\"reuse\",\"majorDiameter\":4.5,\"coreDiameter\":3,\"cortexFrom\":0,"
                      + "\"cortexTo\":5,\"old\":[{\"diameter\":3.2,\"point\":[2,0,0],"
                      + "\"direction\":[0.0001,0,1]},{\"diameter\":3.2,\"point\":[-2,0,0],"
                      + "\"direction\":[0,0,1]}]}"));
      assertThat(slanted.get("engagedFraction").get(0).asDouble())
          .isCloseTo(parallel, within(0.01));
      assertThat(slanted.get("together").asDouble())
          .isCloseTo(1 - 2 * (1 - parallel), within(0.02));
    }

    @Test
    void on_empty_holes_gives_a_range() {
      JsonNode answer = json(answer("{\"kind\":\"emptyHole\",\"ratios\":[0.1,0.2,0.6]}"));
      assertThat(answer.get("torsionRetained").get("low").get(0).asDouble()).isEqualTo(0.77);
      assertThat(answer.get("torsionRetained").get("high").get(0).asDouble()).isEqualTo(1);
      assertThat(answer.get("bendingRetained").get(1).asDouble()).isCloseTo(0.62, within(1e-9));
    }

    @Test
    void on_a_bent_plate_turns_further_for_its_hole() {
      String plate =
          "{\"kind\":\"plateBend\",\"E\":193000,\"nu\":0.3,\"width\":12.5,\"thickness\":4.2,"
              + "\"holeDiameter\":%s,\"length\":60,\"load\":{\"My\":2000}}";
      JsonNode solid = json(answer(plate.formatted("0")));
      JsonNode holed = json(answer(plate.formatted("5.2")));
      assertThat(holed.get("endRotation").asDouble())
          .isGreaterThan(solid.get("endRotation").asDouble());
      assertThat(solid.get("concentration").asDouble()).isEqualTo(1);
    }
  }

  @Nested
  class Refuses {

    @Test
    void everything_that_does_not_fit_at_once() throws IOException {
      ObjectNode file = (ObjectNode) MAPPER.readTree(Files.readString(PLATE));
      ((ObjectNode) file.get("screws")).putArray("at").add(-90).add(-89).add(18).add(18);
      ((ObjectNode) file.get("bone")).put("innerDiameter", 30);
      ((ObjectNode) file.get("plate")).put("holeDiameter", 13);
      file.putObject("preload").put("force", 500);
      assertThat(problems(file.toString()))
          .extracting(Problem::pointer)
          .contains(
              "/screws/0/at/1",
              "/screws/0/at",
              "/bone/innerDiameter",
              "/plate/holeDiameter",
              "/preload");
    }

    @Test
    void a_screw_in_the_gap_and_a_nail_bolt_beyond_the_bone() throws IOException {
      ObjectNode file = (ObjectNode) MAPPER.readTree(Files.readString(PLATE));
      file.put("gap", 40);
      assertThat(problems(file.toString())).extracting(Problem::pointer).contains("/screws/0/at");
    }

    @Test
    void an_unknown_kind_and_an_unknown_field_with_the_nearest_name() {
      assertThat(problems("{\"kind\":\"construkt\"}").get(0).inWords()).contains("construct");
      assertThat(problems("{\"kind\":\"emptyHole\",\"ratio\":[0.2]}").get(0).inWords())
          .contains("ratios");
    }

    @Test
    void a_row_of_screws_with_the_wrong_number_of_capacities() {
      assertThat(
              problems(
                  "{\"kind\":\"holdout\",\"screws\":[0,20,40],\"capacity\":[1,2],\"loadAt\":0}"))
          .extracting(Problem::pointer)
          .containsExactly("/capacity");
    }
  }

  private static JsonNode section(JsonNode load, double z) {
    for (JsonNode section : load.get("plates").get(0).get("sections")) {
      if (section.get("z").asDouble() == z) {
        return section;
      }
    }
    throw new AssertionError("no section at " + z);
  }

  private static JsonNode json(BenchAnswer answer) {
    return BenchJson.tree(answer);
  }

  private static BenchAnswer answer(String file) {
    BenchReader.Outcome outcome = new BenchReader().answer(file.getBytes(StandardCharsets.UTF_8));
    assertThat(outcome.problems()).isEmpty();
    return outcome.answer().orElseThrow();
  }

  private static List<Problem> problems(String file) {
    BenchReader.Outcome outcome = new BenchReader().answer(file.getBytes(StandardCharsets.UTF_8));
    assertThat(outcome.answer()).isEmpty();
    return outcome.problems();
  }
}
