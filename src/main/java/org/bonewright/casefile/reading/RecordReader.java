package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Optional;

/**
 * Reads files of one kind into records.
 *
 * @param <T> the record of a whole file
 */
final class RecordReader<T> {

  /**
   * What reading a file gave.
   *
   * @param value the file as records; absent when a problem refuses it
   * @param problems everything found, in the order of the file
   */
  record Outcome<T>(Optional<T> value, List<Problem> problems) {}

  private final Class<T> type;
  private final Shape shape;

  RecordReader(Class<T> type) {
    this.type = type;
    this.shape = Shapes.ofFile(type);
  }

  /** Return what the bytes say, or every problem in them. */
  Outcome<T> read(byte[] bytes) {
    Problems problems = new Problems();
    Optional<T> value =
        Utf8.decode(bytes, problems)
            .flatMap(text -> JsonText.parse(text, problems))
            .map(part -> shape.read(new Spot(part, "", Optional.empty(), problems)))
            .map(type::cast)
            .filter(read -> !problems.haveErrors());
    return new Outcome<>(value, problems.inOrder());
  }
}
