package org.bonewright.mechanics.model;

import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Axes;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.Material;

/**
 * The patch under a pressed screw where the plate rests on the bone: how stiff it is, and what it
 * can bear before it tilts, slips or lifts. Stiffness of a circular patch on an elastic half-space:
 * Mindlin; Johnson, Contact Mechanics (from memory).
 *
 * @param head the screw that presses
 * @param bone the cortex on which it presses
 */
record Patch(Head.Pressed head, Material bone) {

  /** What a patch has lost so far. */
  enum State {
    STICK,
    TILT,
    SLIP,
    LIFTED
  }

  /** Return its link while it is in a state. */
  Link link(int onBone, int onPlate, Vector at, Axes axes, boolean tilted, boolean slid) {
    double a = head.radius();
    double star = bone.young() / (1 - bone.poisson() * bone.poisson());
    double normal = 2 * star * a;
    double across = slid ? 0 : 8 * bone.shear() * a / (2 - bone.poisson());
    double twist = slid ? 0 : 16.0 / 3 * bone.shear() * Math.pow(a, 3);
    double tilt = tilted ? 0 : 4.0 / 3 * star * Math.pow(a, 3);
    return Link.springs(
        onBone, onPlate, at, axes, new Six(normal, across, across, twist, tilt, tilt));
  }

  /** Return the force that still presses, in N, when the connection pulls with {@code apart}. */
  double pressing(double apart) {
    return head.force() - apart;
  }

  /** Return the tangential force at which it slips, in N. */
  double slips(double apart) {
    return head.friction() * Math.max(0, pressing(apart));
  }

  /** Return the tilting moment that it can bear, in N·mm: the kern of a circle. */
  double tilts(double apart) {
    return Math.max(0, pressing(apart)) * head.radius() / 4;
  }
}
