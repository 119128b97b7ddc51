package org.bonewright.measures.reuse;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.bone.ledger.Ledger;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Opening;
import org.bonewright.bone.ledger.Track;
import org.bonewright.measures.Scene;

/**
 * The holes in the bone at the end of a subject, in levels as read then.
 *
 * @param scene the subject
 * @param all every hole
 */
record Holes(Scene scene, List<OldTrack> all) {

  static Holes in(Scene scene) {
    Ledger ledger = scene.ledger();
    return scene.once("holes", () -> new Holes(scene, ledger.leftBy(ledger.rounds() - 1)));
  }

  private int first() {
    return scene.subject().before().size();
  }

  /** Return whether the subject itself drills it. */
  boolean isNew(OldTrack hole) {
    return hole.track().round() >= first();
  }

  /** Return those that were there before. */
  List<OldTrack> old() {
    return all.stream().filter(hole -> !isNew(hole)).toList();
  }

  /** Return those that the subject drills. */
  List<OldTrack> drilled() {
    return all.stream().filter(this::isNew).toList();
  }

  /** Return those that the subject opens, by taking metal out, and leaves without metal. */
  List<OldTrack> opened() {
    Set<String> filledBefore = new HashSet<>();
    scene.ledger().foundBy(first()).stream()
        .filter(OldTrack::filled)
        .forEach(hole -> filledBefore.add(hole.track().name()));
    return all.stream()
        .filter(hole -> !hole.filled())
        .filter(hole -> isNew(hole) || filledBefore.contains(hole.track().name()))
        .filter(hole -> refill(hole) != Refill.CERTAIN)
        .toList();
  }

  /** Whether new metal goes into an old hole. */
  enum Refill {
    CERTAIN,
    PERHAPS,
    NO
  }

  /** Return whether new metal fills a hole again: its middle then lies within the screw. */
  Refill refill(OldTrack hole) {
    Refill found = Refill.NO;
    for (OldTrack metal : all) {
      if (metal.filled() && !metal.track().name().equals(hole.track().name())) {
        Dimension apart = apart(hole.track(), metal.track());
        if (apart.max() <= metal.track().diameter().min() / 2) {
          return Refill.CERTAIN;
        }
        found = apart.min() <= metal.track().diameter().max() / 2 ? Refill.PERHAPS : found;
      }
    }
    for (NewScrew screw : NewScrew.all(scene)) {
      boolean near = screw.bite().closest().contains(hole.track().name());
      if (screw.bite().contact() == Bite.Contact.REUSED && near) {
        if (screw.bite().closest().size() == 1) {
          return Refill.CERTAIN;
        }
        found = Refill.PERHAPS;
      }
    }
    return found;
  }

  /** Return the distance in mm of the middles of the openings that come closest. */
  private Dimension apart(Track one, Track other) {
    Extremes apart = new Extremes();
    Dimension outer = outer(one);
    List<Opening> others = Opening.of(other, outer);
    for (Opening a : Opening.of(one, outer)) {
      for (Opening b : others) {
        apart.add(a.centres(b, outer), a.certain() && b.certain());
      }
    }
    return apart.least().orElse(new Dimension(0, 1e6, true, "level not known"));
  }

  /** Return the outer diameter of the bone at a hole, mm. */
  Dimension outer(Track hole) {
    return scene.bone().outerAt(scene.ledger().levelOnBone(hole));
  }

  /** Return which share of the bone a hole takes: diameter / outer diameter. */
  Dimension ratio(Track hole) {
    return hole.diameter().over(outer(hole));
  }
}
