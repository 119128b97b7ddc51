package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.force.PlateSketch.Screw;

/**
 * A construct as far as the case file tells it, ready to be built under any set of assumptions.
 *
 * @param young modulus of the bone in MPa
 * @param outer diameter of the bone at the line in mm
 * @param cortex thickness of its cortex there in mm
 * @param proximal length of the proximal fragment in mm
 * @param distal length of the distal fragment in mm
 * @param line the line
 * @param plates its plates
 * @param nail a nail in the canal
 * @param fixator an external fixator
 * @param lags lag screws that press closed ends together
 * @param strut a strut in the canal
 * @param onlay a strut on the surface of the bone
 * @param facing direction around the bone from which azimuths are counted: the side on which the
 *     first plate lies, where that is told; where there is none the front, or the side of the bars
 * @param told what it was built from, in a sentence
 */
record Sketch(
    Dimension young,
    Dimension outer,
    Dimension cortex,
    double proximal,
    double distal,
    LineSketch line,
    List<PlateSketch> plates,
    Optional<NailSketch> nail,
    Optional<FixatorSketch> fixator,
    List<LagSketch> lags,
    Optional<StrutSketch> strut,
    Optional<OnlaySketch> onlay,
    Optional<Double> facing,
    String told) {

  Sketch {
    plates = List.copyOf(plates);
    lags = List.copyOf(lags);
  }

  /** Return the same without words: constructs that are built alike are then equal. */
  Sketch bare() {
    return new Sketch(
        young, outer, cortex, proximal, distal, line, plates, nail, fixator, lags, strut, onlay,
        facing, "");
  }

  /** Return the same with its line as it is found when it has not united: open, nothing pressed. */
  Sketch notUnited() {
    return line.closed()
        ? new Sketch(
            young,
            outer,
            cortex,
            proximal,
            distal,
            LineSketch.NOT_UNITED,
            plates,
            nail,
            fixator,
            List.of(),
            strut,
            onlay,
            facing,
            told)
        : this;
  }

  /** Return whether all screws of its plates are locked in them. */
  boolean locked() {
    return plates.stream().flatMap(plate -> plate.screws().stream()).allMatch(Screw::locked);
  }

  /** Return whether some screws are locked and some pressed. */
  boolean mixed() {
    return !locked()
        && plates.stream().flatMap(plate -> plate.screws().stream()).anyMatch(Screw::locked);
  }

  /** What came of the attempt to make a sketch. */
  sealed interface Attempt permits Attempt.Ready, Refused {

    /**
     * It is there.
     *
     * @param sketch the sketch
     */
    record Ready(Sketch sketch) implements Attempt {}
  }
}
