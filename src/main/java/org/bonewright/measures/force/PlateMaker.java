package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.PlateSize;
import org.bonewright.bone.ThreadForm;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * Makes the sketch of one plate. Where a size is not told it is that of the family: thickness ± 10
 * % and width ± 5 %, since real plates are curved and undercut (from memory); tubular plates up to
 * twice as thick, for their curve (our convention). Holes are 0.5 to 1.5 mm wider than the screw
 * (from memory). A locking plate that is not told to touch stands off up to 2 mm.
 */
final class PlateMaker {

  private static final Dimension NONE = new Dimension(0, 0, false, "");
  private static final double WIDEST_HOLE = 0.8;

  private final Scene scene;
  private final PlacedPlate placed;
  private final Plate plate;
  private final double azimuth;
  private final List<MissingFact> missing = new ArrayList<>();

  PlateMaker(Scene scene, PlacedPlate placed, double azimuth) {
    this.scene = scene;
    this.placed = placed;
    this.plate = placed.plate();
    this.azimuth = azimuth;
  }

  /** Return what is missing, once the plate was asked for. */
  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  /** Return the plate; empty where something is missing that has no usual range. */
  Optional<PlateSketch> plate() {
    if (placed.size().isEmpty()) {
      ask("family", "What size and type of plate is " + plate.id() + "?");
    }
    if (plate.holes().isEmpty()) {
      ask("holes", "How many holes has " + plate.id() + ", how far apart, and how long is it?");
    }
    if (plate.screws().isEmpty()) {
      ask("screws", "Which holes of " + plate.id() + " hold which screw?");
    }
    boolean laid =
        placed
            .allHoles()
            .allMatch(
                hole -> placed.distance(hole).isPresent() && placed.side(hole) != HoleSide.UNSURE);
    boolean familyTells = placed.spacing().isEmpty() && plate.place().isPresent();
    if (!laid && !familyTells) {
      ask(
          "place",
          "Which two holes of "
              + plate.id()
              + " lie either side of the zone, and at which level is hole 1?");
    }
    return missing.isEmpty() ? placed.size().map(this::sketch) : Optional.empty();
  }

  private PlateSketch sketch(PlateSize size) {
    List<PlateSketch.Hole> holes = new ArrayList<>();
    List<PlateSketch.Screw> screws = new ArrayList<>();
    for (int hole : placed.allHoles().toArray()) {
      int index = holes.size();
      placed.distance(hole).ifPresent(at -> holes.add(new PlateSketch.Hole(at, placed.side(hole))));
      if (placed.side(hole) != HoleSide.OVER) {
        placed.screwIn(hole).flatMap(row -> screw(index, hole, row, size)).ifPresent(screws::add);
      }
    }
    Dimension width = stated(plate.widthMm()).orElseGet(() -> around(size.width(), 0.05));
    double widest = WIDEST_HOLE * width.min();
    return new PlateSketch(
        plate.id(),
        Metal.of(plate.material()),
        width,
        stated(plate.thicknessMm()).orElseGet(() -> usualThickness(size)),
        Dimension.assumed(
            Math.min(widest, size.screw() + 0.5), Math.min(widest, size.screw() + 1.5), "hole"),
        stated(plate.standOffMm()).orElseGet(() -> standOff(screws)),
        azimuth,
        holes,
        screws);
  }

  private Dimension usualThickness(PlateSize size) {
    boolean tubular =
        plate
            .family()
            .map(f -> f == Plate.Family.ONE_THIRD_TUBULAR || f == Plate.Family.SEMI_TUBULAR)
            .orElse(false);
    return tubular
        ? Dimension.assumed(size.thickness(), 2 * size.thickness(), "tubular plate")
        : around(size.thickness(), 0.1);
  }

  private static Dimension standOff(List<PlateSketch.Screw> screws) {
    boolean allLocked = screws.stream().allMatch(PlateSketch.Screw::locked);
    return allLocked ? Dimension.assumed(0, 2, "locking plate") : NONE;
  }

  private static Dimension around(double value, double share) {
    return Dimension.assumed(value * (1 - share), value * (1 + share), "usual size");
  }

  private static Optional<Dimension> stated(Optional<Quantity> quantity) {
    return quantity.map(q -> Dimension.stated(q, "stated"));
  }

  /**
   * A stripped screw holds nothing, and so does one that reaches no cortex; one that broke or
   * loosened later held at first. What is not known of old holes is a range.
   */
  private Optional<PlateSketch.Screw> screw(int index, int hole, ScrewRow row, PlateSize size) {
    if (row.state().equals(Optional.of(ScrewRow.State.STRIPPED))) {
      return Optional.empty();
    }
    double diameter = row.diameterMm().map(Quantity::middle).orElse(size.screw());
    Optional<Bite> bite = scene.bite(plate, hole);
    Dimension whole = new Dimension(1, 1, false, "");
    Dimension near = reached(bite.map(Bite::near).orElse(whole), row);
    Dimension far = bite.map(b -> b.far().orElse(NONE)).orElse(whole);
    if (near.max() + far.max() < PlateSketch.NO_THREAD) {
      return Optional.empty();
    }
    return Optional.of(
        new PlateSketch.Screw(
            index,
            ThreadForm.of(row.type(), diameter),
            row.type() == ScrewRow.Type.LOCKING,
            near,
            far,
            stated(row.tipBeyondMm()).orElse(NONE)));
  }

  private static Dimension reached(Dimension near, ScrewRow row) {
    return row.cortices()
        .map(
            cortices ->
                new Dimension(
                    near.min() * Math.min(1, cortices.min()),
                    near.max() * Math.min(1, cortices.max()),
                    near.assumed(),
                    near.basis()))
        .orElse(near);
  }

  private void ask(String field, String question) {
    missing.add(scene.missing("fixation/" + plate.id() + "/" + field, question));
  }
}
