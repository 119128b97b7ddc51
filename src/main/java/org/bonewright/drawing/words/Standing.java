package org.bonewright.drawing.words;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.ObjIntConsumer;
import java.util.stream.Collectors;
import org.bonewright.bone.Construct;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.bone.ledger.InsideMetal;
import org.bonewright.bone.ledger.Ledger;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Scene;

/**
 * The bone at the end of a subject: all metal in it, every track, the zone; each with its level as
 * it reads then.
 */
public final class Standing {

  private final Scene scene;
  private final Ledger ledger;
  private final Levels levels;
  private final List<Construct.Held> inside;
  private final List<Drilled> tracks;

  /** Look at the end of a scene's subject. */
  public Standing(Scene scene) {
    this.scene = scene;
    this.ledger = scene.ledger();
    this.levels = Levels.of(scene);
    this.inside = Construct.inside(scene.subject().upToHere()).implants();
    this.tracks = drilled();
  }

  /**
   * An implant in the bone.
   *
   * @param path its name in the history
   * @param implant the implant without what was taken out
   * @param round number of the operation that put it in, from 0
   * @param own whether the subject itself put it in
   */
  public record Metal(String path, Implant implant, int round, boolean own) {}

  /**
   * A plate on the bone.
   *
   * @param metal the plate as metal
   * @param placed the plate over the zone
   * @param broken the hole at which it broke, where recorded
   */
  public record Laid(Metal metal, PlacedPlate placed, Optional<Integer> broken) {
    /** Return the name of a hole in the history. */
    public String holeName(int hole) {
      return metal.path() + " hole " + hole;
    }
  }

  /**
   * A track.
   *
   * @param old the track with its level as it reads now
   * @param own whether the subject drilled it and its metal lies in it
   * @param bite what the screw found, for the subject's own plate screws
   */
  public record Drilled(OldTrack old, boolean own, Optional<Bite> bite) {}

  /** Return the names of the bone's surfaces. */
  public Surfaces surfaces() {
    return new Surfaces(scene.boneName());
  }

  /** Return the scene. */
  public Scene scene() {
    return scene;
  }

  /** Return from where levels are counted. */
  public Levels levels() {
    return levels;
  }

  /** Return the zone in these levels; its centre is 0 where levels are counted from it. */
  public FractureZone zone() {
    return levels.fromLandmark() ? scene.zone() : ledger.zoneOfLevels(ledger.rounds() - 1);
  }

  /** Return the level of the near end of the bone, mm; meant where levels are from the landmark. */
  public double nearEnd() {
    return -scene.subject().caseFile().bone().landmarkOffsetMm().map(Quantity::middle).orElse(0.0);
  }

  /** Return the level of the far end of the bone, less what resections took. */
  public Dimension farEnd() {
    Dimension shortened = ledger.cuts().shortenedBy(lastRound());
    return scene.bone().length().minus(shortened).plus(nearEnd());
  }

  /** Return all metal in the bone, the oldest first. */
  public List<Metal> metal() {
    int first = scene.subject().before().size();
    return inside.stream()
        .map(
            held -> {
              int round = ledger.round(held.operation()).orElse(0);
              return new Metal(held.path(), held.implant(), round, round >= first);
            })
        .toList();
  }

  /** Return the plates in the bone, the subject's own last. */
  public List<Laid> plates() {
    return metal().stream()
        .filter(metal -> metal.implant() instanceof Plate)
        .map(
            metal -> {
              Plate plate = (Plate) metal.implant();
              FractureZone over = ledger.zoneOfLevels(metal.round());
              return new Laid(
                  metal, new PlacedPlate(plate, over, lagHoles(metal)), broken(metal, plate));
            })
        .toList();
  }

  private Set<Integer> lagHoles(Metal plate) {
    return metal().stream()
        .filter(metal -> metal.round() == plate.round())
        .map(Metal::implant)
        .filter(LagScrew.class::isInstance)
        .map(LagScrew.class::cast)
        .filter(lag -> lag.throughPlate().equals(Optional.of(plate.implant().id())))
        .flatMap(lag -> lag.hole().stream())
        .collect(Collectors.toSet());
  }

