package org.bonewright.change;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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
          Map.entry("change-screw-order", CareMoves::pressedFirst),
          Map.entry("change-surface", PlateChoices::turned),
          Map.entry("close-gap", CareMoves::closed),
          Map.entry("fewer-screws", PlateMoves::fewerScrews),
          Map.entry("leave-out-graft", CareMoves::noGraft),
          Map.entry("leave-out-lag-screw", LineMoves::noLagScrew),
          Map.entry("locking-screws", PlateMoves::locking),
          Map.entry("move-innermost-screws", PlateMoves::moveInnermost),
          Map.entry("name-concept", CareMoves::concept),
          Map.entry("open-canal", CareMoves::canalOpened),
          Map.entry("prebend-plate", CareMoves::prebent),
          Map.entry("ream-further", NailMoves::reamed),
          Map.entry("resect-ends", CareMoves::endsCutBack),
          Map.entry("restore-alignment", CareMoves::straight),
          Map.entry("sampling", CareMoves::samples),
          Map.entry("screw-length", PlateMoves::screwLengths),
          Map.entry("shift-plate", PlateReach::shifted),
          Map.entry("spread-screws", PlateMoves::moveInnermost),
          Map.entry("stagger-plates", PlateReach::staggered),
          Map.entry("static-locking", NailMoves::locked),
          Map.entry("strip-less", CareMoves::lessStripped),
          Map.entry("turn-plate", PlateChoices::turned));

  private static final Map<String, SettingMove> IN_ITS_SETTING =
      Map.ofEntries(
          Map.entry("add-strut", LineMoves::strut),
          Map.entry("change-to-nail", NailChoices::insteadOfPlate),
          Map.entry("change-to-plate", NewPlates::insteadOfNail),
          Map.entry("lag-screw", LineMoves::lagScrew),
          Map.entry("larger-nail", NailMoves::thicker),
          Map.entry("longer-nail", NailChoices::longer),
          Map.entry("longer-plate", PlateReach::longer),
          Map.entry("longer-strut", LineMoves::longerStrut),
          Map.entry("plate-over-nail", NewPlates::overNail),
          Map.entry("plug-hole", LineMoves::plugs),
          Map.entry("protect-lag-screw", NewPlates::overLagScrew),
          Map.entry("protect-load", CareMoves::load),
          Map.entry("second-plate", PlateChoices::second),
          Map.entry("set-aftercare", CareMoves::load),
          Map.entry("stronger-plate", PlateChoices::stronger),
          Map.entry("tension-device", LineMoves::tensionDevice),
          Map.entry("thicker-bolt", NailChoices::thickerBolts));

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
    Set<String> names = new TreeSet<>(ANYWHERE.keySet());
    names.addAll(IN_ITS_SETTING.keySet());
    return names;
  }
}
