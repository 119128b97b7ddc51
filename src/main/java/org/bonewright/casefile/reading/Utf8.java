package org.bonewright.casefile.reading;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.util.Locale;
import java.util.Optional;

/** The bytes of a file as text: UTF-8, with or without a byte order mark, and nothing else. */
final class Utf8 {

  /** Most bytes that a file may have: 4 MB. */
  static final int MOST_BYTES = 4 * 1024 * 1024;

  private static final String EXPECTED = "a JSON text in UTF-8";

  private Utf8() {}

  /** Return the text without its byte order mark; empty, with the problem noted, if it is unfit. */
  static Optional<String> decode(byte[] bytes, Problems problems) {
    if (bytes.length > MOST_BYTES) {
      return refuse(problems, "a file of " + megabytes(bytes.length), "at most 4.0 MB");
    }
    if (isUtf16(bytes)) {
      return refuse(problems, "a text in UTF-16", EXPECTED);
    }
    CharBuffer text = CharBuffer.allocate(bytes.length);
    ByteBuffer rest = ByteBuffer.wrap(bytes);
    CoderResult result =
        UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(rest, text, true);
    text.flip();
    if (result.isError()) {
      Problem problem =
          Problem.error("", "the byte " + hex(rest.get()) + ", which is no UTF-8 text", EXPECTED)
              .withHint("Save the file again with the encoding UTF-8.");
      problems.add(problem.at(Place.of(text, text.length())));
      return Optional.empty();
    }
    String whole = text.toString();
    String plain = whole.startsWith("\uFEFF") ? whole.substring(1) : whole;
    return plain.isBlank() ? refuse(problems, "an empty file", EXPECTED) : Optional.of(plain);
  }

  /** JSON begins with two ASCII characters: a zero byte or a mark among them means UTF-16 or 32. */
  private static boolean isUtf16(byte[] bytes) {
    if (bytes.length < 2) {
      return false;
    }
    int mark = ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
    return mark == 0xFEFF || mark == 0xFFFE || bytes[0] == 0 || bytes[1] == 0;
  }

  private static Optional<String> refuse(Problems problems, String found, String allowed) {
    problems.add(Problem.error("", found, allowed));
    return Optional.empty();
  }

  private static String megabytes(int bytes) {
    return String.format(Locale.ROOT, "%.1f MB", Math.ceil(bytes / 1024.0 / 102.4) / 10);
  }

  private static String hex(byte value) {
    return String.format("0x%02X", value);
  }
}
