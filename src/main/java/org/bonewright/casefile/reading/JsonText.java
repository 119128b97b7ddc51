package org.bonewright.casefile.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/**
 * Strict JSON text as a tree of parts.
 *
 * <p>The tree is built without recursion, so that no nesting can exhaust the stack. Names given
 * twice, names and numbers of absurd length and halves of characters are noted and reading goes on;
 * a fault of the grammar ends it, because what follows could only be guessed.
 */
final class JsonText {

  /** Deepest nesting of groups and lists. */
  static final int DEEPEST = 64;

  /** Most characters that the name of a field may have. */
  static final int LONGEST_NAME = 200;

  /** Most characters that a number may be written with. */
  static final int LONGEST_NUMBER = 100;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST + 1)
                  .maxNumberLength(Utf8.MOST_BYTES)
                  .maxStringLength(Utf8.MOST_BYTES)
                  .maxNameLength(Utf8.MOST_BYTES)
                  .build())
          .build();

  /** A group or list whose closing bracket has not been met yet. */
  private static final class Open {
    final String pointer;
    final Place place;
    final boolean isGroup;
    final Map<String, Part> fields = new LinkedHashMap<>();
    final List<Part> elements = new ArrayList<>();
    String name = "";
    boolean repeated;

    Open(String pointer, Place place, boolean isGroup) {
      this.pointer = pointer;
      this.place = place;
      this.isGroup = isGroup;
    }

    String pointerToNext() {
      return Problem.pointer(pointer, isGroup ? name : Integer.toString(elements.size()));
    }

    void take(Part part) {
      if (!isGroup) {
        elements.add(part);
      } else if (!repeated) {
        fields.put(name, part);
      }
    }

    Part close() {
      return isGroup ? new Part.Group(place, fields) : new Part.Row(place, elements);
    }

    String inWords() {
      return (isGroup ? "{" : "[") + " of line " + place.line();
    }
  }

  private final String text;
  private final Problems problems;
  private final Deque<Open> open = new ArrayDeque<>();

  private JsonText(String text, Problems problems) {
    this.text = text;
    this.problems = problems;
  }

  /** Return the tree of a text; empty, with the problem noted, if its grammar is at fault. */
  static Optional<Part> parse(String text, Problems problems) {
    return new JsonText(text, problems).parse();
  }

  private Optional<Part> parse() {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text.toCharArray())) {
      Optional<Part> root = Optional.empty();
      while (root.isEmpty()) {
        JsonToken token = parser.nextToken();
        if (token.isStructStart() && open.size() == DEEPEST) {
          problems.add(tooDeep().at(placeOf(parser.currentTokenLocation())));
          return Optional.empty();
        }
        root = step(parser, token);
      }
      return nothingFollows((int) parser.currentLocation().getCharOffset())
          ? root
          : Optional.empty();
    } catch (JacksonException exception) {
      problems.add(fault(exception));
      return Optional.empty();
    }
  }

  private Problem fault(JacksonException exception) {
    Open innermost = open.peek();
    String pointer = innermost == null ? "" : innermost.pointer;
    List<String> brackets = open.stream().map(Open::inWords).toList();
    return new JsonFault(text).of(exception, pointer, brackets);
  }

  /** Take one token into the tree and return the tree if it is complete now. */
  private Optional<Part> step(JsonParser parser, JsonToken token) {
    Place place = placeOf(parser.currentTokenLocation());
    if (token.isStructStart()) {
      open.push(new Open(pointer(), place, token == JsonToken.START_OBJECT));
      return Optional.empty();
    }
    if (token == JsonToken.PROPERTY_NAME) {
      name(parser.currentName(), place);
      return Optional.empty();
    }
    Part part = token.isStructEnd() ? open.pop().close() : scalar(parser, token, place);
    if (open.isEmpty()) {
      return Optional.of(part);
    }
    open.element().take(part);
    return Optional.empty();
  }

  private void name(String name, Place place) {
    Open group = open.element();
    group.name = name;
    group.repeated = name.length() > LONGEST_NAME || group.fields.containsKey(name);
    if (name.length() > LONGEST_NAME) {
      note(
          group.pointer,
          "a field's name of " + name.length() + " characters",
          "at most " + LONGEST_NAME,
          place);
    } else if (group.repeated) {
      note(
          pointer(),
          "the field " + Quoted.of(name) + " once more",
          "every field once; the first was kept",
          place);
    }
  }

  private Part scalar(JsonParser parser, JsonToken token, Place place) {
    return switch (token) {
      case VALUE_TRUE, VALUE_FALSE -> new Part.Flag(place, token == JsonToken.VALUE_TRUE);
      case VALUE_NULL -> new Part.Nothing(place);
      case VALUE_STRING -> text(parser.getString(), place);
      default -> figure(parser.getString(), place);
    };
  }

  private Part text(String value, Place place) {
    if (value
        .codePoints()
        .anyMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)) {
      note(pointer(), "half a character: a lone surrogate escape", "whole characters", place);
      return new Part.Spoilt(place);
    }
    return new Part.Text(place, value);
  }

  private Part figure(String written, Place place) {
    if (written.length() > LONGEST_NUMBER) {
      note(
          pointer(),
          "a number written with " + written.length() + " characters",
          "at most " + LONGEST_NUMBER,
          place);
      return new Part.Spoilt(place);
    }
    double value = Double.parseDouble(written);
    if (Double.isInfinite(value)) {
      note(pointer(), "the number " + written, "a number of a size that occurs", place);
      return new Part.Spoilt(place);
    }
    return new Part.Figure(place, value, written);
  }

  private boolean nothingFollows(int end) {
    int index = end;
    while (index < text.length() && " \t\r\n".indexOf(text.charAt(index)) >= 0) {
      index++;
    }
    if (index < text.length()) {
      note(
          "",
          "more text after the end",
          "one group of fields and nothing after it",
          Place.of(text, index));
    }
    return index >= text.length();
  }

  private Problem tooDeep() {
    return Problem.error(
        "", "groups and lists nested more than " + DEEPEST + " deep", "at most " + DEEPEST);
  }

  private void note(String pointer, String found, String allowed, Place place) {
    problems.add(Problem.error(pointer, found, allowed).at(place));
  }

  /** Return the pointer to the value that comes next. */
  private String pointer() {
    Open innermost = open.peek();
    return innermost == null ? "" : innermost.pointerToNext();
  }

  private static Place placeOf(TokenStreamLocation location) {
    return new Place(location.getLineNr(), location.getColumnNr());
  }
}
