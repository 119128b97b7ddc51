package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Optional;

/**
 * Reads files of one kind into records: case files, site files. A fault of a file is a problem with
 * its place, never an exception.
 *
 * @param <T> the record of a whole file
 */
public final class RecordReader<T> {

  /**
   * What reading a file gave.
   *
   * @param value the file as records; absent when a problem refuses it
   * @param problems everything found, in the order of the file
   * @param parts every record of it that is whole, also where the file is refused
   */
  public record Outcome<T>(Optional<T> value, List<Problem> problems, List<ReadPart> parts) {}

  private final Class<T> type;
  private final Shape shape;

  /**
   * Make the reader of a kind of file.
   *
   * @param type the record of a whole file; see {@link Shapes} for what its components may be
   */
  public RecordReader(Class<T> type) {
    this.type = type;
    this.shape = Shapes.ofFile(type);
  }

  /** Return what the bytes say, or every problem in them. */
  public Outcome<T> read(byte[] bytes) {
    Problems problems = new Problems();
    Optional<T> value =
        Utf8.decode(bytes, problems)
            .flatMap(text -> JsonText.parse(text, problems))
            .map(part -> shape.read(new Spot(part, "", Optional.empty(), problems)))
            .map(type::cast)
            .filter(read -> !problems.haveErrors());
    return new Outcome<>(value, problems.inOrder(), problems.parts());
  }
}
