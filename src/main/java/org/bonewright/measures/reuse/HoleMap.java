package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.bone.ledger.InsideMetal;
import org.bonewright.bone.ledger.Ledger;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Whether every hole and piece of metal that a subject finds is known, and agrees with what it says
 * of its own screws.
 */
final class HoleMap implements Measure {

  /** A level known no better than this leaves the place of a hole open, mm; our convention. */
  private static final double WIDEST_LEVEL = 10;

  /** A diameter known no better than this leaves the hole open, mm; our convention. */
  private static final double WIDEST_DIAMETER = 1;

  @Override
  public Definition definition() {
    return new Definition(
        "hole-map",
        "Map of the old holes",
        Definition.words("complete", "contradicted"),
        "complete when level (to 10 mm), diameter (to 1 mm), side and cortices of every earlier"
            + " screw, bolt and pin are known, and the level of every piece left; contradicted when"
            + " it is complete and a new screw said to bite into fresh bone overlaps an old hole by"
            + " more than 1 mm, or one said to use an old hole finds none; not known where part of"
            + " it is missing",
        List.of(
            "operations/fixation", "operations/removed/left", "operations/fixation/screws/track"),
        "common practice; the tolerances are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<MissingFact> gaps = gaps(scene);
    if (!gaps.isEmpty()) {
      return new Reading.Unknown(gaps);
    }
    List<NewScrew> screws = NewScrew.all(scene);
    boolean anyHole = !Holes.in(scene).old().isEmpty();
    List<String> wrong =
        screws.stream()
            .filter(screw -> contradicts(screw, anyHole))
            .map(screw -> screw.bite().track().name())
            .toList();
    if (!wrong.isEmpty()) {
      return Reading.word("contradicted", String.join(", ", wrong));
    }
    if (screws.stream().anyMatch(HoleMap::mayContradict)) {
      return Reading.words(
          new TreeSet<>(Set.of("complete", "contradicted")),
          Kind.FACT,
          "a screw may lie otherwise than said",
          placeOfNewPlate(scene));
    }
    return Reading.word("complete", Holes.in(scene).old().size() + " old holes, all known");
  }

  /** Without a clearance there is no old hole, or the place of the new screw is not known. */
  private static boolean contradicts(NewScrew screw, boolean anyHole) {
    return said(screw, ScrewRow.Track.FRESH)
        ? screw.bite().clearance().map(c -> c.max() < -Bite.FILM_ERROR).orElse(false)
        : saidOld(screw) && screw.bite().clearance().map(c -> c.min() > 0).orElse(!anyHole);
  }

  private static boolean mayContradict(NewScrew screw) {
    Optional<Dimension> clearance = screw.bite().clearance();
    return said(screw, ScrewRow.Track.FRESH)
        ? clearance.map(c -> c.min() < -Bite.FILM_ERROR).orElse(false)
        : saidOld(screw) && clearance.map(c -> c.max() > 0).orElse(true);
  }

  private static boolean saidOld(NewScrew screw) {
    return said(screw, ScrewRow.Track.OLD_HOLE) || said(screw, ScrewRow.Track.OLD_HOLE_LARGER);
  }

  private static boolean said(NewScrew screw, ScrewRow.Track track) {
    return screw.row().track().equals(Optional.of(track));
  }

  /** Return what is to be asked where the new plate cannot be told from old holes. */
  static MissingFact placeOfNewPlate(Scene scene) {
    String id =
        NewScrew.plates(scene).stream().map(p -> p.plate().id()).findFirst().orElse("plate");
    return scene.missing(
        "fixation/" + id + "/place", "At which level does hole 1 of " + id + " lie?");
  }

  /** Return what is not known of the holes and pieces that the subject finds. */
  static List<MissingFact> gaps(Scene scene) {
    return scene.once("hole-map-gaps", () -> findGaps(scene));
  }

  private static List<MissingFact> findGaps(Scene scene) {
    Ledger ledger = scene.ledger();
    Set<MissingFact> gaps = new LinkedHashSet<>();
    List<Operation> before = scene.subject().before();
    for (int round = 0; round < before.size(); round++) {
      Operation operation = before.get(round);
      String id = operation.id();
      if (operation.fixation().isEmpty()) {
        gaps.add(scene.missingInCase(id + "/fixation", "What did " + id + " put into the bone?"));
      }
      for (Implant implant : operation.fixation().orElse(List.of())) {
        implant
            .untoldScrews()
            .map(field -> id + "/fixation/" + implant.id() + "/" + field)
            .map(
                field ->
                    scene.missingInCase(
                        field, "Where are the screws of " + id + "/" + implant.id() + "?"))
            .ifPresent(gaps::add);
      }
      ledger.drilledBy(round).forEach(track -> gaps.addAll(gaps(scene, id, track)));
    }
    pieces(scene).stream()
        .filter(piece -> piece.level().isEmpty())
        .forEach(
            piece ->
                gaps.add(
                    scene.missingInCase(
                        piece.path() + "/atMm", "At which level does " + piece.path() + " lie?")));
    return List.copyOf(gaps);
  }

  /** Return what is not known of any hole at the end of the subject, its own included. */
  static List<MissingFact> gapsAtEnd(Scene scene) {
    Set<MissingFact> gaps = new LinkedHashSet<>(gaps(scene));
    for (Operation step : scene.subject().steps()) {
      if (step.fixation().isEmpty()) {
        gaps.add(scene.missing("fixation", "Which implants were put in?"));
      }
      for (Implant implant : step.fixation().orElse(List.of())) {
        implant
            .untoldScrews()
            .map(field -> "fixation/" + implant.id() + "/" + field)
            .map(field -> scene.missing(field, "Where are the screws of " + implant.id() + "?"))
            .ifPresent(gaps::add);
      }
    }
    Holes.in(scene).drilled().stream()
        .map(OldTrack::track)
        .filter(track -> track.level().isEmpty())
        .map(track -> track.implant().substring(track.implant().indexOf('/') + 1))
        .forEach(
            id ->
                gaps.add(
                    scene.missing(
                        "fixation/" + id + "/place",
                        "At which level do the holes of " + id + " lie?")));
    return List.copyOf(gaps);
  }

  /** Return the pieces of metal that the subject finds. */
  static List<InsideMetal> pieces(Scene scene) {
    return scene.ledger().metalFoundBy(scene.subject().before().size()).stream()
        .filter(metal -> metal.piece().isPresent())
        .toList();
  }

  private static List<MissingFact> gaps(Scene scene, String operation, Track track) {
    String implant = track.implant();
    String field = operation + "/fixation/" + implant.substring(implant.indexOf('/') + 1) + "/";
    List<MissingFact> gaps = new ArrayList<>();
    if (track.level().map(level -> level.max() - level.min() > WIDEST_LEVEL).orElse(true)) {
      gaps.add(
          scene.missingInCase(
              field + levelField(track),
              "At which level, to "
                  + (int) WIDEST_LEVEL
                  + " mm, are the holes of "
                  + implant
                  + "?"));
    }
    if (track.diameter().max() - track.diameter().min() > WIDEST_DIAMETER) {
      gaps.add(
          scene.missingInCase(
              field + "diameterMm", "How thick were the screws of " + implant + "?"));
    }
    if (track.direction().isEmpty()) {
      gaps.add(scene.missingInCase(field + "side", "From which side did " + implant + " go in?"));
    }
    if (track.reach() == Track.Reach.UNSURE) {
      gaps.add(
          scene.missingInCase(
              field + "screws/cortices",
              "Did the screws of " + implant + " cross one cortex or both?"));
    }
    return gaps;
  }

  private static String levelField(Track track) {
    return switch (track.kind()) {
      case PLATE_SCREW, LOCKING_PLATE_SCREW -> "place";
      case LAG_SCREW -> "atMm";
      case BOLT -> "bolts/atMm";
      case PIN -> "pins/atMm";
    };
  }
}
