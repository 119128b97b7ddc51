package org.bonewright.casefile.reading;

import java.util.Optional;
import java.util.regex.Pattern;
import org.bonewright.casefile.Written;
import org.jspecify.annotations.Nullable;

/** A text that is not blank, not too long, and written in its prescribed form if it has one. */
final class TextShape implements Shape {

  /** Most characters that a text may have. */
  static final int LONGEST = 2000;

  /**
   * The whole of a free text: one visible character at least and no control characters but tabs and
   * line breaks. Blanks are spelt out because languages differ in what they take for one.
   */
  static final String FREE =
      "[^\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f]*"
          + "[^\\u0000-\\u0020\\u007f\\u00a0\\u2000-\\u200b\\u2028\\u2029\\u202f\\u205f\\u3000\\ufeff]"
          + "[^\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f]*";

  private static final String FREE_IN_WORDS =
      "a text that is not blank, of at most " + LONGEST + " characters, none of them for control";

  private final Pattern whole;
  private final String inWords;

  TextShape(Optional<Written> written) {
    whole = Pattern.compile(pattern(written));
    inWords = written.map(form -> "a text: " + form.inWords()).orElse(FREE_IN_WORDS);
  }

  /** Return the expression that the whole text must match. */
  static String pattern(Optional<Written> written) {
    return written.map(Written::regex).orElse(FREE);
  }

  @Override
  public @Nullable Object read(Spot spot) {
    if (!(spot.part() instanceof Part.Text text)) {
      return spot.refuse(allowed());
    }
    String value = text.value();
    int length = value.codePointCount(0, value.length());
    if (length > LONGEST) {
      return spot.refuse("a text of " + length + " characters", allowed(), Optional.empty());
    }
    boolean fits = length > 0 && whole.matcher(value).matches();
    return fits ? value : spot.refuse(allowed());
  }

  @Override
  public String allowed() {
    return inWords;
  }
}
