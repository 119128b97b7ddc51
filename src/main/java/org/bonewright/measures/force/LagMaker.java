package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Scene;

/**
 * Makes the sketches of the lag screws that press a closed line. The line of the model runs
 * straight across, that of the file seldom does: so the levels of a screw do not count, only its
 * angle to the line. Our conventions: it crosses the line within a quarter of the radius from the
 * middle, the next one on the other side; an angle that is not told is 75 to 90 degrees; where the
 * line was pressed by a lag screw that is not told of, there is one. Usual diameters from memory. A
 * screw whose thread holds in the near fragment too presses nothing.
 */
final class LagMaker {

  private static final double OFF = 0.25;
  private static final Dimension ANGLE = Dimension.assumed(75, 90, "angle to the line not told");
  private static final Dimension NOTHING = Dimension.assumed(0, 0, "no gliding hole");

  private final Scene scene;
  private final double facing;

  /**
   * Prepare the sketches.
   *
   * @param facing direction around the bone from which azimuths are counted, in degrees
   */
  LagMaker(Scene scene, double facing) {
    this.scene = scene;
    this.facing = facing;
  }

  /** Return the screws; none where the ends do not touch, or no lag screw pressed them. */
  List<LagSketch> screws(LineSketch line) {
    if (!line.closed() || !line.central()) {
      return List.of();
    }
    List<LagScrew> told =
        scene.fixing().fixation().orElse(List.of()).stream()
            .filter(LagScrew.class::isInstance)
            .map(LagScrew.class::cast)
            .toList();
    List<LagSketch> screws = new ArrayList<>();
    for (LagScrew screw : told) {
      screws.add(screw(Optional.of(screw), line, screws.size()));
    }
    return told.isEmpty() ? List.of(screw(Optional.empty(), line, 0)) : screws;
  }

  private LagSketch screw(Optional<LagScrew> told, LineSketch line, int before) {
    double side = before % 2 == 0 ? OFF : -OFF;
    return new LagSketch(
        told.flatMap(LagScrew::direction).map(Direction::degrees).orElse(facing) - facing,
        Dimension.assumed(Math.min(0, side), Math.max(0, side), "lag screw aimed at the middle"),
        told.flatMap(LagScrew::angleToLineDeg).map(LagMaker::stated).orElse(ANGLE),
        told.flatMap(LagScrew::diameterMm).map(LagMaker::stated).orElseGet(this::usual),
        told.flatMap(LagScrew::glidingHole).equals(Optional.of(Answer.NO))
            ? NOTHING
            : line.pressed());
  }

  private Dimension usual() {
    return switch (scene.boneName()) {
      case FEMUR, TIBIA, HUMERUS -> Dimension.assumed(3.5, 4.5, "usual lag screw");
      case RADIUS, ULNA, CLAVICLE -> Dimension.assumed(2.7, 3.5, "usual lag screw");
    };
  }

  private static Dimension stated(Quantity quantity) {
    return Dimension.stated(quantity, "stated");
  }
}
