package org.bonewright.change;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a move of a card is not drawn into a plan. */
enum Undrawn {
  /** It finds out or writes down how things are; a plan cannot make it so. */
  FACT("It asks for a fact: find it out and write it into the file."),

  /** It treats the patient before the operation, or calls in others. */
  PATIENT(
      "The patient is treated, or another specialist asked, before the operation; no drawing does"
          + " that."),

  /** Infection is proven, and this plan cannot be parted in two stages here. */
  INFECTION(
      "Infection must be treated first, in stages, by a team that does this often. Two stages are"
          + " drawn here only for one stage with a plate on femur or tibia that takes out all metal"
          + " in the bone, where the levels for pins are known."),

  /** Infection is in doubt. */
  DOUBT(
      "Infection is in doubt: markers and samples first, graft and final metal after the result."
          + " What the result will be, no drawing can assume."),

  /** Length that is regained opens a gap. */
  LENGTH(
      "Length that is regained opens a gap as wide: whether graft, a membrane or transport fills it"
          + " is a design that only a surgeon can make."),

  /** What exactly is done, only a surgeon can design. */
  DESIGN("Its moves need a design that only a surgeon can make; none can be drawn from here.");

  private static final Map<String, Undrawn> BY_MOVE =
      Map.of(
              FACT,
              List.of(
                  "map-holes",
                  "markers",
                  "measure-bone",
                  "measure-defect",
                  "name-nonunion",
                  "read-failure",
                  "record-nerve",
                  "repeat-films"),
              PATIENT,
              List.of(
                  "antibiotic-pause",
                  "follow-nerve",
                  "refer",
                  "soft-tissue-cover",
                  "team-review",
                  "treat-host"),
              LENGTH,
              List.of("restore-length"),
              DESIGN,
              List.of(
                  "add-stability",
                  "augment-screw",
                  "blocking-screws",
                  "cement-screws",
                  "change-concept",
                  "change-failed-factor",
                  "change-timing",
                  "decide-on-pieces",
                  "end-screw",
                  "expose-nerve",
                  "fill-hole",
                  "leave-bolts",
                  "less-resection",
                  "one-metal",
                  "other-approach",
                  "overlap-metal",
                  "replace-lag-screw",
                  "rescue-screw",
                  "ring-fixator"))
          .entrySet()
          .stream()
          .flatMap(why -> why.getValue().stream().map(move -> Map.entry(move, why.getKey())))
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

  private final String words;

  Undrawn(String words) {
    this.words = words;
  }

  /** Return it in a sentence or two. */
  String words() {
    return words;
  }

  /** Return why a move is not drawn; empty where it can be. */
  static Optional<Undrawn> of(String move) {
    return Optional.ofNullable(BY_MOVE.get(move));
  }
}
