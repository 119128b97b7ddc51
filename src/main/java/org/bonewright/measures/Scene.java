package org.bonewright.measures;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Construct;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.bone.ledger.Ledger;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Reduction;

/**
 * A subject with what is derived from it once: bone, zone, construct, and the measures already
 * taken. Measures read one another through it. Not safe for use by several threads.
 */
public final class Scene {

  private final Subject subject;
  private final MeasureCatalogue catalogue;
  private final Map<String, Reading> taken = new HashMap<>();
  private final Set<String> underWay = new LinkedHashSet<>();
  private final Construct construct;
  private final BoneShape bone;
  private final Ledger ledger;
  private final Map<Integer, List<Bite>> bites = new HashMap<>();
  private final Map<String, Object> derived = new HashMap<>();
  private final List<PlacedPlate> plates;
  private final List<Scene> byLongest;

  /** Set the scene for one subject. */
  public Scene(Subject subject, MeasureCatalogue catalogue) {
    this.subject = subject;
    this.catalogue = catalogue;
    this.construct = Construct.after(subject.upToHere());
    this.bone =
        new BoneShape(
            subject.caseFile().bone(),
            subject.caseFile().patient().sex(),
            BoneGrades.possible(subject));
    this.ledger = Ledger.of(new Steps(subject).all(), bone);
    List<PlacedPlate> laid = layPlates();
    List<PlacedPlate> longest = LongestPlate.candidates(laid);
    this.plates = laid.isEmpty() ? laid : LongestPlate.ordered(laid, longest.get(0));
    this.byLongest =
        longest.size() < 2
            ? List.of()
            : longest.stream()
                .map(first -> new Scene(this, LongestPlate.ordered(laid, first)))
                .toList();
  }

  /** Set the same scene once more with its plates in this order, the longest known. */
  private Scene(Scene whole, List<PlacedPlate> plates) {
    this.subject = whole.subject;
    this.catalogue = whole.catalogue;
    this.construct = whole.construct;
    this.bone = whole.bone;
    this.ledger = whole.ledger;
    this.plates = plates;
    this.byLongest = List.of();
  }

  /** Return the subject. */
  public Subject subject() {
    return subject;
  }

  /** Return the operation, or the plan's last stage. */
  public Operation operation() {
    return subject.operation();
  }

  /** Return which bone it is. */
  public BoneName boneName() {
    return subject.caseFile().bone().name();
  }

  /** Return the bone as a tube. */
  public BoneShape bone() {
    return bone;
  }

  /** Return what holds the bone at the end of the subject. */
  public Construct construct() {
    return construct;
  }

  /** Return the operation that set the fracture as it now stands; see {@link Fixing}. */
  public Operation fixing() {
    return once("fixing", () -> Fixing.in(subject.upToHere()));
  }

  /** Return whether what set the fracture is still to be done. */
  public boolean fixingIsPlanned() {
    int done = subject.caseFile().operations().size();
    String id = fixing().id();
    return subject.planned()
        && subject.upToHere().stream().skip(done).anyMatch(stage -> stage.id().equals(id));
  }

  /** Return the reduction as left at the end, where it was described. */
  public Optional<Reduction> reduction() {
    return fixing().reduction();
  }

  /** Return the zone at the end of the subject, once it has resected what it resects. */
  public FractureZone zone() {
    return ledger().zone(ledger().rounds() - 1);
  }

  /** Return the zone as the subject found it; a plan as its first stage does. */
  public FractureZone zoneAsFound() {
    return ledger().zoneFoundBy(subject.before().size());
  }

  /**
   * Return what the plate screws of the operation that put this plate in found in the bone; another
   * plate of it may be among them.
   */
  public List<Bite> bites(Plate plate) {
    return bites.computeIfAbsent(before(plate).size(), ledger::bites);
  }

  /** Return what the screw in one hole of a plate found in the bone, where there is one. */
  public Optional<Bite> bite(Plate plate, int hole) {
    return bites(plate).stream().filter(bite -> bite.track().isOf(plate.id(), hole)).findFirst();
  }

