package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.FailureMode;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * Measures of cases from which something was taken out. Where less is known no measure may fail,
 * and none may become more certain.
 */
class IgnoranceTest {

  /** Fields whose absence says something, or falls back on something else that the file says. */
  private static final String TELLS_BY_ITS_ABSENCE =
      String.join(
          "|",
          // A plan is closed: what it does not name is not planned.
          "/plans",
          "/plans/.*/(fixation|concept|aftercare|load|samples|biology|infectionCare|pieces"
              + "|resection|compression|removed)\\b.*",
          // What is taken out and names no part is taken out whole; what left no piece, left none.
          ".*/removed/\\d+/(left|bolts|pins|holes)",
          // Without a day an operation is only known to come after those before it, which may leave
          // nothing to place that would stay open; a finding without one is none.
          "/operations/\\d+/day",
          "/findings.*",
          // A table, or a dimension stated elsewhere, steps in: load, weight, bone, plate, screw,
          // canal.
          "/patient/weightKg",
          "/loads.*",
          "/bone/quality.*",
          "/bone/sections.*",
          ".*/(diameterMm|spacingMm|reamedMm)",
          // A screw that is not told to slant is taken as square to the bone.
          ".*/(exitMm|tiltDeg)",
          // A row without holes is no row, and a lag screw that names no plate hole lies beside it.
          ".*/screws/\\d+/at",
          ".*/(throughPlate|hole)",
          // What the broken ends leave after a cut depends on the pattern.
          "/injury/pattern",
          // Treatment without an operation, and metal of other operations, that are not on file are
          // taken as none.
          "/nonOperative",
          "/bone/otherImplants.*",
          // Without any operation there is nothing to judge.
          "/operations",
          // A line that is not said to be compressed is read from the concept; one that is not said
          // to be reduced, or cut, from the operation before.
          ".*/(compression|removed|resection|farDefectPercent|reduction)",
          // An operation is a mere stage, or failed, only where it says so.
          "/operations/\\d+/outcome(/result)?",
          // What counts as a revision still takes an operation that tells no implant as one that
          // fixed the bone.
          "/operations/\\d+/fixation");

  private static final List<CaseText> CASES = cases();

  private static List<CaseText> cases() {
    List<CaseText> cases = new ArrayList<>();
    cases.add(CaseText.plated().redone("plate-broken-at-empty-hole"));
    cases.add(CaseText.nailed().redone("bolt-broken"));
    MeasureCatalogueTest.caseFiles().stream()
        .map(IgnoranceTest::text)
        .filter(text -> text.read().caseFile().isPresent())
        .map(IgnoranceTest::withoutContradiction)
        .forEach(cases::add);
    return cases.stream().flatMap(text -> Stream.of(text, vague(text))).toList();
  }

  private static CaseText text(Path file) {
    try {
      return CaseText.of(Files.readString(file));
    } catch (IOException exception) {
      throw new UncheckedIOException(exception);
    }
  }

  /**
   * Return the case without what it says of the bone that screws bite, where that contradicts the
   * levels: these count then, and once they are not told the word of the file would count again.
   */
  private static CaseText withoutContradiction(CaseText text) {
    boolean contradicted =
        Subject.of(text.file()).stream()
            .map(subject -> new Scene(subject, Taken.CATALOGUE))
            .anyMatch(scene -> scene.certainly("hole-map", "contradicted"));
    CaseText left = text;
    for (String pointer : text.pointers()) {
      left = contradicted && pointer.endsWith("/track") ? left.without(pointer) : left;
    }
    return left;
  }

  /** Return the case with every number as a range, wherever one is allowed. */
  private static CaseText vague(CaseText exact) {
    CaseText vague = exact;
    for (String pointer : exact.pointers()) {
      JsonNode value = exact.tree().at(pointer);
      int last = pointer.lastIndexOf('/');
      if (value.isNumber() && !pointer.substring(last + 1).matches("\\d+")) {
        String range = "{min: " + value.asDouble() + ", max: " + (value.asDouble() + 1) + "}";
        CaseText changed =
            vague.at(
                pointer.substring(0, last), "{" + pointer.substring(last + 1) + ": " + range + "}");
        vague = changed.read().caseFile().isPresent() ? changed : vague;
      }
    }
    return vague;
  }

