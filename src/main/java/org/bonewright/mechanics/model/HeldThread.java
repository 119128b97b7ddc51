package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.hold.PullOut;

/**
 * The thread of a pressed screw that may be pulled out of the bone.
 *
 * @param screw index of the screw
 * @param neck the beam between plate and near cortex, the axis of the screw first
 * @param patch index of its patch; empty where it presses nothing
 * @param capacity pull in N that it bears
 */
record HeldThread(int screw, Link neck, OptionalInt patch, double capacity) {

  /** Return the threads of all pressed screws of which it is known what they bear. */
  static List<HeldThread> of(FixedBone fixed, Joined joined) {
    List<HeldThread> threads = new ArrayList<>();
    for (int i = 0; i < fixed.screws().size(); i++) {
      PlateScrew screw = fixed.screws().get(i);
      OptionalDouble capacity = ScrewDemands.capacity(screw, fixed.shaft());
      OptionalInt neck = joined.screws().get(i).neck();
      if (screw.head() instanceof Head.Pressed && capacity.isPresent() && neck.isPresent()) {
        Link link = joined.frame().link(neck.getAsInt());
        threads.add(new HeldThread(i, link, joined.patch(i), capacity.getAsDouble()));
      }
    }
    return threads;
  }

  /**
   * Return the pull in N that a thread bears; empty where the strength of the bone or the pitch is
   * not given.
   *
   * @param cortices how many of them hold it
   */
  static OptionalDouble capacity(
      double major, double core, double pitch, Shaft shaft, double cortices) {
    return shaft.shearStrength().isEmpty() || !(pitch > 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            new PullOut(major, core, pitch)
                .capacity(shaft.shearStrength().getAsDouble(), shaft.section().wall() * cortices));
  }

  /** Return the pull of its neck, in N, when it stretches so many mm. */
  double pull(double stretch) {
    return neck.stiffness().get(0, 0) * stretch;
  }
}
