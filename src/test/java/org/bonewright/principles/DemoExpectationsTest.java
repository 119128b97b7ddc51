package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Holds the verdicts on each demonstration case to what was written down for it before any code
 * judged it.
 */
class DemoExpectationsTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Map<String, VerdictKind> LISTS =
      Map.of(
          "firstUnmet", VerdictKind.UNMET,
          "alsoUnmet", VerdictKind.UNMET,
          "met", VerdictKind.MET,
          "unknown", VerdictKind.UNKNOWN,
          "notApplicable", VerdictKind.NOT_APPLICABLE);

  @TestFactory
  Stream<DynamicTest> verdicts() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases", "demo"))) {
      return folders
          .filter(folder -> Files.exists(folder.resolve("expected.yaml")))
          .sorted()
          .toList()
          .stream()
          .flatMap(DemoExpectationsTest::verdicts);
    }
  }

  private static Stream<DynamicTest> verdicts(Path folder) {
    JsonNode expected = new YAMLMapper().readTree(read(folder.resolve("expected.yaml")));
    Set<String> waiting = waiting(expected);
    CaseFile caseFile =
        new BaseCase(folder.toString(), read(folder.resolve("case.json"))).caseFile();
    JudgedCase judged = new Judge(RULES).judge(caseFile);
    List<DynamicTest> tests = new ArrayList<>();
    tests.add(
        dynamicTest(
            folder.getFileName() + ": principles that it waits for do not exist yet",
            () -> assertThat(waiting).noneMatch(id -> RULES.card(id).isPresent())));
    for (Operation operation : caseFile.operations()) {
      JsonNode lists = expected.path("operations").path(operation.id());
      tests.add(test(folder, judged, operation.id(), operation.id(), expected(lists, waiting)));
    }
    for (Plan plan : caseFile.plans()) {
      String stage = plan.id() + "/" + plan.stages().get(plan.stages().size() - 1).id();
      tests.add(
          test(folder, judged, plan.id(), stage, expected(expected.path(plan.id()), waiting)));
    }
    return tests.stream();
  }

  private static DynamicTest test(
      Path folder, JudgedCase judged, String whole, String step, Map<String, String> expected) {
    return dynamicTest(
        folder.getFileName() + ": " + whole,
        () -> {
          Map<String, String> actual = new TreeMap<>();
          StringBuilder readings = new StringBuilder();
          for (String id : expected.keySet()) {
            Card card = RULES.card(id).orElseThrow();
            String subject = card.subject() == Card.SubjectKind.OPERATION ? step : whole;
            List<Judgement> found =
                judged.judgements().getOrDefault(subject, List.of()).stream()
                    .filter(judgement -> judgement.card().equals(card))
                    .toList();
            actual.put(id, kind(found).word());
            found.forEach(j -> readings.append(id).append(Shorthand.of(j.readings())));
          }
          assertThat(actual).as(readings.toString()).isNotEmpty().isEqualTo(expected);
        });
  }

  /** A principle that does not concern the subject counts as not applicable. */
  private static VerdictKind kind(List<Judgement> found) {
    return found.isEmpty() ? VerdictKind.NOT_APPLICABLE : found.get(0).verdict().kind();
  }

  /** Ids that the paper judged before there was a card for them. */
  private static Set<String> waiting(JsonNode expected) {
    return expected.path("waiting").values().stream()
        .map(JsonNode::asString)
        .collect(Collectors.toSet());
  }

  private static Map<String, String> expected(JsonNode lists, Set<String> waiting) {
    Map<String, String> expected = new TreeMap<>();
    LISTS.forEach(
        (list, kind) -> {
          for (JsonNode id : lists.path(list).values()) {
            assertThat(expected.put(id.asString(), kind.word()))
                .as("other list with %s", id.asString())
                .isNull();
          }
        });
    expected.keySet().removeAll(waiting);
    return expected;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