  /**
   * Return what several measures derive from this scene alone, deriving it once.
   *
   * @param what its name; one name stands for one kind of thing
   */
  @SuppressWarnings("unchecked")
  public <T> T once(String what, Supplier<T> derive) {
    Object known = derived.get(what);
    if (known == null) {
      known = derive.get();
      derived.put(what, known);
    }
    return (T) known;
  }

  /** Return the bone's memory up to the end of the subject. */
  public Ledger ledger() {
    return ledger;
  }

  /** Return the operations before the one that put this plate in; another may read the same. */
  @SuppressWarnings("ReferenceEquality")
  public List<Operation> before(Plate plate) {
    String by =
        construct.implants().stream()
            .filter(held -> held.implant() == plate)
            .map(Construct.Held::operation)
            .findFirst()
            .orElseThrow();
    return subject.upToHere().stream().takeWhile(operation -> !operation.id().equals(by)).toList();
  }

  /**
   * Return the plates of the construct, laid over the zone; the longest first. A measure finds them
   * in such an order even where nobody knows which is the longest: it is taken once for each that
   * may be.
   */
  public List<PlacedPlate> plates() {
    return plates;
  }

  private List<PlacedPlate> layPlates() {
    FractureZone zone = zone();
    return construct.of(Plate.class).stream()
        .map(plate -> new PlacedPlate(plate, zone, lagHoles(plate)))
        .toList();
  }

  private Set<Integer> lagHoles(Plate plate) {
    return construct.of(LagScrew.class).stream()
        .filter(lag -> lag.throughPlate().equals(Optional.of(plate.id())))
        .flatMap(lag -> lag.hole().stream())
        .collect(Collectors.toSet());
  }

  /** Return the scene of the operation whose failure led to this one. */
  public Optional<Scene> failedBefore() {
    return once(
        "failed-before", () -> subject.failedBefore().map(then -> new Scene(then, catalogue)));
  }

  /** Return the operations before the subject that were carried out, in order. */
  public List<Operation> doneBefore() {
    int done = subject.caseFile().operations().size();
    return subject.before().stream().limit(done).toList();
  }

  /** Return the plate that is judged for length and layout: the longest one. */
  public Optional<PlacedPlate> mainPlate() {
    return plates().stream().findFirst();
  }

  /**
   * Return a fact that the operation's own part of the file does not state.
   *
   * @param question the question as one asks it of an operation that was done; what is still
   *     planned is asked in the present
   */
  public MissingFact missing(String field, String question) {
    return new MissingFact(
        subject.path(operation()) + "/" + field,
        subject.planned() ? Tense.present(question) : question);
  }

  /** Return a fact about reduction or compression that is not stated where they were set. */
  public MissingFact missingOfFixing(String field, String question) {
    Operation fixing = fixing();
    return fixing.id().equals(operation().id())
        ? missing(field, question)
        : new MissingFact(fixing.id() + "/" + field, question);
  }

  /** Return a fact about the whole case that the file does not state. */
  public MissingFact missingInCase(String field, String question) {
    return new MissingFact(field, question);
  }

  /**
   * Take a measure, or return what it read before.
   *
   * @throws IllegalArgumentException if there is no such measure
   * @throws IllegalStateException if measures depend on each other in a circle
   */
  public Reading read(String measure) {
    Reading known = taken.get(measure);
    if (known != null) {
      return known;
    }
    if (!underWay.add(measure)) {
      throw new IllegalStateException("measures in a circle: " + underWay);
    }
    Reading reading = take(catalogue.measure(measure));
    underWay.remove(measure);
    taken.put(measure, reading);
    return reading;
  }

  private Reading take(Measure measure) {
    if (byLongest.isEmpty()) {
      return measure.take(this);
    }
    String id = measure.definition().id();
    return LongestPlate.oneOf(
        byLongest.stream().map(scene -> scene.read(id)).toList(), LongestPlate.lengths(this));
  }

  /** Return whether a word measure certainly reads this word. */
  public boolean certainly(String measure, String word) {
    return read(measure) instanceof Reading.Word known && known.possible().equals(Set.of(word));
  }

  /** Return whether a word measure may read this word, as far as is known. */
  public boolean possibly(String measure, String expected) {
    Reading reading = read(measure);
    return reading instanceof Reading.Word word
        ? word.possible().contains(expected)
        : reading instanceof Reading.Unknown;
  }
}
