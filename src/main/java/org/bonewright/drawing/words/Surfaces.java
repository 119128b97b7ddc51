package org.bonewright.drawing.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Direction;
import org.bonewright.measures.Words;

/**
 * The surfaces of a bone by name. A clavicle lies across: what the case file counts as lateral, 90
 * degrees, is its upper surface, and medial its lower one.
 */
public final class Surfaces {

  private final boolean liesAcross;

  /** Make the names for a bone. */
  public Surfaces(BoneName bone) {
    this.liesAcross = bone == BoneName.CLAVICLE;
  }

  /** Return the eight surfaces that have a name, anterior first, by way of lateral. */
  public static List<Direction> all() {
    return Arrays.stream(Direction.Named.values()).map(Direction.Named::direction).toList();
  }

  /** Return the name of a direction, or its degrees where it has none. */
  public String name(Direction direction) {
    return Arrays.stream(Direction.Named.values())
        .filter(named -> named.direction().equals(direction))
        .findFirst()
        .map(named -> word(Words.written(named)))
        .orElseGet(() -> Dimension.number(direction.degrees()) + "° from anterior");
  }

  private String word(String name) {
    return liesAcross ? name.replace("lateral", "superior").replace("medial", "inferior") : name;
  }

  /** Return the name of a direction that may not have been recorded. */
  public String name(Optional<Direction> direction) {
    return direction.map(this::name).orElse("surface not recorded");
  }
}
