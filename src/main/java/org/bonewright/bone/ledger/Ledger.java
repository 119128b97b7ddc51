package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Construct;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;

/**
 * The bone's memory over a whole history: every track, all metal, every cut.
 *
 * <p>Operations are numbered from 0. Levels are mm from the landmark; only where no operation tells
 * a level, all are mm from the middle of the zone instead. What was told in the other way than the
 * rest has no level then.
 */
public final class Ledger {

  private final List<Step> steps;
  private final BoneShape bone;
  private final Cuts cuts;
  private final List<FractureZone> found;
  private final List<FractureZone> zones;
  private final List<List<Track>> drilled;
  private final boolean fromZone;

  private Ledger(List<Step> steps, BoneShape bone) {
    this.steps = List.copyOf(steps);
    this.bone = bone;
    this.cuts = Cuts.of(steps);
    List<FractureZone> asFound = new ArrayList<>();
    List<FractureZone> left = new ArrayList<>();
    for (int round = 0; round < steps.size(); round++) {
      FractureZone before = round == 0 ? FractureZone.UNKNOWN : left.get(round - 1);
      Step step = steps.get(round);
      asFound.add(step.stated().orElse(before));
      left.add(cuts.zoneAfter(step.operation(), asFound.get(round), round));
    }
    this.found = List.copyOf(asFound);
    this.zones = List.copyOf(left);
    List<List<Track>> byLandmark = drilled(zones);
    this.fromZone =
        byLandmark.stream().flatMap(List::stream).allMatch(track -> track.level().isEmpty())
            && cuts.before(steps.size()).isEmpty();
    this.drilled =
        fromZone ? drilled(zones.stream().map(Ledger::aroundItsMiddle).toList()) : byLandmark;
  }

  /**
   * Make the ledger of a history.
   *
   * @param steps the operations in order of time, planned ones last
   */
  public static Ledger of(List<Step> steps, BoneShape bone) {
    return new Ledger(steps, bone);
  }

  private static FractureZone aroundItsMiddle(FractureZone zone) {
    return new FractureZone(
        zone.length(), Optional.of(new Dimension(0, 0, false, "middle of the zone")));
  }

  private List<List<Track>> drilled(List<FractureZone> over) {
    return IntStream.range(0, steps.size())
        .mapToObj(
            round -> new TrackMaker(steps.get(round).operation(), round, over.get(round), bone))
        .map(TrackMaker::tracks)
        .toList();
  }

  /** Return whether levels are told from the middle of the zone, since no level is known. */
  public boolean isFromZone() {
    return fromZone;
  }

  /** Return the bone as a tube. */
  public BoneShape bone() {
    return bone;
  }

  /** Return the pieces cut out, and how levels have moved. */
  public Cuts cuts() {
    return cuts;
  }

  /** Return the number of operations. */
  public int rounds() {
    return steps.size();
  }

  /** Return the number of the operation of this id; nothing where there is none. */
  public Optional<Integer> round(String operation) {
    return IntStream.range(0, steps.size())
        .filter(round -> steps.get(round).operation().id().equals(operation))
        .boxed()
        .findFirst();
  }

  /** Return the zone as an operation found it. */
  public FractureZone zoneFoundBy(int round) {
    return found.get(round);
  }

  /** Return the zone at the end of an operation, once it has cut out what it does. */
  public FractureZone zone(int round) {
    return zones.get(round);
  }

  /**
   * Return the zone at the end of an operation as levels of this ledger are told: round its own
   * middle where {@link #isFromZone}.
   */
  public FractureZone zoneOfLevels(int round) {
    return fromZone ? aroundItsMiddle(zones.get(round)) : zones.get(round);
  }

  /**
   * Return the level, as it reads at the end of the last operation, of what was read at an
   * operation; nothing where it certainly lay in a piece that was cut out since.
   */
  public Optional<Dimension> now(Dimension level, int from) {
    return fromZone ? Optional.of(level) : cuts.moved(level, from, rounds() - 1);
  }

  /** Return the tracks that an operation drills, in levels as read then. */
  public List<Track> drilledBy(int round) {
    return drilled.get(round);
  }

  /**
   * Return the tracks that are in the bone when an operation begins, in levels as read then; those
   * in pieces cut out before are gone.
   */
  public List<OldTrack> foundBy(int round) {
    return tracks(round, round - 1);
  }

  /**
   * Return the older tracks as an operation's own screws meet them, once its own cuts are closed.
   */
  public List<OldTrack> metBy(int round) {
    return tracks(round, round);
  }

  /**
   * Return every track in the bone when an operation has ended, its own included, in levels as read
   * then.
   */
  public List<OldTrack> leftBy(int round) {
    return tracks(round + 1, round);
  }

