package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.RecordReader;

/** Reads bench files and answers them. */
public final class BenchReader {

  private final RecordReader<BenchFile> reader = new RecordReader<>(BenchFile.class);

  /**
   * What came of a file.
   *
   * @param answer what the model says; absent where a problem refuses the file
   * @param problems everything found
   */
  public record Outcome(Optional<BenchAnswer> answer, List<Problem> problems) {}

  /** Return the answer to the bytes of a file, or every problem in them. */
  public Outcome answer(byte[] bytes) {
    RecordReader.Outcome<BenchFile> read = reader.read(bytes);
    if (read.value().isEmpty()) {
      return new Outcome(Optional.empty(), read.problems());
    }
    return answer(read.value().get());
  }

  private static Outcome answer(BenchFile file) {
    if (file instanceof BenchFile.Construct construct) {
      Built built = new Built(construct);
      return built
          .bone()
          .map(bone -> new Outcome(Optional.of(ConstructAnswer.of(construct, bone)), List.of()))
          .orElseGet(() -> new Outcome(Optional.empty(), built.problems()));
    }
    List<Problem> problems = SingleQuestions.problems(file);
    return problems.isEmpty()
        ? new Outcome(Optional.of(SingleQuestions.answer(file)), List.of())
        : new Outcome(Optional.empty(), problems);
  }
}
