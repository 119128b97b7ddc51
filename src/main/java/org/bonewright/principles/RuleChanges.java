package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;

/**
 * What changed in the rules from one version to the next, told by what it does to verdicts. Made by
 * comparing the cells of both; a test holds it to the rules.
 *
 * @param versions the versions, latest first
 */
public record RuleChanges(List<Version> versions) {

  /**
   * What one version changed.
   *
   * @param version the version
   * @param before the version that it is compared with
   * @param added ids of new principles
   * @param gone titles of principles that it no longer has
   * @param changed the principles that now judge otherwise
   */
  public record Version(
      String version, String before, List<String> added, List<String> gone, List<Changed> changed) {

    /** Return whether nothing judges otherwise than before. */
    public boolean isEmpty() {
      return added.isEmpty() && gone.isEmpty() && changed.isEmpty();
    }
  }

  /**
   * A principle that judges otherwise than before.
   *
   * @param principle its id
   * @param title its title
   * @param reads what it now reads, or no longer reads, in words
   * @param limits the limits that lie elsewhere
   * @param given the readings with which verdicts are other ones, as far as all of them share these
   * @param cells the verdicts that are other ones
   */
  public record Changed(
      String principle,
      String title,
      List<String> reads,
      List<Moved> limits,
      List<String> given,
      List<Turned> cells) {}

  /**
   * A limit that lies elsewhere.
   *
   * @param what what it limits, and for whom
   * @param was where it lay, in words
   * @param is where it lies, in words
   */
  public record Moved(String what, String was, String is) {}

  /**
   * Verdicts that are other ones.
   *
   * @param where the readings beside those that all share, in words
   * @param was the verdict, with its grade
   * @param is the verdict now
   */
  public record Turned(String where, String was, String is) {}

  private static final class Built {
    private static final RuleChanges CHANGES = read(RuleFiles.changes());
  }

  /** Return the changes that Bonewright was built with. */
  public static RuleChanges built() {
    return Built.CHANGES;
  }

  /**
   * Read changes.
   *
   * @throws IllegalStateException if a field is missing or unknown
   */
  static RuleChanges read(String yaml) {
    CardText text = CardText.of(yaml, "changes");
    List<Version> versions = new ArrayList<>();
    for (CardText part : text.parts("versions")) {
      List<Changed> changed = new ArrayList<>();
      for (CardText principle : part.parts("changed")) {
        changed.add(changed(principle));
      }
      versions.add(
          new Version(
              part.text("version"),
              part.text("before"),
              part.texts("added"),
              part.texts("gone"),
              List.copyOf(changed)));
      part.done();
    }
    text.done();
    return new RuleChanges(List.copyOf(versions));
  }

  private static Changed changed(CardText text) {
    List<Moved> limits = new ArrayList<>();
    for (CardText limit : text.parts("limits")) {
      limits.add(new Moved(limit.text("what"), limit.text("was"), limit.text("is")));
      limit.done();
    }
    List<Turned> cells = new ArrayList<>();
    for (CardText cell : text.parts("cells")) {
      cells.add(new Turned(cell.text("where"), cell.text("was"), cell.text("is")));
      cell.done();
    }
    Changed changed =
        new Changed(
            text.text("principle"),
            text.text("title"),
            text.texts("reads"),
            List.copyOf(limits),
            text.texts("given"),
            List.copyOf(cells));
    text.done();
    return changed;
  }
}
