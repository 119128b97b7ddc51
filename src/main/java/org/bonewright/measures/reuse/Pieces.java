package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.InsideMetal;
import org.bonewright.bone.ledger.Ledger;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.casefile.PieceDecision;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Pieces of metal that earlier operations left in the bone, and what is decided about them. */
final class Pieces implements Measure {

  /** What is asked. */
  enum What {
    /** How many there are. */
    FOUND,
    /** How many have no decision. */
    UNDECIDED,
    /** How many stay, decided or not. */
    KEPT,
    /** How close the nearest one that stays lies to a new screw, bolt or pin. */
    TO_SCREW
  }

  private final What what;

  Pieces(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case FOUND ->
          new Definition(
              "pieces-left",
              "Pieces of metal left inside",
              Definition.count(1),
              "broken or cut pieces that earlier operations left in the bone and no one took out",
              List.of("operations/removed/left", "operations/pieces"),
              "bookkeeping");
      case UNDECIDED ->
          new Definition(
              "pieces-undecided",
              "Pieces without a decision",
              Definition.count(1),
              "pieces (pieces-left) for which no stage says whether they stay or come out",
              List.of("pieces-left", "operations/pieces"),
              "bookkeeping");
      case KEPT ->
          new Definition(
              "pieces-kept",
              "Pieces that stay",
              Definition.count(1),
              "pieces (pieces-left) that are not taken out, whether or not that was decided",
              List.of("pieces-left", "operations/pieces"),
              "bookkeeping");
      case TO_SCREW ->
          new Definition(
              "piece-to-screw",
              "Piece that stays to the nearest new screw",
              Definition.millimetres(),
              "distance along the bone from a piece that stays (pieces-kept) to the edge of the"
                  + " nearest new screw, bolt or pin; its side is not recorded, so that only the"
                  + " level counts",
              List.of("pieces-kept", "operations/removed/left/atMm", "operations/fixation/place"),
              "our convention");
    };
  }

  @Override
  public Reading take(Scene scene) {
    List<InsideMetal> found = HoleMap.pieces(scene);
    List<InsideMetal> undecided =
        found.stream().filter(piece -> decision(scene, piece).isEmpty()).toList();
    List<InsideMetal> kept =
        found.stream()
            .filter(
                piece ->
                    !decision(scene, piece).equals(Optional.of(PieceDecision.Decision.REMOVED)))
            .toList();
    boolean silent =
        !undecided.isEmpty()
            && scene.subject().steps().stream().anyMatch(step -> step.pieces().isEmpty());
    int decided = kept.size() - undecided.size();
    return switch (what) {
      case FOUND -> Reading.number(found.size(), names(found));
      case UNDECIDED -> count(scene, silent ? 0 : undecided.size(), undecided);
      case KEPT -> count(scene, silent ? decided : kept.size(), kept);
      case TO_SCREW ->
          kept.isEmpty()
              ? new Reading.None("no piece stays")
              : silent ? Reading.unknown(asked(scene)) : toScrew(scene, kept);
    };
  }

  private static Optional<PieceDecision.Decision> decision(Scene scene, InsideMetal piece) {
    return scene.subject().steps().stream()
        .flatMap(step -> step.pieces().stream().flatMap(List::stream))
        .filter(decision -> decision.of().equals(piece.path()))
        .map(PieceDecision::decision)
        .reduce((earlier, later) -> later);
  }

  private static MissingFact asked(Scene scene) {
    return scene.missing("pieces", "What was done about each piece of metal left inside?");
  }

  private static Reading count(Scene scene, int min, List<InsideMetal> most) {
    return new Reading.Amount(
        min,
        most.size(),
        Kind.FACT,
        names(most),
        min == most.size() ? List.of() : List.of(asked(scene)));
  }

  private static String names(List<InsideMetal> pieces) {
    return pieces.isEmpty()
        ? "none"
        : String.join(
            ", ", pieces.stream().map(p -> p.path() + " (" + p.piece().orElse("") + ")").toList());
  }

  private static Reading toScrew(Scene scene, List<InsideMetal> kept) {
    List<MissingFact> gaps = HoleMap.gapsAtEnd(scene);
    if (!gaps.isEmpty()) {
      return new Reading.Unknown(gaps);
    }
    Extremes distances = new Extremes();
    List<String> near = new ArrayList<>();
    for (InsideMetal piece : kept) {
      for (OldTrack hole : Holes.in(scene).drilled()) {
        Optional<Dimension> distance =
            levelNow(scene, piece).flatMap(level -> distance(level, hole));
        distance.ifPresent(apart -> distances.add(apart, true));
        distance
            .filter(apart -> apart.min() <= hole.track().diameter().max())
            .ifPresent(apart -> near.add(piece.path() + " by " + hole.track().name()));
      }
    }
    return distances
        .least()
        .map(
            least ->
                Reading.number(
                    least,
                    near.isEmpty() ? "none close" : String.join(", ", near),
                    scene.missing("fixation", "At which levels do pieces and new screws lie?")))
        .orElseGet(() -> new Reading.None("no new screw, or no piece left in the bone"));
  }

  /**
   * Return the level of a piece as it reads at the end; empty where it was cut out with its bone.
   */
  private static Optional<Dimension> levelNow(Scene scene, InsideMetal piece) {
    Ledger ledger = scene.ledger();
    String left = piece.path().substring(0, piece.path().indexOf('/'));
    int from = ledger.round(left).orElse(0);
    return piece
        .level()
        .flatMap(
            level ->
                ledger
                    .cuts()
                    .moved(Dimension.stated(level, "level stated"), from, ledger.rounds() - 1));
  }

  private static Optional<Dimension> distance(Dimension piece, OldTrack hole) {
    return hole.track()
        .level()
        .map(
            level -> {
              Dimension apart = level.minus(piece);
              double least =
                  apart.min() <= 0 && apart.max() >= 0
                      ? 0
                      : Math.min(Math.abs(apart.min()), Math.abs(apart.max()));
              double most = Math.max(Math.abs(apart.min()), Math.abs(apart.max()));
              Dimension wide = hole.track().diameter();
              return new Dimension(
                  Math.max(0, least - wide.max() / 2),
                  Math.max(0, most - wide.min() / 2),
                  apart.assumed(),
                  "");
            });
  }
}
