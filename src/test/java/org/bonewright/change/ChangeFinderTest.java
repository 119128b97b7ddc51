package org.bonewright.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.VerdictKind;
import org.bonewright.shelf.UsualShelf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class ChangeFinderTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final ChangeFinder FINDER = new ChangeFinder(RULES, UsualShelf.shelf());
  private static final Path DEMO = Path.of("cases/demo/femur-three-operations/case.json");
  private static final String STAGE = "plan-a/stage-1";

  private static ObjectNode stage() throws IOException {
    return (ObjectNode)
        JsonMapper.shared().readTree(Files.readAllBytes(DEMO)).at("/plans/0/stages/0");
  }

  private static StageMoves moves() throws IOException {
    return new StageMoves(
        new Setting(JsonMapper.shared().readTree(Files.readAllBytes(DEMO)), UsualShelf.shelf()));
  }

  private static List<PlanChange> changes(String principle, String subject) throws IOException {
    return FINDER.changes(Files.readAllBytes(DEMO), principle, subject);
  }

  @Test
  void the_missing_samples_of_the_demo_are_added_and_nothing_gets_worse() throws IOException {
    List<PlanChange> changes = changes("five-deep-samples", "plan-a");

    assertThat(changes).hasSize(1);
    PlanChange change = changes.get(0);
    assertThat(change.stage()).isEqualTo(STAGE);
    assertThat(change.words()).startsWith("five deep samples");
    assertThat(change.becomes()).isEqualTo(VerdictKind.MET);
    assertThat(change.worse()).isEmpty();
  }

  @Test
  void too_few_cortices_are_cleared_by_the_first_way_that_does() throws IOException {
    List<PlanChange> changes = changes("cortices-per-side-conventional", STAGE);

    assertThat(changes).isNotEmpty();
    assertThat(changes).allSatisfy(change -> assertThat(change.words()).isNotBlank());
  }

  @Test
  void nothing_is_offered_for_a_verdict_that_is_met_or_an_operation_of_the_past()
      throws IOException {
    assertThat(changes("plate-span-ratio", STAGE)).isEmpty();
    assertThat(changes("cortices-per-side-conventional", "op-1")).isEmpty();
    assertThat(changes("no-such-principle", STAGE)).isEmpty();
  }

  @Test
  void a_file_that_is_no_case_has_no_changes() {
    assertThat(FINDER.changes("[]".getBytes(java.nio.charset.StandardCharsets.UTF_8), "p", "s"))
        .isEmpty();
  }

  @Test
  void every_move_that_can_be_tried_is_a_move_of_a_card() {
    List<String> known =
        RULES.cards().stream().flatMap(card -> card.remedyMoves().stream()).distinct().toList();
    assertThat(known).containsAll(ChangeFinder.moves());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "add-screw",
        "bicortical-screw",
        "close-gap",
        "fewer-screws",
        "locking-screws",
        "longer-plate",
        "move-innermost-screws",
        "sampling",
        "screw-length",
        "shift-plate"
      })
  void no_way_of_a_move_touches_the_stage_that_it_starts_from(String move) throws IOException {
    ObjectNode before = stage();
    ObjectNode kept = before.deepCopy();

    List<Edit> edits = moves().of(move).orElseThrow().edits(before).toList();

    assertThat(edits).isNotEmpty();
    assertThat(before).isEqualTo(kept);
    assertThat(edits).extracting(Edit::words).doesNotHaveDuplicates();
  }

  @Test
  void a_longer_plate_keeps_its_middle_screws_where_they_are_in_the_bone() throws IOException {
    ObjectNode longer =
        moves().of("longer-plate").orElseThrow().edits(stage()).findFirst().orElseThrow().drawn();
    ObjectNode plate = StageParts.implant(longer, 0);

    assertThat(plate.path("holes").asInt()).isEqualTo(14);
    assertThat(plate.path("lengthMm").asDouble()).isEqualTo(252);
    assertThat(plate.path("place").path("firstHoleMm").asDouble()).isEqualTo(130);
    assertThat(plate.path("place").path("zoneBetweenHoles").toString()).isEqualTo("[8,9]");
    assertThat(StageParts.used(plate)).containsExactly(1, 5, 8, 9, 10, 11, 14);
  }

  @Test
  void a_screw_moved_to_another_hole_leaves_its_own() throws IOException {
    Edit moved =
        moves().of("move-innermost-screws").orElseThrow().edits(stage()).findFirst().orElseThrow();
    assertThat(StageParts.used(StageParts.implant(moved.drawn(), 0))).hasSize(7).doesNotContain(7);
  }
}
