package org.bonewright.mechanics.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bonewright.mechanics.construct.Compression;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;

/** Constructs for tests: a tube of 24 mm with a plate of 12.5 by 4.2 mm. */
final class Constructs {

  static final Material STEEL = Material.isotropic(193_000, 0.3);
  static final Material BONE = Material.isotropic(15_000, 0.3);
  static final HollowCircle TUBE = new HollowCircle(24, 13);
  static final Rectangle PLATE = new Rectangle(12.5, 4.2);

  private Constructs() {}

  static FixedBone plated(double gap, Fracture.Filling filling, Head head, double... screws) {
    return turned(0, gap, filling, head, screws);
  }

  static FixedBone turned(
      double azimuth, double gap, Fracture.Filling filling, Head head, double... screws) {
    List<Double> holes =
        Stream.of(-90.0, -72.0, -54.0, -36.0, -18.0, 18.0, 36.0, 54.0, 72.0, 90.0).toList();
    return new FixedBone(
        new Shaft(BONE, TUBE, 140, 110, OptionalDouble.of(52)),
        new Fracture(gap, filling),
        List.of(new MetalPlate(STEEL, PLATE, 0.5, 5.2, holes, azimuth)),
        java.util.Arrays.stream(screws).mapToObj(at -> screw(at, head)).toList(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static FixedBone pressed(FixedBone bone, double force, double towardsPlate) {
    return new FixedBone(
        bone.shaft(),
        bone.fracture(),
        bone.plates(),
        bone.screws(),
        bone.strut(),
        bone.nail(),
        Optional.of(new Compression(force, towardsPlate)));
  }

  static PlateScrew screw(double at, Head head) {
    boolean locked = head instanceof Head.Locked;
    return new PlateScrew(
        0,
        at,
        STEEL,
        locked ? 4.3 : 3.0,
        locked ? 5.0 : 4.5,
        locked ? 1.0 : 1.75,
        1,
        1,
        head,
        false,
        true);
  }
}
