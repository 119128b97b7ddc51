package org.bonewright.mechanics.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.construct.BarFixator;
import org.bonewright.mechanics.construct.Beside;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * A fixator over an open gap, for tests; what is varied is a record, all else stays.
 *
 * @param bone what the bone is made of
 * @param bar what the bars are made of
 * @param distances of the bars from the bone
 * @param pin diameter of the pins
 * @param core of their thread, as a share of that
 * @param rigid whether they do not bend
 * @param azimuth the side of the bars
 * @param levels of the pins
 */
record Fixators(
    Material bone,
    Material bar,
    List<Double> distances,
    double pin,
    double core,
    boolean rigid,
    double azimuth,
    List<Double> levels) {

  static final Material CARBON = Material.isotropic(120_000, 0.3);
  static final HollowCircle ROD = HollowCircle.solid(11);

  /** One bar 50 mm off, two pins of 5 mm on each side. */
  static final Fixators USUAL =
      new Fixators(
          Constructs.BONE,
          CARBON,
          List.of(50.0),
          5,
          0.8,
          false,
          0,
          List.of(-80.0, -40.0, 40.0, 80.0));

  Fixators in(Material other) {
    return new Fixators(other, bar, distances, pin, core, rigid, azimuth, levels);
  }

  Fixators of(Material other) {
    return new Fixators(bone, other, distances, pin, core, rigid, azimuth, levels);
  }

  Fixators barsAt(double... other) {
    return new Fixators(bone, bar, list(other), pin, core, rigid, azimuth, levels);
  }

  Fixators pins(double diameter) {
    return new Fixators(bone, bar, distances, diameter, core, rigid, azimuth, levels);
  }

  Fixators core(double share) {
    return new Fixators(bone, bar, distances, pin, share, rigid, azimuth, levels);
  }

  Fixators firm() {
    return new Fixators(bone, bar, distances, pin, core, true, azimuth, levels);
  }

  Fixators facing(double degrees) {
    return new Fixators(bone, bar, distances, pin, core, rigid, degrees, levels);
  }

  Fixators pinsAt(double... other) {
    return new Fixators(bone, bar, distances, pin, core, rigid, azimuth, list(other));
  }

  private static List<Double> list(double... values) {
    return DoubleStream.of(values).boxed().toList();
  }

  private FixedBone fixed() {
    return new FixedBone(
            new Shaft(bone, Constructs.TUBE, 140, 110, OptionalDouble.empty()),
            new Fracture(4, new Fracture.Filling.Nothing()),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty())
        .with(
            Beside.of(
                new BarFixator(
                    azimuth,
                    distances.stream().map(d -> new BarFixator.Bar(bar, ROD, d)).toList(),
                    levels.stream()
                        .map(at -> new BarFixator.Pin(at, Constructs.STEEL, pin, core * pin, rigid))
                        .toList())));
  }

  LoadAnswer under(Load load) {
    return ((Outcome.Answered) new MechanicalModel(fixed()).under(load)).answer();
  }

  Stiffness stiffness() {
    return new MechanicalModel(fixed()).stiffness().orElseThrow();
  }
}
