package org.bonewright.casefile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.BiFunction;
import tools.jackson.databind.node.ObjectNode;

/**
 * Plausible whole histories drawn at random: a case that comes with Bonewright, told otherwise.
 * Failures get another mode, an operation is done once more, infection or host turn bad, numbers
 * shift or become ranges, fields are left out, a plan is taken from the last operation. Each change
 * is kept only where the case can still be read and is consistent.
 */
public final class RandomHistory {

  private static final List<BiFunction<CaseText, Random, CaseText>> CHANGES =
      List.of(
          RandomHistory::mode,
          RandomHistory::onceMore,
          RandomHistory::infection,
          RandomHistory::host,
          RandomHistory::vitality,
          RandomHistory::grafted,
          RandomHistory::number,
          RandomHistory::range,
          RandomHistory::leftOut,
          RandomHistory::leftOut,
          RandomHistory::planned);

  private static final int MOST_CHANGES = 8;

  private final List<CaseText> told;

  private RandomHistory(List<CaseText> told) {
    this.told = told;
  }

  /** Return a generator on all cases that can be read. */
  public static RandomHistory ofAllCases() {
    return new RandomHistory(
        CaseFolder.files().stream()
            .map(RandomHistory::text)
            .filter(text -> text.read().caseFile().isPresent())
            .toList());
  }

  private static CaseText text(Path file) {
    try {
      return CaseText.of(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Return the next history. */
  public CaseText next(Random random) {
    CaseText text = told.get(random.nextInt(told.size()));
    int changes = random.nextInt(MOST_CHANGES);
    for (int i = 0; i < changes; i++) {
      CaseText changed = CHANGES.get(random.nextInt(CHANGES.size())).apply(text, random);
      text = changed.read().caseFile().isPresent() ? changed : text;
    }
    return text;
  }

  private static CaseText mode(CaseText text, Random random) {
    int operations = text.tree().path("operations").size();
    if (operations == 0) {
      return text;
    }
    String mode = any(FailureMode.values(), random);
    return text.at(
        "/operations/" + random.nextInt(operations),
        "{outcome: {result: 'failed', mode: '" + mode + "'}}");
  }

  /** The last operation once more, a hundred days later. */
  private static CaseText onceMore(CaseText text, Random random) {
    ObjectNode root = text.tree();
    int operations = root.path("operations").size();
    if (operations == 0 || operations > 4) {
      return text;
    }
    ObjectNode again = root.path("operations").get(operations - 1).deepCopy().asObject();
    again.put("id", "again-" + operations);
    double day = again.path("day").asDouble(0);
    again.put("day", day + 100 + random.nextInt(200));
    again.remove("outcome");
    root.withArray("/operations").add(again);
    return CaseText.of(root.toString());
  }

  private static CaseText infection(CaseText text, Random random) {
    String sign =
        List.of("sinus", "pus", "woundBreakdown", "lysis", "localSigns", "fever")
            .get(random.nextInt(6));
    String found = List.of("present", "absent", "unknown", "not-done").get(random.nextInt(4));
    return inLastFinding(text, "{infection: {" + sign + ": '" + found + "'}}");
  }

  private static CaseText host(CaseText text, Random random) {
    return inLastFinding(
        text,
        List.of(
                "{host: {smoking: 'current'}}",
                "{host: {diabetes: 'yes', hba1cPercent: 9}}",
                "{host: {vitaminDNgMl: 8}}",
                "{host: {albuminGL: 25}}",
                "{radiationGy: 60}",
                "{tumourSuspected: 'present'}")
            .get(random.nextInt(6)));
  }

  private static CaseText vitality(CaseText text, Random random) {
    String kind = any(Finding.Vitality.values(), random);
    return inLastFinding(text, "{diagnosis: 'nonunion', vitality: '" + kind + "'}");
  }

  private static CaseText grafted(CaseText text, Random random) {
    String graft = "[{kind: '" + any(Graft.Kind.values(), random) + "', volumeMl: 20}]";
    String stage = "/plans/0/stages/0";
    return text.tree().at(stage).isObject()
        ? text.at(stage, "{biology: " + (random.nextBoolean() ? graft : "[]") + "}")
        : text;
  }

  private static CaseText inLastFinding(CaseText text, String patch) {
    int findings = text.tree().path("findings").size();
    return findings == 0 ? text : text.at("/findings/" + (findings - 1), patch);
  }

  /** A number up to a fifth away from what it was. */
  private static CaseText number(CaseText text, Random random) {
    return atANumber(
        text, random, value -> String.valueOf(value * (0.8 + 0.4 * random.nextDouble())));
  }

  private static CaseText range(CaseText text, Random random) {
    return atANumber(
        text,
        random,
        value ->
            "{min: "
                + value
                + ", max: "
                + (value + (1 + Math.abs(value)) * random.nextDouble())
                + "}");
  }

  private static CaseText atANumber(
      CaseText text, Random random, java.util.function.DoubleFunction<String> to) {
    List<String> numbers =
        text.pointers().stream().filter(pointer -> text.tree().at(pointer).isNumber()).toList();
    if (numbers.isEmpty()) {
      return text;
    }
    String pointer = numbers.get(random.nextInt(numbers.size()));
    int last = pointer.lastIndexOf('/');
    String value = to.apply(text.tree().at(pointer).asDouble());
    return text.at(
        pointer.substring(0, last), "{" + pointer.substring(last + 1) + ": " + value + "}");
  }

  private static CaseText leftOut(CaseText text, Random random) {
    List<String> fields = text.pointers();
    return text.without(fields.get(random.nextInt(fields.size())));
  }

  /** The last operation as the plan, if there is none. */
  private static CaseText planned(CaseText text, Random random) {
    ObjectNode root = text.tree();
    int operations = root.path("operations").size();
    if (operations == 0 || (root.path("plans").size() > 0 && random.nextBoolean())) {
      return text;
    }
    ObjectNode stage =
        root.path("operations").get(random.nextInt(operations)).deepCopy().asObject();
    stage.put("id", "stage-1");
    stage.remove("day");
    stage.remove("outcome");
    root.putArray("plans").addObject().put("id", "plan-r").putArray("stages").add(stage);
    return CaseText.of(root.toString());
  }

  private static <T extends Enum<T>> String any(T[] values, Random random) {
    return values[random.nextInt(values.length)].name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
