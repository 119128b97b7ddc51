package org.bonewright.principles;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.casefile.BoneName;
import org.bonewright.measures.Words;

/** What was published of the next operation. It is shown with its caution and judges nothing. */
public final class Prognosis {

  private final String caution;
  private final List<Entry> entries;

  private Prognosis(String caution, List<Entry> entries) {
    this.caution = caution;
    this.entries = entries;
  }

  /** What holds the bone in a plan, seen with what held it before. */
  public enum Way {
    PLATE,
    NAIL,
    /** A nail in place of a nail. */
    EXCHANGE_NAIL,
    /** A plate while a nail stays. */
    PLATE_OVER_NAIL
  }

  /**
   * One published result.
   *
   * @param bone the bone, as a word
   * @param way what the plan puts in; empty for any
   * @param graft whether graft is part of it; empty for either
   * @param say the result in one sentence
   * @param source where it comes from
   */
  public record Entry(
      String bone, Optional<Way> way, Optional<Boolean> graft, String say, Card.Source source) {

    boolean fits(BoneName name, Way planned, boolean withGraft) {
      return bone.equals(Words.written(name))
          && way.map(planned::equals).orElse(true)
          && graft.map(g -> g == withGraft).orElse(true);
    }
  }

  /**
   * Read the table.
   *
   * @throws IllegalStateException if it is not as it should be
   */
  static Prognosis read(String yaml) {
    CardText text = CardText.of(yaml, "prognosis");
    String caution = text.text("caution");
    List<Entry> entries = text.parts("published").stream().map(Prognosis::entry).toList();
    text.done();
    return new Prognosis(caution, entries);
  }

  private static Entry entry(CardText text) {
    CardText source =
        text.part("source")
            .orElseThrow(() -> new IllegalStateException("prognosis without source"));
    Entry entry =
        new Entry(
            text.text("bone"),
            text.optionalText("way")
                .map(way -> Way.valueOf(way.toUpperCase(Locale.ROOT).replace('-', '_'))),
            text.has("graft") ? Optional.of(text.yes("graft")) : Optional.empty(),
            text.text("say"),
            CardReader.source(source));
    text.done();
    return entry;
  }

  /** Return every published result on file, in the order in which the first that fits is taken. */
  public List<Entry> entries() {
    return entries;
  }

  /** Return what is said beside each result. */
  public String caution() {
    return caution;
  }

  /**
   * Return one line on the next operation: the result, its source and the caution; empty where
   * nothing published is on file for it.
   *
   * @param bone the bone
   * @param way what the plan puts in
   * @param graft whether graft is part of it
   */
  public Optional<String> of(BoneName bone, Way way, boolean graft) {
    return entries.stream()
        .filter(entry -> entry.fits(bone, way, graft))
        .findFirst()
        .map(entry -> entry.say() + " " + caution + " Source: " + entry.source().shown() + ".");
  }
}
