package org.bonewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.drawing.words.BoneJson;
import org.bonewright.drawing.words.BoneText;
import org.bonewright.drawing.words.FreeBone;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds drawings and accounts against the copies under src/test/resources/golden/drawing. After a
 * change that is meant, run with {@code -Dbless=true}, render what has changed and look at it
 * before it is committed.
 */
class GoldenDrawingTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden/drawing");

  private static final List<Path> CASES =
      List.of(
          CaseDrawings.DEMO,
          Path.of("cases/sound/tibia-fixator-then-nail-fresh.json"),
          Path.of("cases/sound/clavicle-wedge-lag-and-plate-fresh.json"),
          Path.of("cases/sound/femur-plate-over-nail-revision.json"),
          Path.of("src/test/resources/valid/plate-history.json"));

  /** Of these only the first plan is kept: it holds the tracks of everything before. */
  private static final List<String> FIRST_PLAN_OF =
      List.of(
          "clavicle-sound-plate-weak-host",
          "humerus-fourth-operation",
          "radius-graft-alone",
          "tibia-draining-sinus",
          "tibia-minimum-set",
          "ulna-nineteen-years");

  private static Stream<Subject> subjects() {
    return Stream.concat(
        CASES.stream()
            .map(CaseDrawings::read)
            .flatMap(file -> Subject.of(file).stream())
            .filter(subject -> subject.scope() != Subject.Scope.STAGE),
        FIRST_PLAN_OF.stream()
            .map(demo -> CaseDrawings.read(Path.of("cases/demo", demo, "case.json")))
            .map(GoldenDrawingTest::firstPlan));
  }

  private static Subject firstPlan(CaseFile file) {
    return Subject.of(file).stream()
        .filter(subject -> subject.scope() == Subject.Scope.PLAN)
        .findFirst()
        .orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> every_drawing_is_as_it_was() {
    return subjects()
        .flatMap(subject -> Stream.of(View.values()).map(view -> CaseDrawings.draw(subject, view)))
        .map(
            drawn ->
                DynamicTest.dynamicTest(
                    name(drawn), () -> compare(name(drawn), SvgWriter.write(drawn.picture()))));
  }

  private static String name(CaseDrawings.Drawn drawn) {
    return drawn.subject().caseFile().reference()
        + "."
        + drawn.subject().id()
        + "."
        + drawn.view().name().toLowerCase(Locale.ROOT)
        + ".svg";
  }

  @TestFactory
  Stream<DynamicTest> every_account_is_as_it_was() {
    CaseFile demo = CaseDrawings.read(CaseDrawings.DEMO);
    Standing now = new Standing(new Scene(Subject.now(demo), EveryMeasure.catalogue()));
    FreeBone free = FreeBone.of(now, List.of());
    return Stream.of(
        DynamicTest.dynamicTest(
            "text", () -> compare("demo-now.bone.txt", BoneText.render(now, free))),
        DynamicTest.dynamicTest(
            "json", () -> compare("demo-now.bone.json", BoneJson.render(now, free))));
  }

  private static void compare(String name, String shown) throws IOException {
    Path golden = GOLDEN.resolve(name);
    if (Boolean.getBoolean("bless")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, shown);
    }
    assertThat(shown).isEqualTo(Files.readString(golden));
  }
}
