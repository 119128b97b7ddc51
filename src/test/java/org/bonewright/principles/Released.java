package org.bonewright.principles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * The principles of one version of the rules. Released versions lie in files. The file of an older
 * one holds only what the next changed, and the ids of what that left as it was.
 *
 * @param version the version
 * @param principles its principles, by id
 */
record Released(String version, Map<String, ReleasedPrinciple> principles) {

  private static final Path FOLDER = Path.of("src/test/resources/released");
  private static final String ENDING = ".json";
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /**
   * What a file holds.
   *
   * @param same ids of the principles that the next version has unchanged
   * @param principles the rest
   */
  private record Stored(List<String> same, Map<String, ReleasedPrinciple> principles) {}

  /** Return the rules as they are now. */
  static Released present() {
    RuleSet rules = RuleSet.built();
    Map<String, List<RuleText>> texts =
        RuleText.all(RuleFiles.built()).stream()
            .collect(Collectors.groupingBy(RuleText::principle));
    Map<String, ReleasedPrinciple> principles = new TreeMap<>();
    for (Card card : rules.cards()) {
      principles.put(
          card.id(),
          ReleasedPrinciple.of(card, rules::definition, texts.getOrDefault(card.id(), List.of())));
    }
    return new Released(rules.version(), principles);
  }

  /** Return every version that was released, the latest first. */
  static List<Released> all() {
    List<Released> all = new ArrayList<>();
    Map<String, ReleasedPrinciple> next = Map.of();
    for (String version : versions()) {
      Stored stored = stored(version);
      Map<String, ReleasedPrinciple> principles = new TreeMap<>(stored.principles());
      for (String id : stored.same()) {
        principles.put(id, next.get(id));
      }
      all.add(new Released(version, principles));
      next = principles;
    }
    return all;
  }

  /** Write this version down as released, and leave of the one before only what differs. */
  void release() {
    List<Released> before =
        all().stream().filter(released -> !released.version().equals(version)).toList();
    write(new Stored(List.of(), principles));
    if (!before.isEmpty()) {
      before.get(0).write(before.get(0).without(principles));
    }
  }

  private Stored without(Map<String, ReleasedPrinciple> next) {
    Map<String, ReleasedPrinciple> rest = new TreeMap<>(principles);
    rest.entrySet().removeIf(entry -> entry.getValue().equals(next.get(entry.getKey())));
    return new Stored(
        principles.keySet().stream().filter(id -> !rest.containsKey(id)).toList(), rest);
  }

  private void write(Stored stored) {
    try {
      Files.createDirectories(FOLDER);
      Files.writeString(
          file(version),
          stored.principles().entrySet().stream()
              .map(e -> "    \"" + e.getKey() + "\": " + MAPPER.writeValueAsString(e.getValue()))
              .collect(
                  Collectors.joining(
                      ",\n",
                      "{\n  \"same\": "
                          + MAPPER.writeValueAsString(stored.same())
                          + ",\n  \"principles\": {\n",
                      "\n  }\n}\n")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stored stored(String version) {
    try {
      return MAPPER.readValue(Files.readString(file(version)), new TypeReference<Stored>() {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path file(String version) {
    return FOLDER.resolve(version + ENDING);
  }

  private static List<String> versions() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(ENDING))
          .map(name -> name.substring(0, name.length() - ENDING.length()))
          .sorted(Comparator.comparing(Released::numbers, Arrays::compare).reversed())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int[] numbers(String version) {
    return Arrays.stream(version.split("\\.", -1)).mapToInt(Integer::parseInt).toArray();
  }
}
