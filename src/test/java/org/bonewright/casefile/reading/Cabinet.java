package org.bonewright.casefile.reading;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Kind;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Written;

/** A record with one component of every type that a file can hold. */
record Cabinet(
    @Meaning("Name on the door.") String label,
    @Written(regex = "[a-z]+(-[0-9]{1,3})?", inWords = "small letters, then perhaps a number")
        String code,
    boolean locked,
    @Between(min = 1, max = 12) int shelves,
    int serial,
    @Between(min = 0.5, max = 200) double weightKg,
    double tilt,
    Wood wood,
    @Meaning("Depth inside, in mm.") @Between(min = 0, max = 600) Quantity depthMm,
    Direction facing,
    Tool favourite,
    Hinge hinge,
    List<Tool> tools,
    List<String> notes,
    @Between(min = 1, max = 9) List<Integer> keys,
    Optional<String> remark,
    Optional<Boolean> oiled,
    Optional<Wood> trim,
    @Between(min = -2, max = 2) Optional<Integer> offset,
    Optional<Double> value,
    @Between(min = 0, max = 600) Optional<Quantity> gapMm,
    Optional<Direction> slope,
    Optional<Hinge> spare,
    @Between(min = 0, max = 50) Optional<List<Quantity>> holesMm,
    Optional<Cabinet> inner) {

  enum Wood {
    OAK,
    RED_BEECH,
    GRADE_IIIB
  }

  record Hinge(@Between(min = 1, max = 9) int pins, @Between(min = 1, max = 9) int leaves) {
    Hinge {
      if (pins > leaves) {
        throw new IllegalArgumentException("more pins than leaves");
      }
    }
  }

  sealed interface Tool permits Saw, Hammer, Powered {}

  @Kind("saw")
  record Saw(@Between(min = 2, max = 40) Optional<Integer> teeth) implements Tool {}

  @Kind("hammer")
  record Hammer(@Between(min = 0.1, max = 5) double headKg) implements Tool {}

  sealed interface Powered extends Tool permits Drill {}

  @Kind("power-drill")
  record Drill(Optional<String> maker) implements Powered {}
}
