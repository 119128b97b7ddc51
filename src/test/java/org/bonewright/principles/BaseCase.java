package org.bonewright.principles;

import jakarta.json.Json;
import jakarta.json.JsonArray;
import jakarta.json.JsonReader;
import jakarta.json.JsonStructure;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.reading.CaseReader;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Reading;

/**
 * A base case, on which examples make their changes.
 *
 * @param name name of its file
 * @param text what the file says
 */
record BaseCase(String name, String text) {

  private static final Path FOLDER = Path.of("cases", "bases");
  private static final String ENDING = ".json";
  private static final CaseReader READER = new CaseReader();

  static BaseCase of(String name) {
    try {
      return new BaseCase(name, Files.readString(FOLDER.resolve(name + ENDING)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Return every base case, in order of name. */
  static List<BaseCase> all() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(ENDING))
          .map(name -> of(name.substring(0, name.length() - ENDING.length())))
          .sorted(java.util.Comparator.comparing(BaseCase::name))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Return the case with the changes of a JSON Patch (RFC 6902). */
  BaseCase patched(String patch) {
    try (JsonReader before = Json.createReader(new StringReader(text));
        JsonReader changes = Json.createReader(new StringReader(patch))) {
      JsonStructure structure = before.read();
      JsonArray operations = changes.readArray();
      return new BaseCase(name, Json.createPatch(operations).apply(structure).toString());
    }
  }

  /** Return what reading the case gives. */
  Reading read() {
    return READER.read(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Return the case.
   *
   * @throws IllegalArgumentException if the reader refuses it
   */
  CaseFile caseFile() {
    Reading reading = read();
    return reading
        .caseFile()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    reading.problems().stream()
                        .map(Problem::inWords)
                        .collect(Collectors.joining("\n", name + "\n", ""))));
  }
}
