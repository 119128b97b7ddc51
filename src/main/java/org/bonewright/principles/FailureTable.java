package org.bonewright.principles;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.FailureMode;
import org.bonewright.measures.Words;

/** How a failure reads: by its mode, and by when it came. Both point to what to look at first. */
public final class FailureTable {

  private final Map<FailureMode, List<String>> modes;
  private final List<Window> windows;
  private final List<String> technical;

  private FailureTable(
      Map<FailureMode, List<String>> modes, List<Window> windows, List<String> technical) {
    this.modes = modes;
    this.windows = windows;
    this.technical = technical;
  }

  /**
   * What commonly brings an operation down within a stretch of time.
   *
   * @param fromWeeks where it begins, in weeks after the operation, at least 0
   * @param toWeeks where it ends, in weeks; infinite for the last
   * @param causes causes of cards
   */
  public record Window(double fromWeeks, double toWeeks, List<String> causes) {

    boolean touches(Dimension weeks) {
      return weeks.max() >= fromWeeks && weeks.min() < toWeeks;
    }
  }

  /**
   * Read the table.
   *
   * @throws IllegalStateException if it is not as it should be
   */
  static FailureTable read(String yaml) {
    CardText text = CardText.of(yaml, "failure modes");
    CardText table =
        text.part("modes").orElseThrow(() -> new IllegalStateException("no failure modes"));
    Map<FailureMode, List<String>> modes = new EnumMap<>(FailureMode.class);
    for (FailureMode mode : FailureMode.values()) {
      modes.put(mode, table.texts(Words.written(mode)));
    }
    table.done();
    List<Window> windows = new ArrayList<>();
    text.parts("times").forEach(part -> windows.add(window(part)));
    List<String> technical = text.texts("technical");
    text.done();
    return new FailureTable(modes, List.copyOf(windows), technical);
  }

  private static Window window(CardText part) {
    double from = part.number("fromWeeks");
    double to = part.isNumber("toWeeks") ? part.number("toWeeks") : Double.POSITIVE_INFINITY;
    return new Window(from, to, part.texts("causes"));
  }

  /** Return the place, from 1, that a principle has in the row of a mode; empty if it has none. */
  public OptionalInt place(FailureMode mode, String principle) {
    int index = principlesOf(mode).indexOf(principle);
    return index < 0 ? OptionalInt.empty() : OptionalInt.of(index + 1);
  }

  /** Return the principles to look at for a mode, in order; some may not exist yet. */
  public List<String> principlesOf(FailureMode mode) {
    return modes.getOrDefault(mode, List.of());
  }

  /**
   * Return whether a cause is one that commonly brings an operation down at such a time; where the
   * time is a range, whether it is so all over it.
   *
   * @param cause cause of a card
   * @param weeks time from the operation to its failure, in weeks
   */
  public boolean fitsTime(String cause, Dimension weeks) {
    List<Window> touched = windows.stream().filter(window -> window.touches(weeks)).toList();
    return !touched.isEmpty()
        && touched.stream().allMatch(window -> window.causes().contains(cause));
  }

  /**
   * Return whether a finding of this cause lies in what the surgeon built, so that it may explain a
   * failure without infection or host.
   */
  public boolean isTechnical(String cause) {
    return technical.contains(cause);
  }

  /** Return what commonly brings an operation down by when it does, from the first weeks on. */
  public List<Window> windows() {
    return windows;
  }

  /** Return the causes that lie in what the surgeon built. */
  public List<String> technical() {
    return technical;
  }

  /** Return every cause that is named. */
  List<String> causes() {
    return Stream.concat(
            windows.stream().flatMap(window -> window.causes().stream()), technical.stream())
        .distinct()
        .toList();
  }
}
