package org.bonewright.measures.limb;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Scene;

/**
 * Where along the humerus the radial nerve lies on the back and on the outer side.
 *
 * <p>Behind: from 97 mm below the tip of the acromion to 100 mm above the lateral epicondyle
 * (Gerwin et al., JBJS Am 1996). Outside: from 107 mm above the epicondyle, or 38 % of the bone, to
 * the elbow (cadaver study, Eur J Orthop Surg Traumatol 2021). A bone that differs from 310 mm by
 * more than a tenth is scaled. Acromion and epicondyle are taken as a little beyond the ends of the
 * bone: 0 to 15 mm above its head, 10 to 25 mm above its far end (from memory).
 */
final class RadialNervePath {

  private static final double USUAL = 310;
  private static final double TENTH = USUAL / 10;
  private static final double BELOW_ACROMION = 97;
  private static final double ABOVE_EPICONDYLE_BEHIND = 100;
  private static final double ABOVE_EPICONDYLE_OUTSIDE = 107;
  private static final double SHARE_OUTSIDE = 0.38;
  private static final Dimension ACROMION = Dimension.assumed(0, 15, "acromion above the head");
  private static final Dimension EPICONDYLE = Dimension.assumed(10, 25, "epicondyle");

  /** A face of the bone on which the nerve lies somewhere. */
  enum Face {
    BEHIND,
    OUTSIDE;

    private static final double HALF_WIDTH = 45;

    /** Return the faces that a surface, an approach or a bolt in this direction meets. */
    static Set<Face> met(Direction direction) {
      Set<Face> met = EnumSet.noneOf(Face.class);
      if (direction.angleTo(Direction.Named.POSTERIOR.direction()) <= HALF_WIDTH) {
        met.add(BEHIND);
      }
      if (direction.angleTo(Direction.Named.LATERAL.direction()) <= HALF_WIDTH) {
        met.add(OUTSIDE);
      }
      return met;
    }
  }

  private final Dimension length;
  private final Dimension head;

  RadialNervePath(Scene scene) {
    this.length = scene.bone().length();
    Quantity offset = scene.subject().caseFile().bone().landmarkOffsetMm().orElse(Quantity.of(0));
    this.head = new Dimension(-offset.max(), -offset.min(), false, "");
  }

  /** Return the level at which the nerve comes to this face, in mm. */
  Dimension from(Face face) {
    return switch (face) {
      case BEHIND -> head.plus(along(l -> BELOW_ACROMION * scale(l))).minus(ACROMION);
      case OUTSIDE ->
          end()
              .minus(EPICONDYLE)
              .minus(along(l -> scale(l) == 1 ? ABOVE_EPICONDYLE_OUTSIDE : SHARE_OUTSIDE * l));
    };
  }

  /** Return the level at which it leaves this face, in mm. */
  Dimension to(Face face) {
    return switch (face) {
      case BEHIND -> end().minus(EPICONDYLE).minus(along(l -> ABOVE_EPICONDYLE_BEHIND * scale(l)));
      case OUTSIDE -> end();
    };
  }

  private Dimension end() {
    return head.plus(length);
  }

  private static double scale(double length) {
    return Math.abs(length - USUAL) <= TENTH ? 1 : length / USUAL;
  }

  private Dimension along(DoubleUnaryOperator distance) {
    double a = distance.applyAsDouble(length.min());
    double b = distance.applyAsDouble(length.max());
    return new Dimension(Math.min(a, b), Math.max(a, b), length.assumed(), "");
  }

  /**
   * Return how far something from one level to another lies within the nerve's stretch of this
   * face, in mm.
   */
  Dimension inside(Face face, Dimension near, Dimension far) {
    Dimension from = from(face);
    Dimension to = to(face);
    double least = Math.min(far.min(), to.min()) - Math.max(near.max(), from.max());
    double most = Math.min(far.max(), to.max()) - Math.max(near.min(), from.min());
    return Dimension.assumed(Math.max(0, least), Math.max(0, most), "");
  }

  /** Return how far a single level lies within the nerve's stretch of this face, in mm. */
  Dimension inside(Face face, Dimension level) {
    Dimension from = level.minus(from(face));
    Dimension to = to(face).minus(level);
    return Dimension.assumed(
        Math.max(0, Math.min(from.min(), to.min())),
        Math.max(0, Math.min(from.max(), to.max())),
        "");
  }
}
