package org.bonewright.change;

import java.util.Map;
import java.util.Optional;

/**
 * The moves of cards that can be tried out on a stage. What examines the patient, refers, or needs
 * a judgement that a file cannot hold is not among them, and neither is what would put in an
 * implant that nobody has chosen.
 */
final class StageMoves {

  private static final Map<String, StageMove> MOVES =
      Map.ofEntries(
          Map.entry("add-bolt", NailMoves::moreBolts),
          Map.entry("add-graft", CareMoves::graft),
          Map.entry("add-screw", PlateMoves::addScrew),
          Map.entry("bicortical-screw", PlateMoves::bicortical),
          Map.entry("close-gap", CareMoves::closed),
          Map.entry("fewer-screws", PlateMoves::fewerScrews),
          Map.entry("larger-nail", NailMoves::thicker),
          Map.entry("leave-out-graft", CareMoves::noGraft),
          Map.entry("locking-screws", PlateMoves::locking),
          Map.entry("longer-plate", PlateMoves::longer),
          Map.entry("move-innermost-screws", PlateMoves::moveInnermost),
          Map.entry("name-concept", CareMoves::concept),
          Map.entry("prebend-plate", CareMoves::prebent),
          Map.entry("protect-load", CareMoves::load),
          Map.entry("ream-further", NailMoves::reamed),
          Map.entry("sampling", CareMoves::samples),
          Map.entry("screw-length", PlateMoves::longerScrews),
          Map.entry("set-aftercare", CareMoves::load),
          Map.entry("shift-plate", PlateMoves::shifted),
          Map.entry("spread-screws", PlateMoves::moveInnermost),
          Map.entry("static-locking", NailMoves::locked),
          Map.entry("strip-less", CareMoves::lessStripped));

  private StageMoves() {}

  /** Return a move by its name in the cards; empty where it cannot be tried out. */
  static Optional<StageMove> of(String move) {
    return Optional.ofNullable(MOVES.get(move));
  }

  /** Return the names of all that can be tried out. */
  static java.util.Set<String> names() {
    return MOVES.keySet();
  }
}
