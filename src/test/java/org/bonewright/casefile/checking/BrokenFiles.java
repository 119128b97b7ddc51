package org.bonewright.casefile.checking;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bonewright.casefile.reading.Problem;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The folder of broken files with its table.
 *
 * @param all the files in the order of the table
 */
record BrokenFiles(List<BrokenFile> all) {

  static final Path FOLDER = Path.of("src/test/resources/broken");
  static final String TABLE = "broken.yaml";

  /** By which step a file is refused. */
  enum Refused {
    TEXT,
    STRUCTURE,
    CONSISTENCY,
    NOTHING;

    /** Return whether the file can be read as a case. */
    boolean isBehindReading() {
      return this == CONSISTENCY || this == NOTHING;
    }
  }

  /** One row of the table. */
  record BrokenFile(String name, Refused refused, boolean schemaCannotTell, List<Said> says) {

    static BrokenFile of(String name, JsonNode row) {
      List<Said> says = new ArrayList<>();
      row.get("says").forEach(said -> says.add(Said.of(said)));
      return new BrokenFile(
          name,
          Refused.valueOf(row.get("refused").asString().toUpperCase(Locale.ROOT)),
          row.has("schema"),
          says);
    }

    byte[] bytes() {
      try {
        return Files.readAllBytes(FOLDER.resolve(name));
      } catch (IOException exception) {
        throw new UncheckedIOException(exception);
      }
    }
  }

  /** One thing that is said about a file. */
  record Said(String place, String found, String allowed, String hint) {

    static Said of(JsonNode said) {
      String severity = said.has("error") ? "error" : "warning";
      return new Said(
          severity + " " + said.get(severity).asString(),
          said.get("found").asString(),
          said.get("allowed").asString(),
          said.path("hint").asString(""));
    }

    /** Return severity and pointer of a problem as in the table. */
    static String placeOf(Problem problem) {
      return problem.severity().name().toLowerCase(Locale.ROOT) + " " + problem.pointer();
    }
  }

  static BrokenFiles read() {
    List<BrokenFile> all = new ArrayList<>();
    new YAMLMapper()
        .readTree(FOLDER.resolve(TABLE).toFile())
        .properties()
        .forEach(row -> all.add(BrokenFile.of(row.getKey(), row.getValue())));
    return new BrokenFiles(List.copyOf(all));
  }
}
