package org.bonewright.casefile.reading;

import org.bonewright.casefile.CaseFile;

/**
 * Reads case files.
 *
 * <p>A reader can be used any number of times and by several threads at once; making one costs more
 * than reading a file.
 */
public final class CaseReader {

  private final RecordReader<CaseFile> reader = new RecordReader<>(CaseFile.class);

  /** Return the case that the bytes of a file hold, or every problem in them. */
  public Reading read(byte[] bytes) {
    RecordReader.Outcome<CaseFile> outcome = reader.read(bytes);
    return new Reading(outcome.value(), outcome.problems());
  }
}
