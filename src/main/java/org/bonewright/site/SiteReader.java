package org.bonewright.site;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsLast;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.RecordReader;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.SiteChanges;

/** Reads site files and holds each change against the card that it changes. */
public final class SiteReader {

  private static final int DIGITS = 12;

  private final RecordReader<Site> reader = new RecordReader<>(Site.class);
  private final RuleSet rules;

  /**
   * Make a reader.
   *
   * @param rules the published rule set
   */
  public SiteReader(RuleSet rules) {
    this.rules = rules;
  }

  /**
   * Return what the bytes of a file set, or every problem in them. An entry that is whole is held
   * against its card even where another part of the file is refused.
   */
  public SiteReading read(byte[] bytes) {
    RecordReader.Outcome<Site> outcome = reader.read(bytes);
    SiteCheck check = new SiteCheck(rules, outcome.parts());
    List<Problem> problems = new ArrayList<>(outcome.problems());
    problems.addAll(check.problems());
    problems.sort(comparing(p -> p.place().orElse(null), nullsLast(naturalOrder())));
    Optional<Site> sound = outcome.value().filter(site -> problems.isEmpty());
    return new SiteReading(
        sound.map(site -> changes(site, check, bytes)),
        sound.flatMap(site -> site.shelf().map(shelf -> shelf.of(site.name()))),
        problems);
  }

  private static SiteChanges changes(Site site, SiteCheck check, byte[] bytes) {
    return new SiteChanges(
        site.name(),
        hash(bytes),
        site.provenance() == Site.Provenance.INVENTED,
        check.limits(),
        check.severities(),
        check.loads());
  }

  /** Return the first twelve hexadecimal digits of the SHA-256 of a file. */
  private static String hash(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