  /** The file names the hole, not the plate: only the one plate of an operation is marked. */
  private Optional<Integer> broken(Metal metal, Plate plate) {
    Operation by = scene.subject().upToHere().get(metal.round());
    long plates = by.fixation().orElse(List.of()).stream().filter(Plate.class::isInstance).count();
    boolean broke =
        by.outcome()
            .flatMap(outcome -> outcome.mode())
            .map(mode -> mode.isA(FailureMode.PLATE_BROKEN))
            .orElse(false);
    return broke && plates == 1 && !plate.id().isEmpty()
        ? by.outcome().flatMap(outcome -> outcome.hole())
        : Optional.empty();
  }

  /** Return how a nail broke, where that is recorded and it was the only nail of its operation. */
  public Optional<FailureMode> nailBroke(Metal metal) {
    Operation by = scene.subject().upToHere().get(metal.round());
    long nails = by.fixation().orElse(List.of()).stream().filter(Nail.class::isInstance).count();
    return metal.implant() instanceof Nail && nails == 1
        ? by.outcome()
            .flatMap(outcome -> outcome.mode())
            .filter(mode -> mode.isA(FailureMode.NAIL_BROKEN))
        : Optional.empty();
  }

  /** Return the level of a hole as it reads now. */
  public Optional<Dimension> level(Laid laid, int hole) {
    return laid.placed()
        .level(hole)
        .flatMap(level -> ledger.now(level, laid.metal().round()))
        .map(levels::told);
  }

  /** Do something with each hole of a plate whose level is known, in order. */
  public void eachHole(Laid laid, ObjIntConsumer<Dimension> what) {
    laid.placed()
        .allHoles()
        .forEach(hole -> level(laid, hole).ifPresent(level -> what.accept(level, hole)));
  }

  /**
   * Return the level as it reads now of what was read from the landmark at an operation; nothing
   * where levels are not counted from there, or the bone there is gone.
   */
  public Optional<Dimension> level(Quantity read, int round) {
    Dimension level = Dimension.stated(read, "level stated");
    return levels.fromLandmark()
        ? ledger.cuts().moved(level, round, lastRound())
        : Optional.empty();
  }

  private int lastRound() {
    return ledger.rounds() - 1;
  }

  /** Return every track in the bone, old and new, the oldest first. */
  public List<Drilled> tracks() {
    return tracks;
  }

  private List<Drilled> drilled() {
    int first = scene.subject().before().size();
    Map<String, Bite> bites = new HashMap<>();
    for (int round = first; round < ledger.rounds(); round++) {
      ledger.bites(round).forEach(bite -> bites.put(bite.track().name(), bite));
    }
    return ledger.foundBy(ledger.rounds()).stream()
        .map(this::told)
        .map(
            old -> {
              boolean own = old.track().round() >= first && old.filled();
              Optional<Bite> bite = Optional.ofNullable(bites.get(old.track().name()));
              return new Drilled(old, own, own ? bite : Optional.empty());
            })
        .toList();
  }

  private OldTrack told(OldTrack old) {
    return old.track()
        .level()
        .map(
            level ->
                new OldTrack(
                    old.track().at(levels.told(level)),
                    old.asInjured(),
                    old.operation(),
                    old.day(),
                    old.filled(),
                    old.mayBeGone()))
        .orElse(old);
  }

  /** Return the pieces of metal left behind. */
  public List<InsideMetal> pieces() {
    return ledger.metalAfter(lastRound()).stream().filter(m -> m.piece().isPresent()).toList();
  }

  /** Do something with each piece of metal left behind whose level is known. */
  public void eachPiece(BiConsumer<InsideMetal, Dimension> what) {
    for (InsideMetal piece : pieces()) {
      piece
          .level()
          .flatMap(read -> level(read, roundOf(piece)))
          .ifPresent(level -> what.accept(piece, level));
    }
  }

  /** Return the number of the operation that left a piece, from 0. */
  public int roundOf(InsideMetal piece) {
    String operation = piece.path().substring(0, piece.path().indexOf('/'));
    return ledger.round(operation).orElse(0);
  }
}
