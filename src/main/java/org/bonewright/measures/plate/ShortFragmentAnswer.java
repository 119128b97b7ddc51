package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the shorter main fragment is held by something made for a short piece of bone. */
final class ShortFragmentAnswer implements Measure {

  private static final int CLUSTER = 3;
  private static final double OTHER_PLANE = 30;

  @Override
  public Definition definition() {
    return new Definition(
        "short-fragment-answer",
        "Special hold of the shorter fragment",
        Definition.words("yes", "no", "no-implant"),
        "yes when three locking screws, screws of two plates, two bolts of a nail at least 30 degrees"
            + " apart, or a ring or hybrid fixator hold the shorter main fragment",
        List.of(
            "operations/fixation/screws",
            "operations/fixation/bolts",
            "operations/fixation/frame",
            "injury/zone",
            "bone/lengthMm"),
        "AO Principles textbook, from memory; three and 30 degrees are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    boolean held =
        scene.construct().implants().stream().anyMatch(implant -> implant.implant().isMain());
    if (!held) {
      return scene.construct().known()
          ? Reading.word("no-implant", "neither plate, nail nor fixator in place")
          : Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
    }
    Set<HoleSide> sides =
        Fragments.of(scene).map(Fragments::shorter).orElse(Set.of(HoleSide.NEAR, HoleSide.FAR));
    Survey survey = new Survey(scene);
    Set<String> possible = new TreeSet<>();
    sides.forEach(side -> possible.addAll(survey.answers(side)));
    List<MissingFact> missing = new ArrayList<>(survey.missing);
    if (sides.size() > 1) {
      missing.add(PlateQuestions.zone(scene));
    }
    return Reading.words(
        possible,
        Kind.FACT,
        "shorter side: " + String.join(" or ", sides.stream().map(Survey::word).sorted().toList()),
        missing.stream().distinct().toArray(MissingFact[]::new));
  }

  /** Looks through the implants for what holds one side. */
  private static final class Survey {
    private final Scene scene;
    private final List<MissingFact> missing = new ArrayList<>();

    Survey(Scene scene) {
      this.scene = scene;
    }

    static String word(HoleSide side) {
      return side == HoleSide.NEAR ? "near" : "far";
    }

    Set<String> answers(HoleSide side) {
      List<Optional<Boolean>> all = List.of(plates(side), nails(side), frames());
      if (all.stream().anyMatch(answer -> answer.orElse(false))) {
        return Set.of("yes");
      }
      if (!scene.construct().known()) {
        missing.add(scene.missing("fixation", "Which implants are in the bone?"));
        return Set.of("yes", "no");
      }
      return all.stream().anyMatch(Optional::isEmpty) ? Set.of("yes", "no") : Set.of("no");
    }

    /** Three locking screws, or two plates with a screw each. */
    private Optional<Boolean> plates(HoleSide side) {
      long locking = 0;
      int holding = 0;
      boolean untold = false;
      for (PlacedPlate placed : scene.plates()) {
        Optional<SideScrews> screws = SideScrews.of(placed);
        if (screws.isEmpty()) {
          untold = true;
          missing.add(
              placed.plate().screws().isEmpty()
                  ? PlateQuestions.screws(scene, placed.plate())
                  : PlateQuestions.place(scene, placed.plate()));
          continue;
        }
        List<Integer> here = side == HoleSide.NEAR ? screws.get().near() : screws.get().far();
        locking += here.stream().filter(hole -> locks(placed, hole)).count();
        holding += here.isEmpty() ? 0 : 1;
      }
      if (locking >= CLUSTER || holding >= 2) {
        return Optional.of(true);
      }
      return untold ? Optional.empty() : Optional.of(false);
    }

    private static boolean locks(PlacedPlate placed, int hole) {
      return placed
          .screwIn(hole)
          .filter(row -> row.type() == ScrewRow.Type.LOCKING)
          .filter(row -> !row.state().equals(Optional.of(ScrewRow.State.STRIPPED)))
          .isPresent();
    }

    private Optional<Boolean> nails(HoleSide side) {
      Bolt.End end = side == HoleSide.NEAR ? Bolt.End.NEAR : Bolt.End.FAR;
      boolean untold = false;
      for (Nail nail : scene.construct().of(Nail.class)) {
        Optional<List<Bolt>> bolts =
            nail.bolts().map(all -> all.stream().filter(bolt -> bolt.end() == end).toList());
        Optional<Boolean> planes = bolts.flatMap(ShortFragmentAnswer::inTwoPlanes);
        if (planes.orElse(false)) {
          return planes;
        }
        if (planes.isEmpty()) {
          untold = true;
          missing.add(
              scene.missing(
                  "fixation/" + nail.id() + "/bolts",
                  "How many bolts has " + nail.id() + " at each end, and in which planes?"));
        }
      }
      return untold ? Optional.empty() : Optional.of(false);
    }

    private Optional<Boolean> frames() {
      boolean untold = false;
      for (ExternalFixator fixator : scene.construct().of(ExternalFixator.class)) {
        if (fixator.frame().isEmpty()) {
          untold = true;
          missing.add(
              scene.missing(
                  "fixation/" + fixator.id() + "/frame",
                  "Is " + fixator.id() + " a one-sided, ring or hybrid frame?"));
        } else if (fixator.frame().get() != ExternalFixator.Frame.UNILATERAL) {
          return Optional.of(true);
        }
      }
      return untold ? Optional.empty() : Optional.of(false);
    }
  }

  /** Return whether two bolts lie in planes of their own; nothing where a plane is not told. */
  private static Optional<Boolean> inTwoPlanes(List<Bolt> bolts) {
    boolean untold = false;
    for (int i = 0; i < bolts.size(); i++) {
      for (Bolt other : bolts.subList(i + 1, bolts.size())) {
        Optional<Double> angle = bolts.get(i).plane().flatMap(a -> other.plane().map(a::angleTo));
        if (angle.isEmpty()) {
          untold = true;
        } else if (angle.get() >= OTHER_PLANE && angle.get() <= 180 - OTHER_PLANE) {
          return Optional.of(true);
        }
      }
    }
    return untold ? Optional.empty() : Optional.of(false);
  }
}
