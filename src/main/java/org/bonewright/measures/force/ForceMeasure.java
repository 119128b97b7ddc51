package org.bonewright.measures.force;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.load.LoadMeasures;

/** One number of what a construct does under load. */
final class ForceMeasure implements Measure {

  /** What the construct and its load are made from. */
  static final List<String> INPUTS =
      List.of(
          LoadMeasures.STATED,
          "bone/sections",
          "bone/quality",
          "operations/fixation",
          "operations/reduction",
          "operations/compression",
          "operations/aftercare/load",
          "pattern-class",
          "compression-method",
          "zone-length");

  private final Definition definition;
  private final Modelling modelling;
  private final ToDoubleFunction<Solved> number;
  private final WhenClosed whenClosed;
  private final Part part;

  /** What it says of ends that touch all round. */
  private enum WhenClosed {
    /** The same as else. */
    SAME,
    /** There is no gap. */
    NO_GAP,
    /** The bone bears the load with the metal. */
    SHARED,
    /** Nothing else: of an open gap it says nothing. */
    ONLY
  }

  /** What it is a number of. */
  private enum Part {
    WHOLE(""),
    PLATE("no plate holds the bone"),
    WITHIN("neither plate nor nail holds the bone"),
    NAIL("no nail holds the bone"),
    FIXATOR("no external fixator holds the bone");

    private final String none;

    Part(String none) {
      this.none = none;
    }

    private boolean isIn(Sketch sketch) {
      return switch (this) {
        case WHOLE -> true;
        case PLATE -> !sketch.plates().isEmpty();
        case WITHIN -> !sketch.plates().isEmpty() || sketch.nail().isPresent();
        case NAIL -> sketch.nail().isPresent();
        case FIXATOR -> sketch.fixator().isPresent();
      };
    }
  }

  private ForceMeasure(
      Modelling modelling,
      String id,
      String title,
      Definition.Domain domain,
      String formula,
      String source,
      Part part,
      WhenClosed whenClosed,
      ToDoubleFunction<Solved> number) {
    this.part = part;
    this.definition = new Definition(id, title, domain, formula, INPUTS, source);
    this.modelling = modelling;
    this.number = number;
    this.whenClosed = whenClosed;
  }

