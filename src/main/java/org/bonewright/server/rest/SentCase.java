package org.bonewright.server.rest;

import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Reading;

/** Reads and checks a case that came with a request. */
final class SentCase {

  private SentCase() {}

  /**
   * Return the case.
   *
   * @throws UnusableCase if it has an error; the exception lists every problem
   */
  static CaseFile of(byte[] body) throws UnusableCase {
    Reading reading = new Intake().read(body);
    return reading.caseFile().orElseThrow(() -> new UnusableCase(reading.problems()));
  }
}
