package org.bonewright.mechanics.model;

import java.util.List;
import java.util.OptionalInt;
import org.bonewright.mechanics.answer.LagDemand;
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Axes;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.HollowCircle;

/**
 * A lag screw: its head rests on one fragment as on a patch, without friction against tilting; a
 * beam of its core leads to the cortex that holds its thread.
 */
final class LagColumn {

  /**
   * Keeps a bone that hangs on one lag screw, or on none that is tight, from moving without any
   * resistance: N/mm and N·mm/rad, too soft to count.
   */
  private static final Six HUNG = new Six(1, 1, 1, 10, 10, 10);

  private final LaggedScrew screw;
  private final Joined.Spot head;
  private final int beam;
  private final double length;

  private LagColumn(LaggedScrew screw, Joined.Spot head, int beam, double length) {
    this.screw = screw;
    this.head = head;
    this.beam = beam;
    this.length = length;
  }

  /** Put a lag screw into a frame. */
  static LagColumn of(Frame frame, LaggedScrew screw, Shaft shaft, BoneLine bone) {
    Vector out = Turned.outward(screw.azimuth());
    Vector from = place(out, screw.head());
    Vector to = place(out, screw.thread());
    Vector across = Turned.outward(screw.azimuth() + 90);
    Axes axes = Axes.of(to.minus(from), across);
    int onHead = frame.node(from);
    int onThread = frame.node(to);
    double length = to.minus(from).length();
    int beam =
        frame.link(
            Beams.link(
                onHead,
                onThread,
                from,
                to,
                across,
                List.of(
                    new Beams.Piece(length, HollowCircle.solid(screw.core()).of(screw.material()))),
                List.of()));
    frame.link(
        Link.springs(
            bone.at(screw.thread().at()),
            onThread,
            to,
            axes,
            CortexSupport.springs(shaft.material(), shaft.section(), screw.major(), 1)));
    Six rest =
        new Patch(new Head.Pressed(screw.force(), screw.headRadius(), 0), shaft.material())
            .springs();
    Link link =
        Link.springs(
            bone.at(screw.head().at()),
            onHead,
            from,
            axes,
            new Six(rest.along(), rest.away(), rest.across(), 0, 0, 0));
    frame.link(link);
    frame.link(Link.springs(bone.at(screw.head().at()), onHead, from, axes, HUNG));
    Joined.Spot spot =
        new Joined.Spot(
            OptionalInt.empty(), screw.head().at(), link, LagStand.tight(screw.force(), 0));
    return new LagColumn(screw, spot, beam, length);
  }

  private static Vector place(Vector out, LaggedScrew.Place place) {
    return out.times(place.out()).plus(BoneLine.ALONG.times(place.at()));
  }

  /** Return the point under its head, which may come loose. */
  Joined.Spot head() {
    return head;
  }

  /** Return the screw. */
  LaggedScrew screw() {
    return screw;
  }

  /**
   * Return what it carries.
   *
   * @param stand how its head stands
   */
  LagDemand demand(Answer answer, Stand stand) {
    Shaft shaft = answer.response().reduced().fixed().shaft();
    Six atThread = answer.force(beam);
    double moment =
        Math.max(
            Math.hypot(atThread.aboutAway(), atThread.aboutAcross()),
            Math.hypot(
                atThread.aboutAway() - length * atThread.across(),
                atThread.aboutAcross() + length * atThread.away()));
    HollowCircle core = HollowCircle.solid(screw.core());
    return new LagDemand(
        screw.head().at(),
        atThread.along(),
        Math.hypot(atThread.away(), atThread.across()),
        moment,
        moment * screw.core() / 2 / core.weak() + Math.abs(atThread.along()) / core.area(),
        HeldThread.capacity(screw.major(), screw.core(), screw.pitch(), shaft, 1),
        stand.settled());
  }
}
