package org.bonewright.principles;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.measures.load.UsualLoads;

/**
 * All principles: cards, compiled rules, families, version. Make it once and keep it; it is
 * immutable and may be shared by threads.
 */
public final class RuleSet {

  private static final String FAILURE_MODES = "failure-modes.yaml";
  private static final String MOVES = "moves.yaml";
  private static final String PROFILES = "profiles.yaml";
  private static final String PROGNOSIS = "prognosis.yaml";
  private static final String VERSION = "version.txt";

  private final RuleBase rules;
  private final MeasureCatalogue measures;
  private final Principles principles;
  private final FailureTable failures;
  private final Moves moves;
  private final Prognosis prognosis;
  private final Map<String, Worlds> worlds = new ConcurrentHashMap<>();
  private final List<Profile> profiles;
  private final String version;
  private final String hash;
  private final Optional<SiteChanges> site;
  private final Optional<RuleSet> published;

  private RuleSet(RuleFiles files, RuleBase rules, MeasureCatalogue measures) {
    this.rules = rules;
    this.measures = measures;
    this.version = files.read(VERSION).strip();
    this.hash = files.hash();
    this.principles = Principles.read(files);
    this.failures = FailureTable.read(files.read(FAILURE_MODES));
    this.moves = Moves.read(files.read(MOVES));
    this.prognosis = Prognosis.read(files.read(PROGNOSIS));
    this.profiles = Profile.read(files.read(PROFILES));
    this.site = Optional.empty();
    this.published = Optional.empty();
  }

  private RuleSet(
      RuleSet other,
      MeasureCatalogue measures,
      List<Card> cards,
      Optional<SiteChanges> site,
      Optional<RuleSet> published) {
    this.rules = other.rules;
    this.measures = measures;
    this.version = other.version;
    this.hash = other.hash;
    this.failures = other.failures;
    this.moves = other.moves;
    this.prognosis = other.prognosis;
    this.profiles = other.profiles;
    this.principles = other.principles.with(cards);
    this.site = site;
    this.published = published;
  }

  /** Return the rule set that Bonewright was built with. */
  public static RuleSet built() {
    return new RuleSet(RuleFiles.built(), RuleBase.built(), EveryMeasure.catalogue());
  }

  /** Return the same rule set with the rules in another order or compiled elsewhere; for tests. */
  RuleSet with(RuleBase other) {
    return new RuleSet(RuleFiles.built(), other, measures);
  }

  /** Return the same rule set with one measure taken in another way; for tests. */
  RuleSet with(Measure other) {
    return new RuleSet(RuleFiles.built(), rules, measures.with(other));
  }

  /**
   * Return the same rule set as a site uses it: its cards carry the local limits, and its measures
   * the local loads, so that worlds, verdicts and words follow them.
   *
   * @param changes what the site has set; checked against these cards
   */
  public RuleSet with(SiteChanges changes) {
    List<Card> local = principles.cards().stream().map(changes::on).toList();
    MeasureCatalogue localMeasures =
        changes.loads().isEmpty()
            ? measures
            : EveryMeasure.catalogue(changes.on(UsualLoads.published()));
    return new RuleSet(this, localMeasures, local, Optional.of(changes), Optional.of(this));
  }

  /** Return what a site has set, where this rule set is that of a site. */
  public Optional<SiteChanges> site() {
    return site;
  }

  /** Return the same rule set with no cards but those that a profile shows; not to judge by. */
  public RuleSet shown(Profile profile) {
    return new RuleSet(
        this,
        measures,
        principles.cards().stream().filter(c -> profile.principles().contains(c.id())).toList(),
        site,
        published);
  }

  /** Return the rule set without what a site has set, where this rule set is that of a site. */
  public Optional<RuleSet> published() {
    return published;
  }

  /** Return a card with its published limits, whose evidence it names. */
  public Card published(Card card) {
    return published.flatMap(without -> without.card(card.id())).orElse(card);
  }

  /** Return the profile that is taken where none is named. */
  public Profile usual() {
    return profile(Profile.DEFAULT).orElseThrow();
  }

  /** Return the profiles, the one that is taken where none is named first. */
  public List<Profile> profiles() {
    return profiles;
  }

  /** Return the profile of this id, if there is one. */
  public Optional<Profile> profile(String id) {
    return profiles.stream().filter(profile -> profile.id().equals(id)).findFirst();
  }

  /** Return the cards in the order of families, then of ids. */
  public Collection<Card> cards() {
    return principles.cards();
  }

  /** Return what the program itself promises, in order of id; none of it is ever judged. */
  public Collection<Promise> promises() {
    return principles.promises();
  }

  /** Return the promise of this id, if there is one. */
  public Optional<Promise> promise(String id) {
    return principles.promise(id);
  }

  /** Return the card of this id, if there is one. */
  public Optional<Card> card(String id) {
    return principles.card(id);
  }

  /**
   * Return the family of a card.
   *
   * @throws IllegalArgumentException if the card is not of this rule set
   */
  public Family family(Card card) {
    return principles.family("principle", card.id());
  }

  /**
   * Return the family of a promise.
   *
   * @throws IllegalArgumentException if the promise is not of this rule set
   */
  public Family family(Promise promise) {
    return principles.family("promise", promise.id());
  }

  /** Return every family in order, also those that have no principle yet. */
  public List<Family> families() {
    return principles.families();
  }

  /** Return how failures read. */
  public FailureTable failures() {
    return failures;
  }

  /** Return what was published of the next operation. */
  public Prognosis prognosis() {
    return prognosis;
  }

  /** Return what remedies do, and which pull against each other. */
  public Moves moves() {
    return moves;
  }

  /** Return the definition of a measure or of a count of verdicts. */
  public Definition definition(String measure) {
    return measures
        .definition(measure)
        .or(() -> VerdictCounts.definition(measure))
        .orElseThrow(() -> new IllegalStateException("no measure " + measure));
  }

  /** Return the definitions of everything that a principle may need, in order of id. */
  public List<Definition> definitions() {
    return java.util.stream.Stream.concat(
            measures.definitions().stream(), VerdictCounts.definitions().values().stream())
        .sorted(Comparator.comparing(Definition::id))
        .toList();
  }

  /** Return the version of the rule set. */
  public String version() {
    return version;
  }

  /** Return the hash over cards and rules. */
  public String hash() {
    return hash;
  }

  /** Return the worlds of a card. */
  Worlds worlds(Card card) {
    return principles.card(card.id()).filter(card::equals).isPresent()
        ? worlds.computeIfAbsent(card.id(), id -> new Worlds(card, this::definition))
        : new Worlds(card, this::definition); // a card with limits that are only being tried
  }

  /** Return the measures. */
  MeasureCatalogue measures() {
    return measures;
  }

  /** Return the compiled rules. */
  RuleBase rules() {
    return rules;
  }
}
