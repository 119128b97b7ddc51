package org.bonewright.casefile.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Reads cabinets from files that are sound but for one change. */
final class Cabinets {

  private static final RecordReader<Cabinet> READER = new RecordReader<>(Cabinet.class);

  private Cabinets() {}

  /** Return what reading a text gave. */
  static RecordReader.Outcome<Cabinet> read(String text) {
    return READER.read(text.getBytes(UTF_8));
  }

  /** Return what reading a changed file gave. */
  static RecordReader.Outcome<Cabinet> read(Consumer<ObjectNode> change) {
    ObjectNode file = SoundFile.of(Cabinet.class);
    change.accept(file);
    return read(file.toString());
  }

  /** Return the cabinet of a changed file that must be accepted. */
  static Cabinet accepted(Consumer<ObjectNode> change) {
    RecordReader.Outcome<Cabinet> outcome = read(change);
    assertThat(outcome.problems()).isEmpty();
    return outcome.value().orElseThrow();
  }

  /** Return the only problem of a file whose one field has this value. */
  static Problem refused(String field, String value) {
    RecordReader.Outcome<Cabinet> outcome =
        read(file -> file.set(field, JsonMapper.shared().readTree(value)));
    assertThat(outcome.value()).isEmpty();
    assertThat(outcome.problems()).hasSize(1);
    return outcome.problems().get(0);
  }
}
