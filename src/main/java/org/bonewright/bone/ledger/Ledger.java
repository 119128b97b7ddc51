package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
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

  /** Return the level of a track on the bone, where levels are known from the landmark. */
  public Optional<Dimension> levelOnBone(Track track) {
    return fromZone ? Optional.empty() : track.level();
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
   * Return the older tracks as an operation's own screws meet them, once its own cuts are closed
   * and what it takes out is out.
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

  private List<OldTrack> tracks(int before, int upTo) {
    Set<String> filled = Filled.after(operations(upTo + 1));
    List<OldTrack> found = new ArrayList<>();
    for (int then = 0; then < before; then++) {
      for (Track track : drilled.get(then)) {
        old(track, then, upTo, filled.contains(track.name())).ifPresent(found::add);
      }
    }
    return List.copyOf(found);
  }

  private Optional<OldTrack> old(Track track, int then, int upTo, boolean filled) {
    Operation operation = steps.get(then).operation();
    if (track.level().isEmpty()) {
      boolean cutSince = cuts.before(upTo + 1).stream().anyMatch(cut -> cut.round() > then);
      return Optional.of(
          new OldTrack(track, Optional.empty(), operation.id(), operation.day(), filled, cutSince));
    }
    Dimension level = track.level().get();
    Dimension asInjured = fromZone ? level : cuts.asInjured(level, then);
    return cuts.moved(level, then, upTo)
        .map(
            now ->
                new OldTrack(
                    track.at(now),
                    Optional.of(asInjured),
                    operation.id(),
                    operation.day(),
                    filled,
                    cuts.mayBeGone(level, then, upTo)));
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
        && operation.fixation().get().stream().allMatch(put -> put.untoldScrews().isEmpty())
        && drilled.get(round).stream().allMatch(track -> track.level().isPresent());
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
        .flatMap(
            plate ->
                plate.screws().stream()
                    .flatMap(List::stream)
                    .filter(row -> row.at().stream().anyMatch(h -> track.isOf(plate.id(), h))))
        .flatMap(row -> row.track().stream())
        .findFirst();
  }
}
