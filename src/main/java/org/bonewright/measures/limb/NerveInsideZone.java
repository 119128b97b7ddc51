package org.bonewright.measures.limb;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.limb.RadialNervePath.Face;
import org.bonewright.measures.plate.PlateEnds;

/** How far new metal lies where the radial nerve runs over the humerus. */
final class NerveInsideZone implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "metal-in-nerve-zone",
        "New metal where the radial nerve runs",
        Definition.millimetres(),
        "length of a new plate within the stretch where the nerve lies on the face that the plate or"
            + " the approach takes; of a bolt or pin its distance from the nearer end of that"
            + " stretch; the largest of all. Behind: 97 mm below the acromion to 100 mm above the"
            + " lateral epicondyle. Outside: from 107 mm (38 %) above it down",
        List.of(
            "operations/fixation", "operations/approach", "bone/lengthMm", "bone/landmarkOffsetMm"),
        "Gerwin et al., JBJS Am 1996; cadaver study, Eur J Orthop Surg Traumatol 2021; acromion and"
            + " epicondyle against the ends of the bone from memory");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.boneName() != BoneName.HUMERUS) {
      return new Reading.None("not the humerus");
    }
    Optional<List<Implant>> put = scene.operation().fixation();
    if (put.isEmpty()) {
      return Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
    }
    RadialNervePath path = new RadialNervePath(scene);
    List<Dimension> inside = new ArrayList<>(List.of(new Dimension(0, 0, false, "")));
    for (Implant implant : put.get()) {
      if (implant instanceof Plate plate) {
        inside.add(plate(scene, path, plate));
      } else if (implant instanceof Nail nail) {
        inside.add(bolts(path, nail));
      } else if (implant instanceof ExternalFixator fixator) {
        inside.add(pins(path, fixator));
      }
    }
    Dimension worst = inside.stream().reduce(NerveInsideZone::larger).orElseThrow();
    return Reading.number(worst, worst.numbers() + " mm", asked(scene));
  }

  private static MissingFact asked(Scene scene) {
    return scene.missing(
        "fixation",
        "Where does the metal lie against the radial nerve: surface, and levels of plate, bolts and"
            + " pins?");
  }

  private static Dimension plate(Scene scene, RadialNervePath path, Plate plate) {
    Optional<PlateEnds> ends = PlateEnds.levels(new PlacedPlate(plate, scene.zone()));
    Dimension anywhere = new Dimension(0, 600, true, "");
    Dimension near = ends.map(PlateEnds::near).orElse(anywhere);
    Dimension far = ends.map(PlateEnds::far).orElse(anywhere);
    Set<Face> certain = EnumSet.noneOf(Face.class);
    plate.surface().map(Face::met).ifPresent(certain::addAll);
    approach(scene.operation()).map(Face::met).ifPresent(certain::addAll);
    boolean told = plate.surface().isPresent() && scene.operation().approach().isPresent();
    return EnumSet.allOf(Face.class).stream()
        .filter(face -> certain.contains(face) || !told)
        .map(face -> length(path.inside(face, near, far), certain.contains(face)))
        .reduce(NerveInsideZone::larger)
        .orElse(new Dimension(0, 0, false, ""));
  }

  private static Dimension length(Dimension inside, boolean certain) {
    return certain ? inside : possibly(inside);
  }

  /** An approach through small incisions says nothing of the face. */
  private static Optional<Direction> approach(Operation operation) {
    return operation
        .approach()
        .filter(approach -> approach != Operation.Approach.CLOSED)
        .map(approach -> Direction.Named.valueOf(approach.name()).direction());
  }

  private static Dimension bolts(RadialNervePath path, Nail nail) {
    if (nail.bolts().isEmpty()) {
      return possibly(path.to(Face.OUTSIDE));
    }
    return nail.bolts().get().stream()
        .map(bolt -> through(path, bolt.plane(), bolt.atMm()))
        .reduce(NerveInsideZone::larger)
        .orElse(new Dimension(0, 0, false, ""));
  }

  private static Dimension pins(RadialNervePath path, ExternalFixator fixator) {
    if (fixator.pins().isEmpty()) {
      return possibly(path.to(Face.OUTSIDE));
    }
    return fixator.pins().get().stream()
        .map(pin -> through(path, pin.direction(), Optional.of(pin.atMm())))
        .reduce(NerveInsideZone::larger)
        .orElse(new Dimension(0, 0, false, ""));
  }

  private static Dimension through(
      RadialNervePath path, Optional<Direction> direction, Optional<Quantity> level) {
    Dimension at =
        level.map(stated -> Dimension.stated(stated, "")).orElse(new Dimension(0, 600, true, ""));
    return EnumSet.allOf(Face.class).stream()
        .filter(face -> direction.map(d -> Face.met(d).contains(face)).orElse(true))
        .map(face -> path.inside(face, at))
        .map(depth -> length(depth, direction.isPresent()))
        .reduce(NerveInsideZone::larger)
        .orElse(new Dimension(0, 0, false, ""));
  }

  private static Dimension possibly(Dimension most) {
    return Dimension.assumed(0, Math.max(0, most.max()), "");
  }

  private static Dimension larger(Dimension one, Dimension other) {
    return new Dimension(
        Math.max(one.min(), other.min()),
        Math.max(one.max(), other.max()),
        one.assumed() || other.assumed(),
        "");
  }
}
