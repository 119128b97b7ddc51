package org.bonewright.measures;

import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;

/** What a measure reads for one subject. */
public sealed interface Reading {

  /** Return what the case file would have to say for the reading to become exact. */
  List<MissingFact> missing();

  /**
   * Return how the reading came about, in words and numbers; empty when there is nothing to say.
   */
  String working();

  /** Return the reading in a few words, without its working; a number without its unit. */
  String shown();

  /** Return the same, each number with this unit; an empty unit is left away. */
  default String shown(String unit) {
    return shown();
  }

  /**
   * A number, exact or somewhere between two bounds.
   *
   * @param min smallest value it may have
   * @param max largest value it may have
   * @param kind what kind of knowledge it is
   * @param working how it came about
   * @param missing what would make it exact
   */
  record Amount(double min, double max, Kind kind, String working, List<MissingFact> missing)
      implements Reading {

    public Amount {
      if (!(min <= max)) {
        throw new IllegalArgumentException("not a range: " + min + " to " + max);
      }
      min = withoutDust(min);
      max = withoutDust(max);
      missing = List.copyOf(missing);
    }

    /**
     * Return the amount that is one of several, nobody knows which.
     *
     * @param several one at least
     * @param which what would settle which it is; asked for only where they differ
     */
    public static Amount oneOf(List<Amount> several, MissingFact... which) {
      double min = several.stream().mapToDouble(Amount::min).min().orElseThrow();
      double max = several.stream().mapToDouble(Amount::max).max().orElseThrow();
      boolean differ = several.stream().anyMatch(one -> one.min() != min || one.max() != max);
      return new Amount(
          min,
          max,
          kindOf(several.stream().map(Amount::kind)),
          either(several),
          missingOf(several, differ ? which : new MissingFact[0]));
    }

    /** 16.1 − 14.6 must not lie above a limit of 1.5: beyond the ninth decimal nothing is meant. */
    private static double withoutDust(double value) {
      return Double.isInfinite(value) || Math.abs(value) > 1e6
          ? value
          : Math.rint(value * 1e9) / 1e9;
    }

    @Override
    public String shown() {
      return new Dimension(min, max, false, "").numbers();
    }

    @Override
    public String shown(String unit) {
      return unit.isEmpty() ? shown() : shown() + " " + unit;
    }
  }

  /**
   * A number that a mechanical model computes, once for each sampled set of what was assumed or
   * read off a film.
   *
   * @param nominal the number in the middle of the samples
   * @param samples the number under each set, in the order of sampling: the same place in two
   *     measures of one subject means the same set
   * @param working how it came about
   * @param decides the assumption that moves it most, in a few words
   * @param missing what would narrow it
   */
  record Sampled(
      double nominal,
      List<Double> samples,
      String working,
      String decides,
      List<MissingFact> missing)
      implements Reading {

    public Sampled {
      if (samples.isEmpty()
          || Double.isNaN(nominal)
          || samples.stream().anyMatch(value -> Double.isNaN(value))) {
        throw new IllegalArgumentException("no samples, or one that is no number");
      }
      nominal = Amount.withoutDust(nominal);
      samples = samples.stream().map(Amount::withoutDust).toList();
      missing = List.copyOf(missing);
    }

    /** Return the value that one sample in twenty does not reach. */
    public double low() {
      return sorted().get((int) Math.floor((samples.size() - 1) * TAIL));
    }

    /** Return the value that one sample in twenty exceeds. */
    public double high() {
      return sorted().get((int) Math.ceil((samples.size() - 1) * (1 - TAIL)));
    }

    private List<Double> sorted() {
      return samples.stream().sorted().toList();
    }

    /** Return a value of it, rounded as it is shown: three significant digits at most. */
    public double rounded(double value) {
      return likely().rounded(value);
    }

    @Override
    public String shown() {
      return shown("");
    }

    @Override
    public String shown(String unit) {
      return likely().shown(unit);
    }

    private LikelyRange likely() {
      return new LikelyRange(nominal, low(), high());
    }

    private static final double TAIL = 0.05;
  }

