package org.bonewright.measures.force;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.BoneName;
import org.bonewright.mechanics.answer.EndContact;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.fatigue.Goodman;
import org.bonewright.mechanics.model.MechanicalModel;

/** Solves a sketch under one set of assumptions. */
final class Solver {

  /** What stands for "more than anybody asks": a screw that is hardly pulled, metal that lasts. */
  static final double MUCH = 100;

  /** What stands for "hardly any": metal that breaks at once. */
  private static final double LITTLE = 0.01;

  /** Smaller movements than this are none, mm. */
  private static final double FINEST = 0.001;

  /** Less than this of a load is no load worth the name. */
  static final double LEAST_SHARE = 0.01;

  private static final double PERCENT = 100;
  private static final Load NOTHING = Load.axial(0);

  private final Sketch sketch;
  private final List<Loading> loadings;
  private final BoneName bone;
  private final boolean revision;

  /**
   * Prepare to solve.
   *
   * @param sketch the construct
   * @param loadings what it bears until the bone shares the load
   * @param bone which bone it is
   * @param revision whether union takes as long as after a revision
   */
  Solver(Sketch sketch, List<Loading> loadings, BoneName bone, boolean revision) {
    this.sketch = sketch;
    this.loadings = List.copyOf(loadings);
    this.bone = bone;
    this.revision = revision;
  }

  /** Return what the construct does; empty where the model finds no answer. */
  Optional<Solved> under(Draw draw) {
    Builder builder = new Builder(sketch, draw);
    List<Load> loads = loadings.stream().map(load -> load.under(draw, sketch.facing())).toList();
    FixedBone fixed = builder.build();
    MechanicalModel model = new MechanicalModel(fixed);
    Optional<LoadAnswer> before = Borne.answer(model, NOTHING);
    List<Borne> borne = loads.stream().flatMap(load -> Borne.of(model, load).stream()).toList();
    if (before.isEmpty() || borne.size() < loads.size()) {
      return Optional.empty();
    }
    MetalWear wear = new MetalWear(fixed, before.get(), plates(draw), nails(draw));
    borne.forEach(one -> wear.add(one.answer(), one.share()));
    GapMovement gap = worst(borne);
    double widest = 2 * builder.radius();
    boolean held = borne.stream().allMatch(one -> one.whole() && !one.parts(builder.radius()));
    return Optional.of(
        new Solved(
            clipped(gap.near(), widest),
            clipped(gap.far(), widest),
            clipped(most(borne), widest),
            clipped(gap.shear(), widest),
            builder.strained() > 0 && !held ? PERCENT : strain(borne, builder.strained()),
            held ? closed(borne) : 0,
            wear.plate().range(),
            wear.plate().steady(),
            wear.nail().range(),
            wear.bolt().range(),
            pins(borne),
            wear.use(),
            Math.max(LITTLE, Math.min(MUCH, wear.cycles() / UnionTime.loads(bone, revision, draw))),
            held ? margin(borne) : Math.min(margin(borne), share(borne, builder.radius())),
            model.openingMoment().orElse(0),
            StrutShare.of(borne)));
  }

  private List<Goodman> plates(Draw draw) {
    return sketch.plates().stream().map(plate -> plate.metal().fatigue(draw)).toList();
  }

  private List<Goodman> nails(Draw draw) {
    return sketch.nail().stream().map(nail -> nail.metal().fatigue(draw)).toList();
  }

  /** Of a load that is borne in part only, the rest counts in proportion. */
  private static double pins(List<Borne> borne) {
    return borne.stream()
        .filter(one -> one.share() >= LEAST_SHARE)
        .flatMapToDouble(
            one ->
                one.answer().fixator().stream()
                    .flatMap(fixator -> fixator.pins().stream())
                    .mapToDouble(pin -> pin.bendingStress() / one.share()))
        .max()
        .orElse(0);
  }

  private static GapMovement worst(List<Borne> borne) {
    return borne.stream()
        .map(one -> one.answer().gap())
        .max(Comparator.comparingDouble(gap -> Math.max(Math.abs(gap.near()), Math.abs(gap.far()))))
        .orElseThrow();
  }

  private static double most(List<Borne> borne) {
    return borne.stream()
        .map(one -> one.answer().gap())
        .mapToDouble(gap -> Math.max(Math.abs(gap.min()), Math.abs(gap.max())))
        .max()
        .orElse(0);
  }

  /** What moves by more than the width of the bone has come off: small movements are modelled. */
  private static double clipped(double movement, double most) {
    return Math.rint(Math.max(-most, Math.min(most, movement)) / FINEST) * FINEST;
  }

  /** Ends that meet move no further: closing ends at the whole of the gaps. */
  private static double strain(List<Borne> borne, double gaps) {
    return gaps <= 0
        ? 0
        : borne.stream()
            .map(one -> one.answer().gap())
            .mapToDouble(gap -> Math.max(part(gap.min(), gaps), part(gap.max(), gaps)))
            .max()
            .orElse(0);
  }

  private static double part(double movement, double gaps) {
    double percent = PERCENT * Math.abs(movement) / gaps;
    return movement < 0 ? Math.min(PERCENT, percent) : percent;
  }

  private static double closed(List<Borne> borne) {
    return PERCENT
        * borne.stream()
            .mapToDouble(one -> one.answer().contact().map(EndContact::closed).orElse(0.0))
            .min()
            .orElse(0);
  }

  private static double margin(List<Borne> borne) {
    double least =
        borne.stream()
            .flatMap(one -> one.answer().screws().stream())
            .flatMapToDouble(screw -> screw.margin().stream())
            .min()
            .orElse(MUCH);
    return Math.min(MUCH, least);
  }

  /**
   * A load that is borne in part only leaves no margin, and one that parts the ends none at all.
   */
  private static double share(List<Borne> borne, double radius) {
    return borne.stream().mapToDouble(one -> one.parts(radius) ? 0 : one.share()).min().orElse(0);
  }
}