  private List<OldTrack> tracks(int before, int cutsUpTo) {
    Set<String> filled = filledAfter(before);
    List<OldTrack> found = new ArrayList<>();
    for (int then = 0; then < before; then++) {
      Operation operation = steps.get(then).operation();
      for (Track track : drilled.get(then)) {
        Optional<Dimension> asInjured = fromZone ? track.level() : asInjured(track, then);
        boolean inside = filled.contains(track.name());
        if (track.level().isEmpty()) {
          found.add(new OldTrack(track, asInjured, operation.id(), operation.day(), inside));
        } else {
          cuts.moved(track.level().get(), then, cutsUpTo)
              .map(track::at)
              .map(now -> new OldTrack(now, asInjured, operation.id(), operation.day(), inside))
              .ifPresent(found::add);
        }
      }
    }
    return List.copyOf(found);
  }

  private Optional<Dimension> asInjured(Track track, int then) {
    return track.level().map(level -> cuts.asInjured(level, then));
  }

  private Set<String> filledAfter(int rounds) {
    Set<String> filled = new HashSet<>();
    for (Construct.Held held : Construct.inside(operations(rounds)).implants()) {
      Implant implant = held.implant();
      if (implant instanceof Plate plate) {
        plate.screws().orElse(List.of()).stream()
            .flatMap(row -> row.at().stream())
            .forEach(hole -> filled.add(held.path() + " hole " + hole));
      } else if (implant instanceof Nail) {
        places(held, steps).forEach(place -> filled.add(held.path() + " bolt " + place));
      } else if (implant instanceof ExternalFixator) {
        places(held, steps).forEach(place -> filled.add(held.path() + " pin " + place));
      } else if (implant instanceof LagScrew) {
        filled.add(held.path());
      }
    }
    return filled;
  }

  /** Return the places, in the list as it was put in, of the bolts or pins that are left. */
  private static List<Integer> places(Construct.Held held, List<Step> steps) {
    return steps.stream()
        .map(Step::operation)
        .filter(operation -> operation.id().equals(held.operation()))
        .flatMap(operation -> operation.fixation().stream().flatMap(List::stream))
        .filter(implant -> implant.id().equals(held.implant().id()))
        .findFirst()
        .map(whole -> places(whole, held.implant()))
        .orElse(List.of());
  }

  private static List<Integer> places(Implant whole, Implant left) {
    if (whole instanceof Nail before && left instanceof Nail now) {
      return stillThere(before.bolts().orElse(List.of()), now.bolts().orElse(List.of()));
    }
    if (whole instanceof ExternalFixator before && left instanceof ExternalFixator now) {
      return stillThere(before.pins().orElse(List.of()), now.pins().orElse(List.of()));
    }
    return List.of();
  }

  private static <T> List<Integer> stillThere(List<T> before, List<T> now) {
    List<T> left = new ArrayList<>(now);
    return IntStream.rangeClosed(1, before.size())
        .filter(place -> left.remove(before.get(place - 1)))
        .boxed()
        .toList();
  }

  private List<Operation> operations(int rounds) {
    return steps.subList(0, rounds).stream().map(Step::operation).toList();
  }

  /** Return the metal that lies in the bone when an operation begins. */
  public List<InsideMetal> metalFoundBy(int round) {
    return InsideMetal.after(operations(round));
  }

  /** Return the metal that lies in the bone when an operation has ended. */
  public List<InsideMetal> metalAfter(int round) {
    return InsideMetal.after(operations(round + 1));
  }

  /**
   * Return whether the file tells every track that there can be before an operation: what each put
   * in, which holes hold screws, and the level of every bolt and screw.
   */
  public boolean tellsAllBefore(int round) {
    return IntStream.range(0, round).allMatch(this::tellsAllOf);
  }

  private boolean tellsAllOf(int round) {
    Operation operation = steps.get(round).operation();
    return operation.fixation().isPresent()
        && operation.fixation().get().stream().allMatch(Ledger::tellsItsScrews)
        && drilled.get(round).stream().allMatch(track -> track.level().isPresent());
  }

  private static boolean tellsItsScrews(Implant implant) {
    if (implant instanceof Plate plate) {
      return plate.screws().isPresent();
    }
    if (implant instanceof Nail nail) {
      return nail.bolts().isPresent();
    }
    return !(implant instanceof ExternalFixator fixator) || fixator.pins().isPresent();
  }

  /** Return what each plate screw of an operation finds in the bone, in the order of the file. */
  public List<Bite> bites(int round) {
    List<OldTrack> older = metBy(round);
    boolean all = tellsAllBefore(round);
    return drilled.get(round).stream()
        .filter(
            track ->
                track.kind() == Track.Kind.PLATE_SCREW
                    || track.kind() == Track.Kind.LOCKING_PLATE_SCREW)
        .map(track -> new BiteMaker(track, statedTrack(track), older, all, bone, !fromZone).bite())
        .toList();
  }

  private Optional<ScrewRow.Track> statedTrack(Track track) {
    return steps.get(track.round()).operation().fixation().stream()
        .flatMap(List::stream)
        .filter(Plate.class::isInstance)
        .map(Plate.class::cast)
        .filter(plate -> track.implant().endsWith("/" + plate.id()))
        .flatMap(plate -> plate.screws().stream().flatMap(List::stream))
        .filter(
            row ->
                row.at().stream()
                    .anyMatch(hole -> track.name().equals(track.implant() + " hole " + hole)))
        .flatMap(row -> row.track().stream())
        .findFirst();
  }
}
