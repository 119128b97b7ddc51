package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Map;

/** One value of a file as it was written, with the place where it begins. */
sealed interface Part {

  /** Return where the value begins. */
  Place place();

  /** Return what the value is, in a few plain words. */
  String inWords();

  /**
   * Fields with names: a JSON object.
   *
   * @param fields in the order of the file; of a name given twice, the first
   */
  record Group(Place place, Map<String, Part> fields) implements Part {
    @Override
    public String inWords() {
      return "a group of fields in braces";
    }
  }

  /** Values one after another: a JSON array. */
  record Row(Place place, List<Part> elements) implements Part {
    @Override
    public String inWords() {
      return elements.isEmpty() ? "an empty list" : "a list";
    }
  }

  /** A JSON string. */
  record Text(Place place, String value) implements Part {
    @Override
    public String inWords() {
      return value.isEmpty() ? "an empty text" : "the text " + Quoted.of(value);
    }
  }

  /**
   * A JSON number.
   *
   * @param written the digits as they stand in the file
   */
  record Figure(Place place, double value, String written) implements Part {
    @Override
    public String inWords() {
      return "the number " + written;
    }
  }

  /** {@code true} or {@code false}. */
  record Flag(Place place, boolean value) implements Part {
    @Override
    public String inWords() {
      return Boolean.toString(value);
    }
  }

  /** {@code null}. */
  record Nothing(Place place) implements Part {
    @Override
    public String inWords() {
      return "null";
    }
  }

  /** A value that cannot be used and whose problem is already reported. */
  record Spoilt(Place place) implements Part {
    @Override
    public String inWords() {
      return "an unusable value";
    }
  }
}