  /**
   * A word out of a short list, known or one of several.
   *
   * @param possible the words it may be; one when known
   * @param kind what kind of knowledge it is
   * @param working how it came about
   * @param missing what would settle it
   */
  record Word(SortedSet<String> possible, Kind kind, String working, List<MissingFact> missing)
      implements Reading {

    public Word {
      if (possible.isEmpty()) {
        throw new IllegalArgumentException("no word left");
      }
      possible = new TreeSet<>(possible);
      missing = List.copyOf(missing);
    }

    /**
     * Return the word that is one of several, nobody knows which.
     *
     * @param several one at least
     * @param which what would settle which it is; asked for only where they differ
     */
    public static Word oneOf(List<Word> several, MissingFact... which) {
      SortedSet<String> all = new TreeSet<>();
      several.forEach(one -> all.addAll(one.possible()));
      boolean differ = several.stream().anyMatch(one -> !one.possible().equals(all));
      return new Word(
          all,
          kindOf(several.stream().map(Word::kind)),
          either(several),
          missingOf(several, differ ? which : new MissingFact[0]));
    }

    @Override
    public String shown() {
      return String.join(" or ", possible);
    }
  }

  /**
   * Not known at all.
   *
   * @param missing what the case file would have to say
   */
  record Unknown(List<MissingFact> missing) implements Reading {

    public Unknown {
      missing = List.copyOf(missing);
    }

    @Override
    public String working() {
      return missing.stream().map(MissingFact::question).collect(Collectors.joining(" "));
    }

    @Override
    public String shown() {
      return "not known";
    }
  }

  /**
   * There is no such thing for this subject: a nail has no plate span.
   *
   * @param why the reason, as a short clause
   */
  record None(String why) implements Reading {

    @Override
    public List<MissingFact> missing() {
      return List.of();
    }

    @Override
    public String working() {
      return why;
    }

    @Override
    public String shown() {
      return "none";
    }
  }

  /** Return a number that the case file states. */
  static Reading number(double value, String working) {
    return new Amount(value, value, Kind.FACT, working, List.of());
  }

  /** Return a number from a dimension; what would make it exact is named where it is a range. */
  static Reading number(Dimension dimension, String working, MissingFact... missing) {
    boolean exact = dimension.min() == dimension.max();
    return new Amount(
        dimension.min(),
        dimension.max(),
        dimension.assumed() ? Kind.ASSUMED : Kind.FACT,
        working,
        exact ? List.of() : List.of(missing));
  }

  /** Return a known word. */
  static Reading word(String word, String working) {
    return new Word(new TreeSet<>(Set.of(word)), Kind.FACT, working, List.of());
  }

  /** Return one of several words, with what would settle it. */
  static Reading words(Set<String> possible, Kind kind, String working, MissingFact... missing) {
    return new Word(
        new TreeSet<>(possible),
        kind,
        working,
        possible.size() == 1 ? List.of() : List.of(missing));
  }

  /** Return an unknown reading for want of these facts. */
  static Reading unknown(MissingFact... missing) {
    return new Unknown(List.of(missing));
  }

  /** Return the union of what several readings miss, in order, each once. */
  static List<MissingFact> missingOf(Reading... readings) {
    return missingOf(List.of(readings));
  }

  /** Return the union of what several readings miss, and of more, in order, each once. */
  static List<MissingFact> missingOf(List<? extends Reading> readings, MissingFact... more) {
    return Stream.concat(
            readings.stream().flatMap(reading -> reading.missing().stream()), Stream.of(more))
        .distinct()
        .toList();
  }

  /** What is one of several rests on an assumption where any of them does. */
  private static Kind kindOf(Stream<Kind> kinds) {
    List<Kind> all = kinds.toList();
    return all.contains(Kind.ASSUMED) ? Kind.ASSUMED : all.get(0);
  }

  private static String either(List<? extends Reading> several) {
    return several.stream()
        .map(Reading::working)
        .filter(working -> !working.isEmpty())
        .distinct()
        .collect(Collectors.joining(", or "));
  }
}
