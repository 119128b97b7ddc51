package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.BoneGrades;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.force.Sketch.Attempt;
import org.bonewright.measures.nail.Nails;

/** Makes a sketch of what holds the bone at the end of a subject. */
final class SketchMaker {

  /** What lies beyond the last screw at the least, mm. */
  private static final double BEYOND = 10;

  private static final double FRONT = 0;

  private final Scene scene;
  private final List<MissingFact> missing = new ArrayList<>();

  private SketchMaker(Scene scene) {
    this.scene = scene;
  }

  /** Return the sketch, or why there is none. */
  static Attempt of(Scene scene) {
    return scene.once("force-sketch", () -> new SketchMaker(scene).make());
  }

  private Attempt make() {
    if (scene.certainly("main-implant-used", "no")) {
      return Refused.outside("nothing holds the bone");
    }
    if (!scene.construct().known()) {
      return untold(List.of(scene.missing("fixation", "Which implants are in the bone?")));
    }
    List<ExternalFixator> fixators = scene.construct().of(ExternalFixator.class);
    if (fixators.size() > 1) {
      return Refused.outside("two external fixators at once are not modelled");
    }
    if (!scene.certainly("two-lines-apart", "no")) {
      return scene.certainly("two-lines-apart", "yes")
          ? Refused.outside("the model knows one line, not two apart")
          : untold(scene.read("two-lines-apart").missing());
    }
    LineMaker lineMaker = new LineMaker(scene);
    Optional<LineSketch> line = lineMaker.line();
    missing.addAll(lineMaker.missing());
    List<PlateSketch> plates = plates();
    double facing = facing().orElse(FRONT);
    Optional<NailMaker> nailMaker =
        Nails.nail(scene).map(nail -> new NailMaker(scene, nail, facing));
    Optional<FixatorMaker> fixatorMaker =
        fixators.stream().findFirst().map(own -> new FixatorMaker(scene, own, facing));
    Optional<String> outside =
        fixatorMaker
            .flatMap(FixatorMaker::outside)
            .or(() -> nailMaker.flatMap(m -> m.outside(line.filter(l -> !l.closed()).isPresent())));
    if (outside.isPresent()) {
      return Refused.outside(outside.get());
    }
    Optional<NailSketch> nail = nailMaker.flatMap(NailMaker::nail);
    nailMaker.ifPresent(maker -> missing.addAll(maker.missing()));
    Optional<FixatorSketch> fixator = fixatorMaker.flatMap(FixatorMaker::fixator);
    fixatorMaker.ifPresent(maker -> missing.addAll(maker.missing()));
    if (line.isEmpty() || !missing.isEmpty()) {
      return untold(missing.stream().distinct().toList());
    }
    if (!plates.isEmpty() || nail.isPresent() || fixator.isPresent()) {
      return new Attempt.Ready(sketch(line.get(), plates, nail, fixator));
    }
    return scene.certainly("plate-used", "no")
        ? Refused.outside("no plate, nail or fixator holds the bone")
        : untold(scene.read("plate-used").missing());
  }

  private static Refused untold(List<MissingFact> facts) {
    return new Refused(new Reading.Unknown(facts));
  }

  private Sketch sketch(
      LineSketch line,
      List<PlateSketch> plates,
      Optional<NailSketch> nail,
      Optional<FixatorSketch> fixator) {
    FractureZone zone = scene.zone();
    double length = scene.bone().length().middle();
    double centre = zone.centre().map(Dimension::middle).orElse(length / 2);
    double inner = Math.max(reach(plates), nail.map(NailBuilder::reach).orElse(0.0));
    double reach = Math.max(inner, fixator.map(FixatorSketch::reach).orElse(0.0)) + BEYOND;
    return new Sketch(
        CorticalBone.moduli(BoneGrades.possible(scene.subject())),
        scene.bone().outerAt(zone),
        scene.bone().cortexAt(zone.centre().orElseGet(() -> at(length / 2))),
        Math.max(reach, centre),
        Math.max(reach, length - centre),
        line,
        plates,
        nail,
        fixator,
        new LagMaker(scene, facing().orElse(FRONT)).screws(line),
        strut(zone),
        OnlayMaker.of(scene, facing(), plates),
        plates.isEmpty() && fixator.isEmpty() ? Optional.of(FRONT) : facing(),
        told(line));
  }

  private static Dimension at(double level) {
    return new Dimension(level, level, true, "middle of the bone");
  }

  private static double reach(List<PlateSketch> plates) {
    return plates.stream()
        .flatMap(plate -> plate.holes().stream())
        .mapToDouble(hole -> hole.at().magnitude().max())
        .max()
        .orElse(0);
  }

  private List<PlateSketch> plates() {
    List<PlateSketch> plates = new ArrayList<>();
    List<PlacedPlate> placed = scene.plates();
    Optional<Double> first = facing();
    for (PlacedPlate plate : placed) {
      Optional<Direction> surface = plate.plate().surface();
      if (placed.size() > 1 && (first.isEmpty() || surface.isEmpty())) {
        missing.add(
            scene.missing(
                "fixation/" + plate.plate().id() + "/surface",
                "On which surface of the bone does " + plate.plate().id() + " lie?"));
        continue;
      }
      double azimuth =
          surface.map(Direction::degrees).orElse(0.0)
              - first.or(() -> surface.map(Direction::degrees)).orElse(0.0);
      PlateMaker maker = new PlateMaker(scene, plate, azimuth);
      maker.plate().ifPresent(plates::add);
      missing.addAll(maker.missing());
    }
    return plates;
  }

  /** Return from where azimuths are counted: the first plate, else the bars of a fixator. */
  private Optional<Double> facing() {
    return scene.plates().isEmpty()
        ? scene.construct().of(ExternalFixator.class).stream()
            .findFirst()
            .flatMap(FixatorMaker::side)
        : scene.plates().stream()
            .findFirst()
            .flatMap(plate -> plate.plate().surface())
            .map(Direction::degrees);
  }

  private Optional<StrutSketch> strut(FractureZone zone) {
    return scene.construct().of(Strut.class).stream()
        .filter(strut -> strut.where() == Strut.Where.INTRAMEDULLARY)
        .findFirst()
        .flatMap(strut -> zone.centre().flatMap(centre -> StrutMaker.of(strut, centre)));
  }

  private static String told(LineSketch line) {
    return line.closed()
        ? "ends taken as touching all round"
        : "gap taken as even, " + line.gap().numbers() + " mm";
  }
}
