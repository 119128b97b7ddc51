package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.principles.GivenValue;

/** Says values of measures, and names out of files, in words. */
final class Wordings {

  /** A number and its unit stay on one line. */
  private static final String NO_BREAK = "\u00a0";

  private Wordings() {}

  /** Return a name of a file as words: {@code bridgedLeast}, "bridged least". */
  static String name(String written) {
    return written
        .replaceAll("([a-z0-9])([A-Z])", "$1 $2")
        .replace('-', ' ')
        .toLowerCase(Locale.ROOT);
  }

  /** Return words with a capital at their head. */
  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Return a title as it stands within a sentence. */
  static String within(String title) {
    boolean shortForm = title.length() > 1 && Character.isUpperCase(title.charAt(1));
    return shortForm ? title : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }

  /** Return words as a sentence: with a full stop. */
  static String sentence(String words) {
    String whole = capital(words.strip());
    return whole.matches("(?s).*[.?!]") ? whole : whole + ".";
  }

  /** Return a list as it is said: "a, b or c". */
  static String either(List<String> words) {
    return listed(words, " or ");
  }

  /** Return a list as it is said: "a, b and c". */
  static String all(List<String> words) {
    return listed(words, " and ");
  }

  private static String listed(List<String> words, String last) {
    return words.size() < 2
        ? String.join("", words)
        : String.join(", ", words.subList(0, words.size() - 1))
            + last
            + words.get(words.size() - 1);
  }

  /** Return which values a measure can have. */
  static String domain(Definition measure) {
    if (measure.domain() instanceof Domain.Numbers numbers) {
      List<String> parts = new ArrayList<>();
      parts.add(numbers.step() == 1 ? "whole number" : "number");
      if (!numbers.shownUnit().isEmpty()) {
        parts.add("in " + numbers.shownUnit());
      }
      return String.join(" ", parts) + bounds(numbers);
    }
    return either(((Domain.Words) measure.domain()).words());
  }

  private static String bounds(Domain.Numbers numbers) {
    boolean above = Double.isFinite(numbers.min());
    boolean below = Double.isFinite(numbers.max());
    if (above && below) {
      return ", " + number(numbers.min()) + " to " + number(numbers.max());
    }
    return above ? ", " + number(numbers.min()) + " or more" : ", may lie below 0";
  }

  /** Return a number with its unit. */
  static String number(double value, Definition measure) {
    String unit = measure.shownUnit();
    String gap = unit.isEmpty() || unit.equals("°") ? "" : NO_BREAK;
    return number(value) + gap + unit;
  }

  static String number(double value) {
    return Dimension.number(value);
  }

  /** Return what an example gives for a measure. */
  static String given(GivenValue value, Definition measure) {
    if (value instanceof GivenValue.Amount number) {
      return number.from() == number.to()
          ? number(number.from(), measure)
          : number(number.from()) + " to " + number(number.to(), measure);
    }
    if (value instanceof GivenValue.Words words) {
      return either(words.words().stream().map(Wordings::name).toList());
    }
    if (value instanceof GivenValue.Sampled sampled) {
      return sampled.percent().entrySet().stream()
          .map(
              part ->
                  part.getValue()
                      + NO_BREAK
                      + "% of the samples at "
                      + number(part.getKey(), measure))
          .collect(Collectors.joining(", "));
    }
    return value instanceof GivenValue.NotThere ? "nothing to read" : "not known";
  }

  /** Return what an example gives, measure by measure. */
  static String given(
      Map<String, GivenValue> values, java.util.function.Function<String, Definition> measures) {
    return values.entrySet().stream()
        .map(
            entry -> {
              Definition measure = measures.apply(entry.getKey());
              return measure.title() + ": " + given(entry.getValue(), measure);
            })
        .collect(Collectors.joining("; "));
  }
}
