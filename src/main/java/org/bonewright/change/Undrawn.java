package org.bonewright.change;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Why a move of a card is not drawn into a plan. */
enum Undrawn {
  /** It finds out or writes down how things are; a plan cannot make it so. */
  FACT(
      "It asks for a fact: find it out and write it into the file.",
      "map-holes",
      "markers",
      "measure-bone",
      "measure-defect",
      "name-nonunion",
      "read-failure",
      "record-nerve",
      "repeat-films"),

  /** It treats the patient before the operation, or calls in others. */
  PATIENT(
      "The patient is treated, or another specialist asked, before the operation; no drawing does"
          + " that.",
      "antibiotic-pause",
      "follow-nerve",
      "refer",
      "soft-tissue-cover",
      "team-review",
      "treat-host"),

  /** It is a plan of its own, against infection. */
  INFECTION(
      "Infection must be treated first, in stages, by a team that does this often; such a plan is"
          + " not drawn here.",
      "infection-plan"),

  /** What exactly is done, only a surgeon can design. */
  DESIGN(
      "Its moves need a design that only a surgeon can make; none can be drawn from here.",
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
      "plate-over-nail",
      "protect-lag-screw",
      "replace-lag-screw",
      "rescue-screw",
      "restore-length",
      "ring-fixator",
      "stagger-plates");

  private static final Map<String, Undrawn> BY_MOVE =
      java.util.Arrays.stream(values())
          .flatMap(why -> why.moves.stream().map(move -> Map.entry(move, why)))
          .collect(
              java.util.stream.Collectors.toUnmodifiableMap(
                  Map.Entry::getKey, Map.Entry::getValue));

  private final String words;
  private final Set<String> moves;

  Undrawn(String words, String... moves) {
    this.words = words;
    this.moves = Set.of(moves);
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
