package org.bonewright.server.rest;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;

/** The bytes of a case that came with a request. */
final class CaseBody {

  /** A case file is some 20 kB; nothing that is meant as one comes near this. */
  static final int MOST_BYTES = 1024 * 1024;

  /** Says that a request carries more than is read. */
  static final class TooLarge extends Exception {
    private static final long serialVersionUID = 1L;
  }

  private CaseBody() {}

  /**
   * Read the body, and never more than is allowed.
   *
   * @throws TooLarge if it is larger
   * @throws IOException if the connection breaks
   */
  static byte[] of(HttpServletRequest request) throws IOException, TooLarge {
    if (request.getContentLengthLong() > MOST_BYTES) {
      throw new TooLarge();
    }
    try (InputStream in = request.getInputStream()) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new TooLarge();
      }
      return bytes;
    }
  }
}
