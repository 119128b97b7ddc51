package org.bonewright.measures.plate;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.BoneName;
import org.bonewright.measures.Scene;

/**
 * The shaft of the two main fragments, from the zone to the metaphysis, in outer diameters of the
 * bone at the edge of the zone.
 *
 * @param near of the fragment towards the landmark
 * @param far of the other
 * @param shorter the sides that may be the shorter one
 */
record Fragments(Dimension near, Dimension far, Set<HoleSide> shorter) {

  /** Return the fragments, where it is told where the zone lies. */
  static Optional<Fragments> of(Scene scene) {
    return scene
        .zone()
        .centre()
        .flatMap(centre -> scene.zone().length().map(length -> around(scene, centre, length)));
  }

  private static Fragments around(Scene scene, Dimension centre, Dimension length) {
    Dimension half = new Dimension(length.min() / 2, length.max() / 2, length.assumed(), "");
    Dimension nearEdge = centre.minus(half);
    Dimension farEdge = centre.plus(half);
    Dimension toNearEnd = nearEdge.minus(nearEnd(scene));
    Dimension toFarEnd = farEnd(scene).minus(farEdge);
    Set<HoleSide> shorter = EnumSet.noneOf(HoleSide.class);
    if (toNearEnd.min() <= toFarEnd.max()) {
      shorter.add(HoleSide.NEAR);
    }
    if (toFarEnd.min() <= toNearEnd.max()) {
      shorter.add(HoleSide.FAR);
    }
    return new Fragments(
        shaft(toNearEnd, metaphysis(scene, HoleSide.NEAR, shorter))
            .over(scene.bone().outerAt(nearEdge)),
        shaft(toFarEnd, metaphysis(scene, HoleSide.FAR, shorter))
            .over(scene.bone().outerAt(farEdge)),
        shorter);
  }

  /** Return the length of the shaft of the fragment that is shorter by this count. */
  Dimension least() {
    return new Dimension(
        Math.min(near.min(), far.min()),
        Math.min(near.max(), far.max()),
        near.assumed() || far.assumed(),
        "");
  }

  /** Return the level of the bone's near end. */
  static Dimension nearEnd(Scene scene) {
    return scene
        .subject()
        .caseFile()
        .bone()
        .landmarkOffsetMm()
        .map(offset -> new Dimension(-offset.max(), -offset.min(), false, ""))
        .orElseGet(() -> new Dimension(0, 0, false, ""));
  }

  /** Return the level of the bone's far end. */
  static Dimension farEnd(Scene scene) {
    return nearEnd(scene).plus(scene.bone().length());
  }

  private static Dimension shaft(Dimension fragment, Dimension metaphysis) {
    Dimension left = fragment.minus(metaphysis);
    return left.notBelowZero().because("");
  }

  /** As long as it is wide; the width stated is that of the end nearest the zone. */
  private static Dimension metaphysis(Scene scene, HoleSide side, Set<HoleSide> shorter) {
    Bone bone = scene.subject().caseFile().bone();
    Dimension usual = usual(bone.name(), side);
    if (bone.metaphysealWidthMm().isEmpty() || !shorter.contains(side)) {
      return usual;
    }
    Dimension stated = Dimension.stated(bone.metaphysealWidthMm().get(), "");
    return shorter.size() == 1 ? stated : usual.or(stated);
  }

  /** Usual length of the metaphysis with its joint end in mm; from memory. */
  private static Dimension usual(BoneName bone, HoleSide side) {
    boolean near = side == HoleSide.NEAR;
    return switch (bone) {
      case HUMERUS -> near ? range(45, 55) : range(55, 70);
      case FEMUR -> near ? range(90, 110) : range(75, 90);
      case TIBIA -> near ? range(70, 85) : range(45, 55);
      case RADIUS -> near ? range(20, 30) : range(28, 35);
      case ULNA -> near ? range(35, 45) : range(18, 25);
      case CLAVICLE -> range(20, 28);
    };
  }

  private static Dimension range(double min, double max) {
    return Dimension.assumed(min, max, "usual length of the metaphysis");
  }
}
