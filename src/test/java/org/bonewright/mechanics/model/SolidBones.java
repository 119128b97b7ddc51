package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;

/** The fixed bones of which there are solids. */
final class SolidBones {

  private static final Material TITANIUM = Material.isotropic(110_000, 0.34);
  private static final double[] SIX = {-90, -54, -18, 18, 54, 90};

  private SolidBones() {}

  /** Return the fixed bone of which src/test/fe makes a solid under this name. */
  static FixedBone of(String construct) {
    Head locked = new Head.Locked();
    Filling open = new Filling.Nothing();
    FixedBone plated = Constructs.plated(4, open, locked, SIX);
    return switch (construct) {
      case "short" -> plated;
      case "long" -> Constructs.plated(4, open, locked, -90, -54, 54, 90);
      case "two" -> Constructs.plated(4, open, locked, -90, -54, -36, 36, 54, 90);
      case "six" -> Constructs.plated(4, open, locked, -90, -72, 72, 90);
      case "strut" ->
          with(
              plated,
              plated.plates(),
              plated.screws(),
              Optional.of(
                  new BoneStrut(
                      Material.isotropic(17_000, 0.3), new HollowCircle(10.5, 5.5), -70, 75)),
              Optional.empty());
      case "opposite" -> {
        FixedBone second = Constructs.turned(180, 4, open, locked, -72, -36, 36, 72);
        List<MetalPlate> plates = List.of(plated.plates().get(0), second.plates().get(0));
        List<PlateScrew> screws = new ArrayList<>(plated.screws());
        second.screws().forEach(screw -> screws.add(on(1, screw, screw.material())));
        yield with(plated, plates, screws, Optional.empty(), Optional.empty());
      }
      case "angle" -> {
        FixedBone second = Constructs.turned(90, 4, open, locked, -72, -36, 36, 72);
        List<MetalPlate> plates = List.of(plated.plates().get(0), second.plates().get(0));
        List<PlateScrew> screws = new ArrayList<>(plated.screws());
        second.screws().forEach(screw -> screws.add(on(1, screw, screw.material())));
        yield with(plated, plates, screws, Optional.empty(), Optional.empty());
      }
      case "bonded" -> Constructs.plated(0, new Filling.Layer(Constructs.BONE), locked, SIX);
      case "meets" -> Constructs.plated(0, new Filling.Touching(0), locked, SIX);
      case "squeezed" ->
          Constructs.pressed(Constructs.plated(0, new Filling.Touching(0), locked, SIX), 800, 0);
      case "pressed" -> Constructs.plated(4, open, new Head.Pressed(2000, 5, 0.3), SIX);
      case "feet" -> {
        FixedBone pressed = Constructs.plated(4, open, new Head.Pressed(1e6, 5, 0.3), SIX);
        List<PlateScrew> none = pressed.screws().stream().map(SolidBones::inNoBone).toList();
        yield with(pressed, pressed.plates(), none, Optional.empty(), Optional.empty());
      }
      case "titanium" ->
          new FixedBone(
              new Shaft(
                  Constructs.BONE, new HollowCircle(30, 16), 140, 110, OptionalDouble.empty()),
              plated.fracture(),
              List.of(
                  new MetalPlate(
                      TITANIUM,
                      new Rectangle(16, 5.5),
                      0.5,
                      5.2,
                      plated.plates().get(0).holes(),
                      0)),
              plated.screws().stream().map(screw -> on(0, screw, TITANIUM)).toList(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty());
      case "nail" -> nailed(plated, true);
      case "loose" -> nailed(plated, false);
      default -> throw new IllegalArgumentException(construct);
    };
  }

  private static FixedBone with(
      FixedBone bone,
      List<MetalPlate> plates,
      List<PlateScrew> screws,
      Optional<BoneStrut> strut,
      Optional<MetalNail> nail) {
    return new FixedBone(
        bone.shaft(), bone.fracture(), plates, screws, strut, nail, Optional.empty());
  }

  private static FixedBone nailed(FixedBone bone, boolean fixed) {
    List<MetalNail.Bolt> bolts =
        DoubleStream.of(-120, -80, 85, 105)
            .mapToObj(at -> new MetalNail.Bolt(at, 0, TITANIUM, 4.5, fixed, false, false))
            .toList();
    return with(
        bone,
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.of(new MetalNail(TITANIUM, HollowCircle.solid(9), bolts, List.of())));
  }

  private static PlateScrew inNoBone(PlateScrew screw) {
    return new PlateScrew(
        0,
        screw.at(),
        screw.material(),
        screw.core(),
        screw.major(),
        screw.pitch(),
        0,
        0,
        screw.head(),
        screw.rigid(),
        screw.stiffens());
  }

  private static PlateScrew on(int plate, PlateScrew screw, Material material) {
    return new PlateScrew(
        plate,
        screw.at(),
        material,
        screw.core(),
        screw.major(),
        screw.pitch(),
        screw.near(),
        screw.far(),
        screw.head(),
        screw.rigid(),
        screw.stiffens());
  }
}