  /** Return the case without one field, if that leaves a case that can be read. */
  private static Optional<CaseText> without(CaseText text, String pointer) {
    return Optional.of(text)
        .filter(whole -> !whole.tree().at(pointer).isMissingNode())
        .map(whole -> whole.without(pointer))
        .filter(less -> less.read().caseFile().isPresent());
  }

  @Provide
  Arbitrary<CaseText> thinned() {
    return Arbitraries.of(CASES)
        .flatMap(
            text ->
                Arbitraries.randomValue(Function.<Random>identity())
                    .map(random -> thin(text, random)));
  }

  /** Return the case without a random share of its fields. */
  private static CaseText thin(CaseText text, Random random) {
    double share = random.nextDouble() * 0.4;
    CaseText left = text;
    for (String pointer : text.pointers()) {
      if (random.nextDouble() < share && pointer.chars().filter(c -> c == '/').count() > 1) {
        left = without(left, pointer).orElse(left);
      }
    }
    return left;
  }

  @Property(tries = 150, seed = "20260101")
  void every_reading_of_a_thinned_case_is_sound(@ForAll("thinned") CaseText text) {
    Sound.check(text.file());
  }

  @Property(tries = 60, seed = "20260102")
  void no_reading_becomes_more_certain_when_one_more_field_is_absent(
      @ForAll("thinned") CaseText text) {
    Map<String, Reading> before = readings(text.file());
    for (String pointer : text.pointers()) {
      if (!pointer.matches(TELLS_BY_ITS_ABSENCE)) {
        without(text, pointer).ifPresent(less -> lessCertain(before, less.file(), pointer));
      }
    }
  }

  @Test
  void no_reading_becomes_more_certain_when_only_one_of_two_modes_is_told() {
    for (int c = 0; c < CASES.size(); c += 2) {
      CaseText text = CASES.get(c);
      for (int i = 0; i < text.tree().path("operations").size(); i++) {
        String outcome = "/operations/" + i + "/outcome";
        for (FailureMode mode : FailureMode.values()) {
          if (!mode.isExact() && text.tree().at(outcome + "/mode").isString()) {
            mode.possible().forEach(exact -> lessCertain(text, outcome, exact, mode));
          }
        }
      }
    }
  }

  private static void lessCertain(
      CaseText text, String outcome, FailureMode exact, FailureMode either) {
    CaseText told = text.at(outcome, "{mode: '" + Words.written(exact) + "'}");
    CaseText less = text.at(outcome, "{mode: '" + Words.written(either) + "'}");
    if (told.read().caseFile().isPresent()) {
      lessCertain(readings(told.file()), less.file(), outcome + "/mode");
    }
  }

  /** What leaves nothing open cannot become more certain, and is not read again. */
  private static void lessCertain(Map<String, Reading> before, CaseFile less, String pointer) {
    for (Subject subject : Subject.of(less)) {
      Scene scene = new Scene(subject, Taken.CATALOGUE);
      for (Definition definition : Taken.CATALOGUE.definitions()) {
        String measure = name(definition, subject);
        Reading reading = before.get(measure);
        if (reading != null && width(reading) > 0) {
          Reading now = scene.read(definition.id());
          assertThat(width(now))
              .as("%s without %s: %s, then %s", measure, pointer, reading, now)
              .isGreaterThanOrEqualTo(width(reading) - 1e-9);
        }
      }
    }
  }

  /**
   * Return how much is left open: a range by its length, words by their number. What a model
   * samples is not held to it: its samples are drawn anew from the wider ranges.
   */
  private static double width(Reading reading) {
    if (reading instanceof Reading.Amount amount) {
      return amount.kind() == Kind.MODEL ? 0 : amount.max() - amount.min();
    }
    if (reading instanceof Reading.Word word) {
      return word.kind() == Kind.MODEL ? 0 : word.possible().size() - 1;
    }
    return reading instanceof Reading.Unknown ? Double.POSITIVE_INFINITY : 0;
  }

  private static Map<String, Reading> readings(CaseFile file) {
    Map<String, Reading> readings = new LinkedHashMap<>();
    for (Subject subject : Subject.of(file)) {
      Scene scene = new Scene(subject, Taken.CATALOGUE);
      Taken.CATALOGUE
          .definitions()
          .forEach(d -> readings.put(name(d, subject), scene.read(d.id())));
    }
    return readings;
  }

  private static String name(Definition definition, Subject subject) {
    return definition.id() + " of " + subject.id();
  }
}
