package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.ThreadForm;
import org.bonewright.mechanics.construct.Beside;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.Compression;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.hold.PullOut;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Rectangle;

/**
 * Builds a sketch in numbers under one set of assumptions.
 *
 * <p>A pressed 4.5 mm screw clamps with 2000 to 3000 N (from memory), a thinner one less by the
 * square of its diameter, and never with more than 0.6 of the pull at which its thread strips.
 */
final class Builder {

  private static final double THINNEST_CANAL = 1;
  private static final double PATCH_RADIUS = 5;
  private static final double CLAMP_DIAMETER = 4.5;
  private static final double LEAST_CLAMP = 2000;
  private static final double MOST_CLAMP = 3000;
  private static final double CLAMP_SHARE = 0.6;
  private static final double LEAST_FRICTION = 0.2;
  private static final double MOST_FRICTION = 0.4;

  private final Sketch sketch;
  private final Draw draw;
  private final CorticalBone bone;
  private final HollowCircle tube;
  private final double gap;
  private final double friction;

  Builder(Sketch sketch, Draw draw) {
    this.sketch = sketch;
    this.draw = draw;
    this.bone = new CorticalBone(draw.in(sketch.young(), Assumption.BONE));
    double outer = draw.in(sketch.outer(), Assumption.WIDTH);
    double cortex = draw.in(sketch.cortex(), Assumption.CORTEX);
    this.tube = new HollowCircle(outer, Math.max(THINNEST_CANAL, outer - 2 * cortex));
    this.gap = draw.in(sketch.line().gap(), Assumption.GAP);
    this.friction = draw.between(LEAST_FRICTION, MOST_FRICTION, Assumption.FRICTION);
  }

  /** Return the construct. */
  FixedBone build() {
    return build(false);
  }

  /** Return the construct without a load, all slack of a nail in its canal taken up. */
  FixedBone taut() {
    return build(true);
  }

  private FixedBone build(boolean snug) {
    List<MetalPlate> plates = new ArrayList<>();
    List<PlateScrew> screws = new ArrayList<>();
    Optional<OnlayBuilder> onlay = sketch.onlay().map(own -> new OnlayBuilder(own, draw, gap));
    List<Double> missed = new ArrayList<>();
    double reach = sketch.onlay().map(OnlaySketch::reach).orElse(0.0);
    for (PlateSketch plate : sketch.plates()) {
      List<Double> levels = levels(plate.holes());
      reach = levels.stream().mapToDouble(Math::abs).reduce(reach, Math::max);
      int index = plates.size();
      plates.add(plate(plate, levels));
      for (PlateSketch.Screw screw : plate.screws()) {
        double level = levels.get(screw.hole());
        screw(plate, index, screw, level).ifPresent(screws::add);
        onlay.filter(strut -> strut.isMissedBy(screw)).ifPresent(strut -> missed.add(level));
      }
    }
    Optional<MetalNail> nail =
        sketch.nail().map(inside -> new NailBuilder(inside, draw, tube, gap).nail(snug));
    reach = Math.max(reach, sketch.nail().map(NailBuilder::reach).orElse(0.0));
    reach = Math.max(reach, sketch.fixator().map(FixatorSketch::reach).orElse(0.0));
    reach = Math.max(reach, sketch.lags().isEmpty() ? 0 : tube.outer() / 2);
    return new FixedBone(
        new Shaft(
            bone.elastic(),
            tube,
            Math.max(sketch.proximal(), reach + FromLine.EDGE) - gap / 2,
            Math.max(sketch.distal(), reach + FromLine.EDGE) - gap / 2,
            OptionalDouble.of(bone.shearStrength())),
        new Fracture(gap, new Fracture.Filling.Touching(friction)),
        plates,
        screws,
        sketch.strut().map(this::strut),
        nail,
        compression(),
        new Beside(
            sketch.fixator().map(outside -> new FixatorBuilder(outside, draw, gap).fixator()),
            sketch.lags().stream()
                .map(lag -> new LagBuilder(draw, tube, bone).screw(lag, lagMetal()))
                .toList(),
            onlay.map(strut -> strut.strut(bone.elastic(), missed))));
  }

  /** Lag screws are made of what the plate is made of. */
  private Metal lagMetal() {
    return sketch.plates().stream()
        .findFirst()
        .map(PlateSketch::metal)
        .orElseGet(() -> Metal.of(Optional.empty()));
  }

