package org.bonewright.site;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bonewright.principles.RuleSet;

/** A site file for a test, put together entry by entry. */
public final class SiteText {

  private static final String GROUNDS =
      "\"reason\": \"Test.\", \"by\": \"test bench\", \"on\": \"2026-01-31\"}";

  private final List<String> limits = new ArrayList<>();
  private final List<String> severities = new ArrayList<>();

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
    "severities": [%s]}
    """
        .formatted(joined(limits), joined(severities));
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
