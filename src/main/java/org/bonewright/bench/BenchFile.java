package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Kind;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;
import org.bonewright.casefile.OneOrMany;

/**
 * A bench file: a whole construct or a single question. Units N, mm, MPa; z is 0 at the centre of
 * the fracture and grows towards the distal end.
 */
public sealed interface BenchFile {

  /** A fixed bone with loads. */
  @Kind("construct")
  record Construct(
      BenchBone bone,
      @Meaning("width of the open gap; 0 with unilateral contact is a closed fracture")
          @Between(min = 0, max = 500)
          Optional<Double> gap,
      @Named("interface") Optional<Interface> line,
      Optional<BenchLayer> layer,
      Optional<Contact> contact,
      @Meaning("coefficient between the bone ends") @Between(min = 0, max = 2)
          Optional<Double> friction,
      Optional<BenchPlate> plate,
      List<BenchPlate> plates,
      @OneOrMany List<BenchScrew> screws,
      Optional<BenchStrut> strut,
      Optional<BenchNail> nail,
      @Meaning("an external fixator on one side") Optional<BenchFixator> fixator,
      @Meaning("lag screws across the fracture") @OneOrMany List<BenchLagScrew> lagScrews,
      Optional<BenchPreload> preload,
      List<BenchLoad> loads,
      List<Ask> ask)
      implements BenchFile {

    /** What lies between the bone ends. */
    enum Interface {
      OPEN,
      BONDED,
      LAYER
    }

    /** Whether the bone ends may meet. */
    enum Contact {
      NONE,
      UNILATERAL
    }

    /** What may be asked besides. */
    enum Ask {
      @Named("openingMoment")
      OPENING_MOMENT
    }
  }

  /** An unbroken bone. */
  @Kind("intact")
  record Intact(WholeBone bone) implements BenchFile {

    /** A tube of one length. */
    record WholeBone(
        @Named("E") @Between(min = 0.001, max = 1e7) double young,
        @Named("nu") @Between(min = 0, max = 0.499) Optional<Double> poisson,
        @Named("G") @Between(min = 0.001, max = 1e7) Optional<Double> shear,
        @Between(min = 0.1, max = 200) double outerDiameter,
        @Between(min = 0, max = 200) double innerDiameter,
        @Between(min = 0.1, max = 2000) double length) {}
  }

  /** A plate with one hole in its middle, bent. */
  @Kind("plateBend")
  record PlateBend(
      @Named("E") @Between(min = 0.001, max = 1e7) double young,
      @Named("nu") @Between(min = 0, max = 0.499) double poisson,
      @Between(min = 0.1, max = 100) double width,
      @Between(min = 0.1, max = 50) double thickness,
      @Between(min = 0, max = 100) double holeDiameter,
      @Between(min = 0.1, max = 2000) double length,
      BendingMoment load)
      implements BenchFile {

    /** A bending moment that bends it away from the bone. */
    record BendingMoment(@Named("My") double moment) {}
  }

  /** How a hole raises the stress in a plate. */
  @Kind("plateHole")
  record PlateHoleFactors(
      @Between(min = 0.1, max = 100) double width,
      @Between(min = 0.1, max = 50) double thickness,
      @Between(min = 0.1, max = 100) double holeDiameter)
      implements BenchFile {}

  /** What a thread holds. */
  @Kind("pullout")
  record Pullout(
      @Between(min = 0.1, max = 30) double majorDiameter,
      @Between(min = 0.1, max = 30) double coreDiameter,
      @Between(min = 0.1, max = 30) double pitch,
      @Between(min = 0.01, max = 1000) double boneShearStrength,
      @Between(min = 0, max = 500) double engagedLength)
      implements BenchFile {}

  /** What old holes leave of the thread of a new screw. */
  @Kind("reuse")
  record Reuse(
      @Between(min = 0.1, max = 30) double majorDiameter,
      @Between(min = 0.1, max = 30) double coreDiameter,
      @Meaning("old holes along the new screw") List<ParallelHole> parallel,
      @Meaning("where along the new screw the cortex begins") Optional<Double> cortexFrom,
      @Meaning("where along the new screw the cortex ends") Optional<Double> cortexTo,
      @Meaning("old holes in any direction") List<SlantedHole> old)
      implements BenchFile {

    /** An old hole that runs along the new screw. */
    record ParallelHole(
        @Between(min = 0.1, max = 30) double oldDiameter,
        @Between(min = 0, max = 100) double offset) {}

    /** An old hole in any direction. */
    record SlantedHole(
        @Between(min = 0.1, max = 30) double diameter,
        List<Double> point,
        List<Double> direction) {}
  }

  /** What a row of screws holds. */
  @Kind("holdout")
  record Holdout(
      @Meaning("mm along the plate") List<Double> screws,
      @Meaning("one for all, or one for each screw") @OneOrMany List<Double> capacity,
      double loadAt)
      implements BenchFile {}

  /** How far a nail moves before its bolts hold it. */
  @Kind("nailPlay")
  record NailPlay(
      @Between(min = 0.1, max = 30) double holeDiameter,
      @Between(min = 0.1, max = 30) double boltDiameter,
      @Between(min = 0.1, max = 50) double nailDiameter)
      implements BenchFile {}

  /** What an empty hole leaves of a bone. */
  @Kind("emptyHole")
  record EmptyHoles(@Meaning("hole over bone diameter") List<Double> ratios) implements BenchFile {}
}