  static Measure strain(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "gap-strain",
        "Strain at the line",
        new Definition.Domain.Numbers("%", "%", 0, Double.POSITIVE_INFINITY, 0),
        "the largest opening or closing anywhere round the outer ring under the load of"
            + " the first six weeks, over the gap; over a zone in pieces, over the sum of its gaps, taken as a"
            + " quarter to the whole of it. Closing ends at 100 %, and 100 % stands where the load is not"
            + " borne or the fragments come off each other. None where the ends touch",
        "frame model; Perren, J Bone Joint Surg Br 2002, for its meaning (from memory)",
        Part.WHOLE,
        WhenClosed.NO_GAP,
        solved -> Math.rint(solved.strain() * 100) / 100);
  }

  static Measure farMovement(Modelling modelling) {
    return movement(
        modelling,
        "far-cortex-movement",
        "Movement at the far cortex",
        "opening or closing of the line opposite the longest plate under the load of the first six weeks,"
            + " without its sign",
        Part.PLATE,
        solved -> Math.abs(solved.far()));
  }

  static Measure nearMovement(Modelling modelling) {
    return movement(
        modelling,
        "near-cortex-movement",
        "Movement at the near cortex",
        "opening or closing of the line under the longest plate under the load of the first six weeks,"
            + " without its sign",
        Part.PLATE,
        solved -> Math.abs(solved.near()));
  }

  static Measure most(Modelling modelling) {
    return movement(
        modelling,
        "gap-movement",
        "Movement at the line",
        "the largest opening or closing of the line anywhere round the outer ring under the load of"
            + " the first six weeks",
        Part.WHOLE,
        Solved::most);
  }

  static Measure shear(Modelling modelling) {
    return movement(
        modelling,
        "shear-movement",
        "Movement across the line",
        "the largest movement in the plane of the line at the outer ring under the load of"
            + " the first six weeks, turning included",
        Part.WHOLE,
        Solved::shear);
  }

  private static Measure movement(
      Modelling modelling,
      String id,
      String title,
      String formula,
      Part part,
      ToDoubleFunction<Solved> number) {
    return new ForceMeasure(
        modelling,
        id,
        title,
        Definition.millimetres(),
        formula,
        "frame model",
        part,
        WhenClosed.SAME,
        number);
  }

  static Measure contact(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "contact-under-load",
        "Ring in contact under load",
        Definition.percent(),
        "share of the ring of the bone that touches under the load of the first six weeks",
        "frame model with ends that push and never pull",
        Part.WHOLE,
        WhenClosed.SAME,
        Solved::contact);
  }

  static Measure opening(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "opening-moment",
        "Moment that opens the far cortex",
        new Definition.Domain.Numbers("N.m", "N·m", 0, Double.POSITIVE_INFINITY, 0),
        "bending moment at which the cortex opposite the plate opens; 0 where it is open before any"
            + " load, or nothing presses the ends together. None where there is a gap",
        "frame model; pressing forces by method of compression, from memory",
        Part.PLATE,
        WhenClosed.ONLY,
        solved -> Math.max(0, solved.opening()));
  }

  static Measure stress(Modelling modelling) {
    return stress(
        modelling,
        "plate-stress-range",
        "Range of stress in the plate",
        "largest range of the nominal stress at any hole of a plate or at the line, from no load to"
            + " the load of the first six weeks",
        Part.PLATE,
        Solved::stress);
  }

  static Measure nailStress(Modelling modelling) {
    return stress(
        modelling,
        "nail-stress-range",
        "Range of stress in the nail",
        "largest range of the nominal stress of the nail at the line or at a bolt, from no load to"
            + " the load of the first six weeks; empty holes of the nail are not known",
        Part.NAIL,
        Solved::nail);
  }

  static Measure boltStress(Modelling modelling) {
    return stress(
        modelling,
        "bolt-stress-range",
        "Range of stress in the bolts",
        "largest range of the bending stress of a locking bolt, of its full diameter, from no load"
            + " to the load of the first six weeks",
        Part.NAIL,
        Solved::bolt);
  }

  static Measure pinStress(Modelling modelling) {
    return stress(
        modelling,
        "pin-stress-range",
        "Range of stress in the pins",
        "largest range of the bending stress of a pin of an external fixator, in the core of its"
            + " thread at the near cortex or in its shank at the clamp, from no load to the load of"
            + " the first six weeks. Clamps are taken as rigid, threads without a notch",
        Part.FIXATOR,
        Solved::pin);
  }

  static Measure steady(Modelling modelling) {
    return stress(
        modelling,
        "plate-stress-steady",
        "Steady stress in the plate",
        "nominal stress before any load, from what presses the ends together, where the range is"
            + " largest",
        Part.PLATE,
        Solved::steady);
  }

  private static Measure stress(
      Modelling modelling,
      String id,
      String title,
      String formula,
      Part part,
      ToDoubleFunction<Solved> number) {
    return new ForceMeasure(
        modelling,
        id,
        title,
        new Definition.Domain.Numbers("N/mm2", "N/mm²", 0, Double.POSITIVE_INFINITY, 0),
        formula,
        "frame model; net section at a hole",
        part,
        WhenClosed.SAME,
        number);
  }

  static Measure enduranceUsed(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "endurance-used",
        "Endurance of the metal used up",
        Definition.ratio(),
        "alternating stress at the edge of the worst hole of plate or nail, or in a bolt, over the"
            + " endurance limit, plus mean stress over tensile strength; above 1 it breaks in time. Pins"
            + " of a fixator are left out: they work loose before they break, and can be changed",
        "Goodman's line; endurance limits from memory, as ranges",
        Part.WITHIN,
        WhenClosed.SAME,
        Solved::use);
  }

  static Measure life(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "metal-life-over-union",
        "Life of the metal over time to union",
        Definition.ratio(),
        "cycles to failure of the worst hole of plate or nail, or of a bolt, over the loads that come until the usual time of"
            + " union, at the load of the first six weeks, which may rise as the bone shares it; 100"
            + " stands for more, 0.01 for less. None where the ends touch. Pins of a"
            + " fixator are left out: they work loose before they break, and can be changed",
        "line of stress over cycles through two points (convention of textbooks, from memory); about"
            + " a million steps a year (Griffin et al., J Orthop Surg Res 2009, excerpt read)",
        Part.WITHIN,
        WhenClosed.SHARED,
        Solved::life);
  }

  static Measure margin(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "screw-pull-margin",
        "Margin of the most loaded screw",
        Definition.ratio(),
        "pull at which its thread strips over the pull on it under the load of the first six weeks, the"
            + " smallest of all plate screws; below 1 also where the plates slip before that load is"
            + " reached, 0 where the fragments come off each other; 100 stands for more",
        "frame model; Chapman et al., J Biomech Eng 1996 (abstract read), used in cortex by extension",
        Part.PLATE,
        WhenClosed.SAME,
        Solved::margin);
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    Forces forces = modelling.forces(scene);
    if (forces instanceof Forces.Untold untold) {
      return new Reading.Unknown(untold.missing());
    }
    if (forces instanceof Forces.Outside outside) {
      return new Reading.None(outside.why());
    }
    Forces.Known known = (Forces.Known) forces;
    if (!part.isIn(known.sketch())) {
      return new Reading.None(part.none);
    }
    boolean closed = known.sketch().line().closed();
    if (closed && whenClosed == WhenClosed.NO_GAP) {
      return new Reading.None("the ends touch, there is no gap to strain");
    }
    if (closed && whenClosed == WhenClosed.SHARED) {
      return new Reading.None("the ends touch and bear the load with the metal");
    }
    if (!closed && whenClosed == WhenClosed.ONLY) {
      return new Reading.None("there is a gap");
    }
    return known.reading(number);
  }
}
