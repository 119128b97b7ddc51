package org.bonewright.casefile.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One small change to a file.
 *
 * @param place number of the value to change, counted through the file and round again
 * @param value number of the value to write, counted through the list of values and round again
 */
record Mutation(int place, Change change, int value) {

  /** What happens to the value. */
  enum Change {
    DELETE,
    REPLACE,
    RENAME,
    ADD
  }

  private static final JsonMapper JSON = JsonMapper.shared();

  private static final List<String> NAMES =
      List.of("kind", "min", "max", "Id", "id ", "$schema", "");

  /** Values to write, besides those near the limits of a schema. */
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "\"true\"",
          "0",
          "1",
          "-1",
          "3.0",
          "3.5",
          "1e2",
          "1E-7",
          "-0.0",
          "2147483648",
          "1e300",
          "359.99",
          "360",
          "\"\"",
          "\" \"",
          "\"\\u00a0\"",
          "\"x\"",
          "\"X y\"",
          "\"a-1\"",
          "\"a-1\\n\"",
          "\"a\\u0007\"",
          "\"12\"",
          "\"12 mm\"",
          "\"medial\"",
          "\"Medial\"",
          "\"unknown\"",
          "\"" + "a".repeat(40) + "\"",
          "\"" + "a".repeat(41) + "\"",
          "\"" + "a".repeat(2000) + "\"",
          "\"" + "a".repeat(2001) + "\"",
          "\"" + "\ud83d\ude00".repeat(2000) + "\"",
          "[]",
          "[[]]",
          "[null]",
          "[1]",
          "[\"a\"]",
          "[" + "1,".repeat(500) + "1]",
          "{}",
          "{\"min\": 1}",
          "{\"min\": 1, \"max\": 2}",
          "{\"min\": 2, \"max\": 1}",
          "{\"min\": 1, \"max\": 2, \"x\": 1}",
          "{\"min\": -1e9, \"max\": 1e9}",
          "{\"min\": null, \"max\": 1}",
          "{\"kind\": \"plate\"}");

  /** Return lists of one or two changes; more would hide each other. */
  static Arbitrary<List<Mutation>> few() {
    Arbitrary<Integer> numbers = Arbitraries.integers().between(0, 1_000_000);
    return Combinators.combine(numbers, Arbitraries.of(Change.class), numbers)
        .as(Mutation::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(2);
  }

  /** Make the change. */
  void applyTo(ObjectNode file, List<JsonNode> values) {
    List<JsonNode> holders = new ArrayList<>();
    List<String> names = new ArrayList<>();
    collect(file, holders, names);
    if (holders.isEmpty()) {
      return;
    }
    int index = place % holders.size();
    String name = names.get(index);
    if (holders.get(index) instanceof ObjectNode group) {
      applyTo(group, name, values);
    } else if (holders.get(index) instanceof ArrayNode row) {
      applyTo(row, Integer.parseInt(name), values);
    }
  }

  private void applyTo(ObjectNode group, String name, List<JsonNode> values) {
    switch (change) {
      case DELETE -> group.remove(name);
      case REPLACE -> group.set(name, newValue(values));
      case RENAME -> group.set(newName(name), group.remove(name));
      case ADD -> group.set(newName(name), newValue(values));
    }
  }

  private void applyTo(ArrayNode row, int index, List<JsonNode> values) {
    switch (change) {
      case DELETE -> row.remove(index);
      case REPLACE, RENAME -> row.set(index, newValue(values));
      case ADD -> row.insert(index, newValue(values));
    }
  }

  private String newName(String old) {
    int choice = value % (NAMES.size() + 2);
    return choice < NAMES.size()
        ? NAMES.get(choice)
        : choice == NAMES.size() ? old + "s" : old.toUpperCase(Locale.ROOT);
  }

  private JsonNode newValue(List<JsonNode> values) {
    return values.get(value % values.size()).deepCopy();
  }

  /** Return all values worth writing, among them numbers on and around every limit of a schema. */
  static List<JsonNode> values(JsonNode schema) {
    Stream<JsonNode> nearLimits =
        Stream.of("minimum", "maximum")
            .flatMap(keyword -> schema.findValues(keyword).stream())
            .map(JsonNode::doubleValue)
            .distinct()
            .flatMap(limit -> Stream.of(limit - 1, limit - 0.001, limit, limit + 0.001, limit + 1))
            .map(JSON::valueToTree);
    return Stream.concat(VALUES.stream().map(JSON::readTree), nearLimits).toList();
  }

  /** Return how many values a file has at all depths. */
  static int places(ObjectNode file) {
    List<JsonNode> holders = new ArrayList<>();
    collect(file, holders, new ArrayList<>());
    return holders.size();
  }

  private static void collect(JsonNode node, List<JsonNode> holders, List<String> names) {
    if (node instanceof ObjectNode group) {
      group.forEachEntry((name, below) -> collect(group, name, below, holders, names));
    }
    if (node instanceof ArrayNode row) {
      for (int i = 0; i < row.size(); i++) {
        collect(row, Integer.toString(i), row.get(i), holders, names);
      }
    }
  }

  private static void collect(
      JsonNode holder, String name, JsonNode below, List<JsonNode> holders, List<String> names) {
    holders.add(holder);
    names.add(name);
    collect(below, holders, names);
  }
}
