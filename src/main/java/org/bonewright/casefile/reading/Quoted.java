package org.bonewright.casefile.reading;

/** A text from a file, made fit to stand in a message: in quotation marks, short, on one line. */
public final class Quoted {

  private static final int LONGEST = 60;

  private Quoted() {}

  /** Return the text in quotation marks; long ones are cut, control characters are escaped. */
  public static String of(String text) {
    StringBuilder shown = new StringBuilder("\"");
    int length = text.codePointCount(0, text.length());
    text.codePoints().limit(LONGEST).forEach(c -> append(shown, c));
    return shown.append(length > LONGEST ? "…\"" : "\"").toString();
  }

  private static void append(StringBuilder shown, int codePoint) {
    int type = Character.getType(codePoint);
    boolean invisible =
        type == Character.CONTROL
            || type == Character.FORMAT
            || type == Character.SURROGATE
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR;
    if (invisible) {
      shown.append(String.format("\\u%04x", codePoint));
    } else {
      shown.appendCodePoint(codePoint);
    }
  }
}
