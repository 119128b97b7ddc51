package org.bonewright.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bonewright.Timed;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.openjdk.jmh.annotations.Benchmark;

/** What a review of the demo with most operations costs in a warm program, forces remembered. */
public class ReviewBenchmark extends Timed {

  private static final Path LARGEST = Path.of("cases/demo/ulna-nineteen-years/case.json");

  private final byte[] bytes = bytes();
  private final CaseFile file = parse();
  private final Reviewer reviewer = new Reviewer(RuleSet.built());
  private final JudgedCase judged = new Judge(RuleSet.built()).judge(file);
  private final Review review = reviewer.review(file);

  private static byte[] bytes() {
    try {
      return Files.readAllBytes(LARGEST);
    } catch (IOException exception) {
      throw new UncheckedIOException(exception);
    }
  }

  /** Reading the file and checking that its parts agree. */
  @Benchmark
  public CaseFile parse() {
    return new Intake().read(bytes).caseFile().orElseThrow();
  }

  /** The account of the whole, from verdicts. */
  @Benchmark
  public Review account() {
    return reviewer.review(judged);
  }

  /** Verdicts and account. */
  @Benchmark
  public Review whole() {
    return reviewer.review(file);
  }

  /** The account as text. */
  @Benchmark
  public String text() {
    return new TextReport(false).render(review);
  }

  /** The account as JSON. */
  @Benchmark
  public String json() {
    return new JsonReport().render(review);
  }
}
