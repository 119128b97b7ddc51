package org.bonewright.casefile.checking;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.json.Json;
import jakarta.json.JsonObject;
import jakarta.json.JsonReader;
import jakarta.json.JsonValue;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.casefile.reading.CaseReader;
import org.bonewright.casefile.reading.Problem;

/**
 * A valid case file in which some values were changed.
 *
 * @param json the file as it is now
 */
record Altered(JsonObject json) {

  private static final CaseReader READER = new CaseReader();

  static Altered minimal() {
    return valid("minimal");
  }

  static Altered plateHistory() {
    return valid("plate-history");
  }

  static Altered nailAndFixator() {
    return valid("nail-and-fixator");
  }

  static Altered valid(String name) {
    try (InputStream file = Altered.class.getResourceAsStream("/valid/" + name + ".json")) {
      return of(file.readAllBytes());
    } catch (IOException exception) {
      throw new UncheckedIOException(exception);
    }
  }

  /** Return a file with nothing changed yet. */
  static Altered of(byte[] bytes) {
    try (JsonReader reader = Json.createReader(new ByteArrayInputStream(bytes))) {
      return new Altered(reader.readObject());
    }
  }

  /** Put a value at a pointer, in place of what is there; {@code -} appends to a list. */
  Altered with(String pointer, String value) {
    return new Altered(Json.createPatchBuilder().add(pointer, parse(value)).build().apply(json));
  }

  /** Put a value at a pointer, in place of the element of a list that is there. */
  Altered replacing(String pointer, String value) {
    return new Altered(
        Json.createPatchBuilder().replace(pointer, parse(value)).build().apply(json));
  }

  /** Take out the value at a pointer. */
  Altered without(String pointer) {
    return new Altered(Json.createPatchBuilder().remove(pointer).build().apply(json));
  }

  private static JsonValue parse(String value) {
    try (JsonReader reader = Json.createReader(new StringReader(value))) {
      return reader.readValue();
    }
  }

  /** Return the file as text. */
  String text() {
    return json.toString();
  }

  /** Return what the checks object to, unless the structure is at fault already. */
  Optional<List<Problem>> ifReadable() {
    return READER.read(text().getBytes(UTF_8)).caseFile().map(new Consistency()::check);
  }

  /** Return what the checks object to in a file whose structure must be sound. */
  List<Problem> problems() {
    return ifReadable().orElseThrow(() -> new AssertionError("not even readable: " + text()));
  }

  /** Return severity and pointer of what the checks object to, such as {@code error /bone/side}. */
  List<String> objections() {
    return problems().stream()
        .map(
            problem -> problem.severity().name().toLowerCase(Locale.ROOT) + " " + problem.pointer())
        .toList();
  }
}
