package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Pin;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * Makes the sketch of an external fixator on one side of the bone. What is not told has the usual
 * range, all from memory: pins of 5 to 6 mm in femur and tibia, 4 to 5 in the humerus, 3 to 4
 * elsewhere; bars of 8 to 12 mm, 4 to 8 on forearm and clavicle; as far from the bone as skin,
 * muscle and two fingers need. Our convention: bars that are not counted are one, the softer; pins
 * of which it is not told from where they come all come from one side; a pin that was loose or
 * broken later held at first.
 */
final class FixatorMaker {

  private static final int MOST_BARS = 2;

  /** Pins that differ by more than this are in more than one plane, degrees; our convention. */
  private static final double ONE_PLANE = 30;

  private final Scene scene;
  private final ExternalFixator fixator;
  private final double facing;
  private final List<MissingFact> missing = new ArrayList<>();

  /**
   * Prepare the sketch.
   *
   * @param facing direction around the bone from which azimuths are counted, in degrees
   */
  FixatorMaker(Scene scene, ExternalFixator fixator, double facing) {
    this.scene = scene;
    this.fixator = fixator;
    this.facing = facing;
  }

  /** Return what is missing, once the fixator was asked for. */
  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  /** Return the side from which the pins come, in degrees; empty where none tells it. */
  static Optional<Double> side(ExternalFixator fixator) {
    return directions(fixator).stream().findFirst().map(Direction::degrees);
  }

  private static List<Direction> directions(ExternalFixator fixator) {
    return fixator.pins().orElse(List.of()).stream()
        .flatMap(pin -> pin.direction().stream())
        .toList();
  }

  /** Return why the model does not know such a fixator; empty where it does. */
  Optional<String> outside() {
    if (fixator.frame().filter(frame -> frame != ExternalFixator.Frame.UNILATERAL).isPresent()) {
      return Optional.of("a ring or hybrid fixator is not modelled");
    }
    if (fixator.bars().filter(bars -> bars > MOST_BARS).isPresent()) {
      return Optional.of("a fixator with more than two bars is not modelled");
    }
    List<Direction> directions = directions(fixator);
    boolean apart = directions.stream().anyMatch(one -> one.angleTo(directions.get(0)) > ONE_PLANE);
    return apart
        ? Optional.of("a fixator with pins in more than one plane is not modelled")
        : Optional.empty();
  }

  /** Return the fixator; empty where something is missing that has no usual range. */
  Optional<FixatorSketch> fixator() {
    Optional<Dimension> centre = scene.zone().centre();
    if (centre.isEmpty()) {
      missing.add(ZoneQuestion.of(scene));
    }
    if (fixator.frame().isEmpty()) {
      ask("frame", "Has " + fixator.id() + " bars on one side of the limb, or rings?");
    }
    if (fixator.pins().isEmpty()) {
      ask(
          "pins",
          "At which levels do the pins of " + fixator.id() + " stand, and where is the zone?");
    }
    return missing.isEmpty() ? Optional.of(sketch(centre.orElseThrow())) : Optional.empty();
  }

  private FixatorSketch sketch(Dimension centre) {
    List<FixatorSketch.Pin> pins = new ArrayList<>();
    for (Pin pin : fixator.pins().orElse(List.of())) {
      if (!pin.state().equals(Optional.of(ScrewRow.State.STRIPPED))) {
        pins.add(
            new FixatorSketch.Pin(
                stated(pin.atMm()).minus(centre),
                pin.diameterMm().map(FixatorMaker::stated).orElseGet(this::usualPin)));
      }
    }
    return new FixatorSketch(
        fixator.id(),
        Metal.of(Optional.empty()),
        side(fixator).map(side -> side - facing).orElse(0.0),
        fixator.bars().orElse(1),
        fixator.barDistanceMm().map(FixatorMaker::stated).orElseGet(this::usualDistance),
        fixator.barMm().map(FixatorMaker::stated).orElseGet(this::usualBar),
        pins);
  }

  private Dimension usualPin() {
    return switch (scene.boneName()) {
      case FEMUR, TIBIA -> Dimension.assumed(5, 6, "usual pin");
      case HUMERUS -> Dimension.assumed(4, 5, "usual pin");
      case RADIUS, ULNA, CLAVICLE -> Dimension.assumed(3, 4, "usual pin");
    };
  }

  private Dimension usualDistance() {
    return switch (scene.boneName()) {
      case FEMUR -> Dimension.assumed(60, 120, "usual distance of a bar");
      case TIBIA -> Dimension.assumed(30, 70, "usual distance of a bar");
      case HUMERUS -> Dimension.assumed(40, 90, "usual distance of a bar");
      case RADIUS, ULNA, CLAVICLE -> Dimension.assumed(20, 60, "usual distance of a bar");
    };
  }

  private Dimension usualBar() {
    BoneName bone = scene.boneName();
    boolean thick = bone == BoneName.FEMUR || bone == BoneName.TIBIA || bone == BoneName.HUMERUS;
    return thick ? Dimension.assumed(8, 12, "usual bar") : Dimension.assumed(4, 8, "usual bar");
  }

  private static Dimension stated(Quantity quantity) {
    return Dimension.stated(quantity, "stated");
  }

  private void ask(String field, String question) {
    missing.add(scene.missing("fixation/" + fixator.id() + "/" + field, question));
  }
}
