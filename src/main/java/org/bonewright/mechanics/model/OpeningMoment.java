package org.bonewright.mechanics.model;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.frame.Loads;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.HollowCircle;

/**
 * The bending moment at which the cortex opposite to the plate opens: the pressure there from the
 * compression, over the tension there from a moment of 1 while the ends are closed all round.
 */
final class OpeningMoment {

  /**
   * A screw within one radius of the fracture disturbs plane sections; chosen against finite
   * elements.
   */
  private static final double NEAR_SCREW = 0.8;

  private OpeningMoment() {}

  /** Return the moment in N·m; empty where nothing presses the ends. */
  static OptionalDouble of(FixedBone fixed, Joined joined, Prestress prestress) {
    Optional<Prestress.Pull> pull = prestress.on(joined);
    if (pull.isEmpty() && fixed.beside().lags().stream().allMatch(lag -> lag.force() <= 0)) {
      return OptionalDouble.empty();
    }
    HollowCircle tube = fixed.shaft().section();
    Closed closed = Closed.of(fixed, joined);
    Loads press = joined.frame().loads();
    pull.ifPresent(known -> press.pair(known.at(), known.force()));
    joined.heads().forEach(head -> press.pair(head.link(), head.start().kept().times(-1)));
    double pressure = -atFarEdge(tube, closed.carried(press));
    Loads bend =
        joined
            .frame()
            .loads()
            .add(joined.bone().loaded(), new Vector(0, 0, 0), new Vector(0, 1, 0));
    double tension = atFarEdge(tube, closed.carried(bend));
    double moment = pressure / tension / 1000;
    boolean near =
        fixed.screws().stream().anyMatch(screw -> Math.abs(screw.at()) < tube.outer() / 2);
    return OptionalDouble.of(near ? NEAR_SCREW * moment : moment);
  }

  /** Return the stress at the outer edge opposite to the plate, tension positive, in MPa. */
  private static double atFarEdge(HollowCircle tube, Six carried) {
    return carried.along() / tube.area() + carried.aboutAcross() * tube.outer() / 2 / tube.weak();
  }
}
