package org.bonewright.site;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.principles.RuleSet;

/** A site file for a test, put together entry by entry. */
public final class SiteText {

  private static final String GROUNDS =
      "\"reason\": \"Test.\", \"by\": \"test bench\", \"on\": \"2026-01-31\"}";

  private final List<String> limits = new ArrayList<>();
  private final List<String> severities = new ArrayList<>();
  private final List<String> loads = new ArrayList<>();

  /** Add a limit of a single value. */
  public SiteText limit(String principle, String limit, double value, String unit) {
    limits.add(start(principle, limit) + value(value, unit));
    return this;
  }

  /** Add a limit for some words. */
  public SiteText limit(String principle, String limit, String where, double value, String unit) {
    limits.add(start(principle, limit) + "\"where\": \"" + where + "\", " + value(value, unit));
    return this;
  }

  /** Add a severity. */
  public SiteText severity(String principle, String from, String to) {
    severities.add(
        "{\"principle\": \"%s\", \"from\": \"%s\", \"to\": \"%s\", ".formatted(principle, from, to)
            + GROUNDS);
    return this;
  }

  /**
   * Add the loads of a bone, each of them 1000 N, 20 N·m and 5 N·m.
   *
   * @param activities what is done, one load each
   */
  public SiteText loads(String bone, String... activities) {
    return loadsOf(
        bone,
        Stream.of(activities).map(activity -> load(activity, 1000, 20, 5)).toArray(String[]::new));
  }

  /** Add the loads of a bone as they stand in the file. */
  public SiteText loadsOf(String bone, String... written) {
    loads.add(
        "{\"bone\": \"%s\", \"loads\": [%s], ".formatted(bone, String.join(", ", written))
            + GROUNDS);
    return this;
  }

  /** Return a load as it stands in a file. */
  public static String load(String activity, int pressN, int bendingNm, int torsionNm) {
    return """
    {"activity": "%s", "pressN": %d, "bendingNm": %d, "torsionNm": %d, "source": "a test"}"""
        .formatted(activity, pressN, bendingNm, torsionNm);
  }

  private static String start(String principle, String limit) {
    return "{\"principle\": \"%s\", \"limit\": \"%s\", ".formatted(principle, limit);
  }

  private static String value(double value, String unit) {
    return "\"value\": " + value + ", \"unit\": \"" + unit + "\", " + GROUNDS;
  }

  /** Return the file, one entry a line. */
  public String text() {
    return """
    {"schema": "bonewright/site/1", "name": "test-site", "provenance": "invented",
    "limits": [%s],
    "severities": [%s],
    "loads": [%s]}
    """
        .formatted(joined(limits), joined(severities), joined(loads));
  }

  private static String joined(List<String> entries) {
    return entries.stream().collect(Collectors.joining(",\n", "\n", "\n"));
  }

  /** Return what reading the file gives. */
  public SiteReading read(RuleSet published) {
    return new SiteReader(published).read(text().getBytes(UTF_8));
  }

  /** Return the rule set with these changes, which must be sound. */
  public RuleSet on(RuleSet published) {
    return published.with(read(published).changes().orElseThrow());
  }
}
