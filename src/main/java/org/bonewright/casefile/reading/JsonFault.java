package org.bonewright.casefile.reading;

import java.util.List;
import tools.jackson.core.JacksonException;

/** Puts what a JSON parser stumbled over into words for the person who wrote the text. */
final class JsonFault {

  private static final String NON_NUMBER = "Non-standard token";
  private static final String VALUE =
      "a text in double quotes, a number, true, false, null, a list or a group of fields";

  /**
   * What a parser's message means; the first that is contained in it is taken.
   *
   * @param found what was found; empty for the character at that place
   */
  private record Wording(String message, String found, String allowed) {}

  private static final List<Wording> WORDINGS =
      List.of(
          new Wording(
              "Illegal unquoted character",
              "a line break or control character inside a text",
              "an escape such as \\n, or the closing quotation mark before it"),
          new Wording("Leading zeroes", "a number with a leading zero", "a number such as 0.5"),
          new Wording("plus sign", "a number with a plus sign", "the number without it"),
          new Wording("in numeric value", "an unfinished number", "a number such as 0.5"),
          new Wording(
              "Unrecognized character escape",
              "an unknown escape",
              "one of \\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u"),
          new Wording("escape sequence", "an unfinished escape", "\\u and four hexadecimal digits"),
          new Wording("no open", "a closing bracket too many", VALUE),
          new Wording("close marker", "a closing bracket of the wrong kind", "} for { and ] for ["),
          new Wording("colon", "", "a colon between a field's name and its value"),
          new Wording("separate", "", "a comma between two entries"),
          new Wording("property name", "", "a field's name in double quotes"),
          new Wording("", "", VALUE));

  private final String text;

  JsonFault(String text) {
    this.text = text;
  }

  /**
   * Return the problem behind an exception of the parser, the open brackets named if it is the end.
   */
  Problem of(JacksonException exception, String pointer, List<String> open) {
    int index = Math.max(0, (int) exception.getLocation().getCharOffset());
    if (endsAt(index)) {
      return truncated(pointer, open);
    }
    String message = exception.getOriginalMessage();
    int begin = message.startsWith(NON_NUMBER) ? beginOfWord(index) : index;
    return wording(message, index, pointer).at(Place.of(text, begin));
  }

  private int beginOfWord(int end) {
    int begin = end;
    while (begin > 0
        && (Character.isLetter(text.charAt(begin - 1)) || text.charAt(begin - 1) == '-')) {
      begin--;
    }
    return begin;
  }

  /** Return whether nothing is left but blanks or the beginning of a word or number. */
  private boolean endsAt(int index) {
    String rest = text.substring(Math.min(index, text.length())).strip();
    return rest.matches("[-+.eE0-9]*")
        || List.of("true", "false", "null").stream().anyMatch(word -> word.startsWith(rest));
  }

  private Problem truncated(String pointer, List<String> open) {
    String still = open.isEmpty() ? "" : " while still open: " + String.join(", ", open);
    return Problem.error(pointer, "the end of the file" + still, "a complete JSON text")
        .withHint("The file seems to have been cut off.")
        .at(Place.of(text, text.stripTrailing().length()));
  }

  private Problem wording(String message, int index, String pointer) {
    char at = text.charAt(index);
    if (message.startsWith(NON_NUMBER)) {
      return Problem.error(pointer, "NaN or Infinity", "a number")
          .withHint("Leave a value out when it is not known.");
    }
    if (message.startsWith("Unrecognized token")) {
      return Problem.error(pointer, "the word " + Quoted.of(wordAt(index)), VALUE);
    }
    if (message.startsWith("Unexpected character")) {
      if (at == '/' || at == '#') {
        return Problem.error(pointer, "a comment", "plain JSON, which has no comments");
      }
      if ("'‘’“”„«»`".indexOf(at) >= 0) {
        return Problem.error(pointer, "the quotation mark " + at, "the plain double quote \"");
      }
      if ((at == '}' || at == ']') && text.substring(0, index).strip().endsWith(",")) {
        return Problem.error(
            pointer, "a comma after the last entry", "commas only between entries");
      }
    }
    Wording fitting =
        WORDINGS.stream().filter(w -> message.contains(w.message())).findFirst().orElseThrow();
    String found = fitting.found().isEmpty() ? characterAt(index) : fitting.found();
    return Problem.error(pointer, found, fitting.allowed());
  }

  private String characterAt(int index) {
    if (text.charAt(index) == '"') {
      return "a quotation mark";
    }
    return "the character " + Quoted.of(text.substring(index, text.offsetByCodePoints(index, 1)));
  }

  private String wordAt(int index) {
    int end = index;
    while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
      end++;
    }
    return text.substring(index, end);
  }
}