  /** Return the sum of the gaps that share the movement, in mm. */
  double strained() {
    return draw.in(sketch.line().strained(), Assumption.GAP);
  }

  /** Return the radius of the bone in mm. */
  double radius() {
    return tube.outer() / 2;
  }

  /**
   * The holes of a fragment lie on it, and keep their distances: where the nearest would lie in the
   * gap, all of them are moved.
   */
  private List<Double> levels(List<PlateSketch.Hole> holes) {
    double end = gap / 2 + FromLine.EDGE;
    double near = Math.max(0, at(holes, HoleSide.NEAR).max().orElse(-end) + end);
    double far = Math.max(0, end - at(holes, HoleSide.FAR).min().orElse(end));
    return holes.stream()
        .map(
            hole ->
                switch (hole.side()) {
                  case NEAR -> at(hole) - near;
                  case FAR -> at(hole) + far;
                  case OVER, UNSURE -> at(hole);
                })
        .toList();
  }

  private DoubleStream at(List<PlateSketch.Hole> holes, HoleSide side) {
    return holes.stream().filter(hole -> hole.side() == side).mapToDouble(this::at);
  }

  private double at(PlateSketch.Hole hole) {
    return draw.in(hole.at(), Assumption.PLACE);
  }

  private MetalPlate plate(PlateSketch plate, List<Double> levels) {
    return new MetalPlate(
        plate.metal().elastic(draw),
        new Rectangle(
            draw.in(plate.width(), Assumption.PLATE), draw.in(plate.thickness(), Assumption.PLATE)),
        draw.in(plate.standOff(), Assumption.STAND_OFF),
        draw.in(plate.hole(), Assumption.PLATE),
        levels,
        plate.azimuth());
  }

  private Optional<PlateScrew> screw(
      PlateSketch plate, int index, PlateSketch.Screw screw, double level) {
    double near = draw.in(screw.near(), Assumption.THREAD);
    double far = draw.in(screw.far(), Assumption.THREAD);
    boolean inGap = Math.abs(level) < gap / 2;
    if (near + far < PlateSketch.NO_THREAD || inGap) {
      return Optional.empty();
    }
    ThreadForm thread = screw.thread();
    return Optional.of(
        new PlateScrew(
            index,
            level,
            plate.metal().elastic(draw),
            thread.core(),
            thread.major(),
            thread.pitch(),
            near,
            far,
            screw.locked() ? new PlateScrew.Head.Locked() : pressed(thread, near + far),
            false,
            true));
  }

  private PlateScrew.Head pressed(ThreadForm thread, double cortices) {
    double strips =
        new PullOut(thread.major(), thread.core(), thread.pitch())
            .capacity(bone.shearStrength(), tube.wall() * cortices);
    double wanted =
        draw.between(LEAST_CLAMP, MOST_CLAMP, Assumption.CLAMP)
            * Math.pow(thread.major() / CLAMP_DIAMETER, 2);
    return new PlateScrew.Head.Pressed(
        Math.min(wanted, CLAMP_SHARE * strips), PATCH_RADIUS, friction);
  }

  private BoneStrut strut(StrutSketch strut) {
    double outer = Math.min(draw.in(strut.outer(), Assumption.WIDTH), tube.inner());
    double wall = Math.min(draw.in(strut.wall(), Assumption.CORTEX), outer / 2 - 0.25);
    return new BoneStrut(
        bone.elastic(),
        new HollowCircle(outer, outer - 2 * wall),
        Math.max(draw.in(strut.from(), Assumption.PLACE), -sketch.proximal() + gap),
        Math.min(draw.in(strut.to(), Assumption.PLACE), sketch.distal() - gap));
  }

  /** What presses through the plate; a lag screw presses beside it. */
  private Optional<Compression> compression() {
    LineSketch line = sketch.line();
    double force = draw.in(line.pressed(), Assumption.COMPRESSION);
    if (!line.closed() || line.central() || force < 1 || sketch.plates().isEmpty()) {
      return Optional.empty();
    }
    double core = tube.coreRadius();
    double share = draw.in(line.towardsPlate(), Assumption.COMPRESSION);
    return Optional.of(new Compression(force, core + share * (radius() - core)));
  }
}
