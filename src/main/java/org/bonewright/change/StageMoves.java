package org.bonewright.change;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The moves of cards that can be drawn into a stage. What examines the patient, refers, or needs a
 * judgement that a file cannot hold is not among them.
 */
final class StageMoves {

  private static final Map<String, Move> ANYWHERE =
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
          Map.entry("ream-further", NailMoves::reamed),
          Map.entry("sampling", CareMoves::samples),
          Map.entry("screw-length", PlateMoves::longerScrews),
          Map.entry("shift-plate", PlateMoves::shifted),
          Map.entry("spread-screws", PlateMoves::moveInnermost),
          Map.entry("static-locking", NailMoves::locked),
          Map.entry("strip-less", CareMoves::lessStripped));

  private static final Map<String, SettingMove> IN_ITS_SETTING =
      Map.of("protect-load", CareMoves::load, "set-aftercare", CareMoves::load);

  private final Setting setting;

  StageMoves(Setting setting) {
    this.setting = setting;
  }

  /** Return a move by its name in the cards; empty where it cannot be drawn into a stage. */
  Optional<Move> of(String move) {
    return Optional.ofNullable(ANYWHERE.get(move))
        .or(
            () ->
                Optional.ofNullable(IN_ITS_SETTING.get(move))
                    .map(ways -> stage -> ways.edits(stage, setting)));
  }

  /** Return the names of all that can be drawn. */
  static Set<String> names() {
    Set<String> names = new java.util.TreeSet<>(ANYWHERE.keySet());
    names.addAll(IN_ITS_SETTING.keySet());
    return names;
  }
}
