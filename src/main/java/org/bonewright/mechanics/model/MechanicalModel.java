package org.bonewright.mechanics.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.bonewright.mechanics.answer.EndContact;
import org.bonewright.mechanics.answer.GivingWay;
import org.bonewright.mechanics.answer.LagDemand;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.Movement;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Movements;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;

/** The frame model of one fixed bone: make it once, ask it for any number of loads. */
public final class MechanicalModel {

  private static final String LOOSE = "Something in the construct can move without resistance.";
  private static final String NO_REST = "The bone ends found no rest against each other.";

  /**
   * A distal end that turns further than this, in rad per N·mm, is held by nothing but the springs
   * that keep a screw from spinning freely, or by rounding. The softest real construct is a hundred
   * times stiffer.
   */
  private static final double LOOSEST = 0.02;

  private final FixedBone fixed;
  private final Optional<Joined> joined;
  private final Optional<Prestress> prestress;
  private final Optional<LoadPath> path;

  /** Make the model of a fixed bone. */
  public MechanicalModel(FixedBone fixed) {
    this.fixed = fixed;
    this.joined = Joined.of(fixed);
    this.prestress = joined.flatMap(whole -> Prestress.of(fixed, whole));
    this.path =
        joined.flatMap(
            whole ->
                prestress.map(known -> new LoadPath(new Reduced(fixed, whole, known, List.of()))));
  }

  /** Return what a load does. */
  public Outcome under(Load load) {
    if (path.isEmpty()) {
      return new Outcome.None(LOOSE);
    }
    Optional<LoadPath.End> before = path.get().unloaded();
    Optional<LoadPath.End> after = path.get().raise(load);
    if (before.isEmpty() || after.isEmpty()) {
      return new Outcome.None(NO_REST);
    }
    LoadAnswer answer = answer(load, before.get().answer(), after.get());
    return isHeld(answer) ? new Outcome.Answered(answer) : new Outcome.None(LOOSE);
  }

  private boolean isHeld(LoadAnswer answer) {
    double reach = fixed.fracture().gap() / 2 + fixed.shaft().distal();
    Movement end = answer.end();
    double turn = new Vector(end.rx(), end.ry(), end.rz()).length();
    double shift = new Vector(end.dx(), end.dy(), end.dz()).length();
    return Math.max(turn, shift / reach) <= LOOSEST * answer.load().size(reach);
  }

  private LoadAnswer answer(Load load, Answer before, LoadPath.End end) {
    Answer after = end.answer();
    Link ends = after.joined().ends();
    Six moved = after.movements().across(ends).minus(before.movements().across(ends));
    return new LoadAnswer(
        load,
        end(before.movements(), after.movements(), after.joined().bone().loaded()),
        GapReader.of(fixed, moved),
        after.rest().map(rest -> new EndContact(rest.force(), rest.closed())),
        after.joined().plates().stream().map(plate -> PlateCuts.of(plate, after)).toList(),
        ScrewDemands.of(after),
        after.joined().nail().map(nail -> nail.answer(after)),
        after.joined().fixator().map(fixator -> fixator.answer(after)),
        lags(after),
        after.joined().strut().cut(before, after),
        after.joined().onlay().flatMap(onlay -> onlay.cut(after)),
        end.events().stream().map(MechanicalModel::giving).toList(),
        slipCautious(load),
        end.reached());
  }

  /** The heads of lag screws are the last of all points that may change. */
  private static List<LagDemand> lags(Answer after) {
    List<LagColumn> lags = after.joined().lags();
    List<Stand> stands = after.response().stands();
    int first = stands.size() - lags.size();
    return IntStream.range(0, lags.size())
        .mapToObj(i -> lags.get(i).demand(after, stands.get(first + i)))
        .toList();
  }

  private static Movement end(Movements before, Movements after, int node) {
    Vector shift = after.shift(node).minus(before.shift(node));
    Vector turn = after.turn(node).minus(before.turn(node));
    return new Movement(shift.x(), shift.y(), shift.z(), turn.x(), turn.y(), turn.z());
  }

  private static GivingWay giving(LoadPath.Event event) {
    return new GivingWay(event.share(), event.at(), event.what().word());
  }

  /** The patch next to the fracture may carry the whole force along the bone. */
  private OptionalDouble slipCautious(Load load) {
    return fixed.screws().stream()
        .filter(screw -> screw.head() instanceof Head.Pressed)
        .min(Comparator.comparingDouble((PlateScrew screw) -> Math.abs(screw.at())))
        .filter(screw -> load.axial() != 0)
        .map(screw -> (Head.Pressed) screw.head())
        .map(head -> OptionalDouble.of(head.friction() * head.force() / Math.abs(load.axial())))
        .orElse(OptionalDouble.empty());
  }

  /** Return how stiff the construct is under small loads; empty where the model has no answer. */
  public Optional<Stiffness> stiffness() {
    OptionalDouble axial = per(Load.axial(-1), answer -> -1 / answer.end().dz());
    OptionalDouble plus = per(Load.bendingY(1), answer -> 1 / answer.end().ry());
    OptionalDouble minus = per(Load.bendingY(-1), answer -> -1 / answer.end().ry());
    OptionalDouble strong = per(Load.bendingX(1), answer -> 1 / answer.end().rx());
    OptionalDouble torsion = per(Load.torque(1), answer -> 1 / answer.end().rz());
    if (List.of(axial, plus, minus, strong, torsion).stream().anyMatch(OptionalDouble::isEmpty)) {
      return Optional.empty();
    }
    return Optional.of(
        new Stiffness(
            axial.getAsDouble(),
            perDegree(plus.getAsDouble()),
            perDegree(minus.getAsDouble()),
            perDegree(strong.getAsDouble()),
            perDegree(torsion.getAsDouble())));
  }

  private OptionalDouble per(Load load, ToDoubleFunction<LoadAnswer> stiffness) {
    return under(load) instanceof Outcome.Answered answered
        ? OptionalDouble.of(stiffness.applyAsDouble(answered.answer()))
        : OptionalDouble.empty();
  }

  /** From N·mm/rad to N·m/deg. */
  private static double perDegree(double stiffness) {
    return stiffness / 1000 * Math.PI / 180;
  }

  /** Return how a load is raised while the threads of pressed screws are watched. */
  Optional<LoadPath> watched() {
    return joined.flatMap(
        whole ->
            prestress.map(
                known ->
                    new LoadPath(new Reduced(fixed, whole, known, HeldThread.of(fixed, whole)))));
  }

  /** Return the moment at which the far cortex opens; empty where nothing presses the ends. */
  public OptionalDouble openingMoment() {
    return joined.isPresent() && prestress.isPresent()
        ? OpeningMoment.of(fixed, joined.get(), prestress.get())
        : OptionalDouble.empty();
  }
}
