package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Makes of the line what the model can take: one even gap, or ends that touch all round.
 *
 * <p>Our conventions: an uneven gap is taken as even, somewhere between its narrowest and widest
 * part. Ends that touch on one side and were pressed together, or touch over half of the ring,
 * count as closed. Over a zone in pieces nothing carries but the metal; its gaps add up to between
 * a quarter and the whole of it.
 */
final class LineMaker {

  /** Below this the ends touch, mm. */
  static final double TOUCH = 0.1;

  private static final double LEAST_GAPS = 0.25;
  private static final double HALF_RING = 50;
  private static final Dimension NOTHING = new Dimension(0, 0, false, "");

  private final Scene scene;
  private final List<MissingFact> missing = new ArrayList<>();

  LineMaker(Scene scene) {
    this.scene = scene;
  }

  /** Return what is missing, once the line was asked for. */
  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  /** Return the line; empty where something is missing that has no usual range. */
  Optional<LineSketch> line() {
    if (!(scene.read("pattern-class") instanceof Reading.Word pattern)) {
      missing.addAll(scene.read("pattern-class").missing());
      return Optional.empty();
    }
    boolean inPieces =
        pattern.possible().contains("multifragmentary") || pattern.possible().contains("defect");
    boolean oneLine = pattern.possible().contains("simple") || pattern.possible().contains("wedge");
    if (inPieces && oneLine) {
      missing.addAll(pattern.missing());
      return Optional.empty();
    }
    return inPieces && !pressedTogether() ? zone() : gap();
  }

  private Optional<LineSketch> zone() {
    if (scene.read("zone-length") instanceof Reading.Amount length && length.max() > TOUCH) {
      Dimension whole =
          new Dimension(Math.max(TOUCH, length.min()), length.max(), true, "zone length");
      Dimension gaps =
          Dimension.assumed(
              LEAST_GAPS * whole.min(), whole.max(), "between a quarter and all of the zone");
      return Optional.of(open(whole, gaps));
    }
    missing.addAll(scene.read("zone-length").missing());
    return Optional.empty();
  }

  private Optional<LineSketch> gap() {
    Optional<Quantity> near = scene.reduction().flatMap(Reduction::gapNearMm);
    Optional<Quantity> far = scene.reduction().flatMap(Reduction::gapFarMm);
    if (near.isEmpty() || far.isEmpty()) {
      missing.addAll(scene.read("gap-widest").missing());
      return Optional.empty();
    }
    double narrowest = Math.min(near.get().min(), far.get().min());
    double widest = Math.max(near.get().max(), far.get().max());
    double narrowestAtMost = Math.min(near.get().max(), far.get().max());
    if (widest < TOUCH || (narrowestAtMost < TOUCH && (pressedTogether() || halfTouches()))) {
      return Optional.of(
          new LineSketch(
              true,
              NOTHING,
              NOTHING,
              pressed(),
              scene.certainly("compression-method", "lag-screw"),
              towardsPlate()));
    }
    Dimension gap =
        new Dimension(Math.max(TOUCH, narrowest), Math.max(TOUCH, widest), true, "even gap");
    return Optional.of(open(gap, gap));
  }

  private static LineSketch open(Dimension gap, Dimension strained) {
    return new LineSketch(false, gap, strained, NOTHING, false, NOTHING);
  }

  private boolean halfTouches() {
    return scene
        .reduction()
        .flatMap(Reduction::contactPercent)
        .map(percent -> percent.min() >= HALF_RING)
        .orElse(false);
  }

  private boolean pressedTogether() {
    return scene.read("compression-method") instanceof Reading.Word method
        && !method.possible().contains("none")
        && !method.possible().contains("clamp");
  }

  /**
   * How hard: eccentric screws 300 to 600 N each, two at most; tension device 1000 to 2000 N; lag
   * screw 100 to 3000 N; all from memory, the lower end of the lag screw from a bench test of 3.5
   * mm screws (abstract read).
   */
  private Dimension pressed() {
    if (!(scene.read("compression-method") instanceof Reading.Word method)) {
      return Dimension.assumed(0, 3000, "method of compression not told");
    }
    SortedSet<String> words = method.possible();
    double min = words.stream().mapToDouble(this::least).min().orElse(0);
    double max = words.stream().mapToDouble(this::most).max().orElse(0);
    return Dimension.assumed(min, max, "force by method of compression");
  }

  private double least(String method) {
    return switch (method) {
      case "eccentric-screws" -> 300 * screws().min();
      case "tension-device" -> 1000;
      case "lag-screw" -> 100;
      default -> 0;
    };
  }

  private double most(String method) {
    return switch (method) {
      case "eccentric-screws" -> 600 * screws().max();
      case "tension-device" -> 2000;
      case "lag-screw" -> 3000;
      default -> 0;
    };
  }

  private Dimension screws() {
    return scene
        .fixing()
        .compression()
        .flatMap(Compression::screws)
        .map(n -> new Dimension(clamp(n.min()), clamp(n.max()), false, "stated"))
        .orElseGet(() -> Dimension.assumed(1, 2, "one or two eccentric screws"));
  }

  private static double clamp(double screws) {
    return Math.min(2, Math.max(1, screws));
  }

  /** A plate that was not bent beforehand presses the ends together under itself. */
  private Dimension towardsPlate() {
    Optional<Answer> prebent = scene.fixing().compression().flatMap(Compression::prebent);
    if (prebent.equals(Optional.of(Answer.YES))) {
      return NOTHING;
    }
    return prebent.equals(Optional.of(Answer.NO))
        ? Dimension.assumed(0.8, 1, "pressed under a straight plate")
        : Dimension.assumed(0, 1, "not told whether the plate was bent beforehand");
  }
}
