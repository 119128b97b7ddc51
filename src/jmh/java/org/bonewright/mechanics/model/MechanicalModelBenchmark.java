package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.bonewright.Timed;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.Compression;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;
import org.openjdk.jmh.annotations.Benchmark;

/**
 * What a construct costs a review, which solves it with some hundred sets of assumptions. Look at the
 * median (p0.50): it does not tell of others who use the machine.
 */
public class MechanicalModelBenchmark extends Timed {

  private static final int SAMPLES = 200;
  private static final Material STEEL = Material.isotropic(193_000, 0.3);
  private static final Load FIRST = new Load(-700, 40, 30, 3000, 8000, -2000);
  private static final Load FURTHER = new Load(-300, 0, 0, 0, -4000, 1500);

  private final FixedBone locked = locked(17_000, 14, 12, Optional.of(strut()));
  private final FixedBone pressed = pressed();
  private final MechanicalModel lockedModel = new MechanicalModel(locked);
  private final MechanicalModel pressedModel = new MechanicalModel(pressed);
  private final List<FixedBone> samples = samples();

  /** Twelve locked screws, a strut, a gap of 3 mm that may close: the model and one load. */
  @Benchmark
  public Outcome locked12WithStrutFirstLoad() {
    return new MechanicalModel(locked).under(FIRST);
  }

  /** A load more on the same. */
  @Benchmark
  public Outcome locked12WithStrutFurtherLoad() {
    return lockedModel.under(FURTHER);
  }

  /** Ten pressed screws, ends pressed with 800 N that rub: the model and one load. */
  @Benchmark
  public Outcome pressed10FirstLoad() {
    return new MechanicalModel(pressed).under(FIRST);
  }

  /** A load more on the same. */
  @Benchmark
  public Outcome pressed10FurtherLoad() {
    return pressedModel.under(FURTHER);
  }

  /** Two hundred plated bones, one load each. */
  @Benchmark
  public int twoHundredSamplesOfAPlate() {
    int answered = 0;
    for (FixedBone sample : samples) {
      answered += new MechanicalModel(sample).under(FIRST) instanceof Outcome.Answered ? 1 : 0;
    }
    return answered;
  }

  private static List<FixedBone> samples() {
    Random random = new Random(1);
    List<FixedBone> samples = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i++) {
      samples.add(
          locked(
              random.nextDouble(10_000, 20_000),
              random.nextDouble(12, 18),
              10,
              Optional.empty()));
    }
    return samples;
  }

  private static FixedBone locked(
      double young, double inner, int holes, Optional<BoneStrut> strut) {
    return bone(
        young,
        inner,
        new Fracture(3, new Filling.Touching(0.3)),
        holes,
        new Head.Locked(),
        strut,
        Optional.empty());
  }

  private static FixedBone pressed() {
    return bone(
        17_000,
        14,
        new Fracture(0, new Filling.Touching(0.3)),
        10,
        new Head.Pressed(2500, 5, 0.3),
        Optional.empty(),
        Optional.of(new Compression(800, 0)));
  }

  private static BoneStrut strut() {
    return new BoneStrut(Material.isotropic(17_000, 0.3), new HollowCircle(10.5, 5.5), -90, 90);
  }

  private static FixedBone bone(
      double young,
      double inner,
      Fracture fracture,
      int holes,
      Head head,
      Optional<BoneStrut> strut,
      Optional<Compression> compression) {
    List<Double> levels = new ArrayList<>();
    for (int i = 0; i < holes; i++) {
      int fromMiddle = i < holes / 2 ? i - holes / 2 : i - holes / 2 + 1;
      levels.add(8.0 * Math.signum(fromMiddle) + 16.0 * fromMiddle);
    }
    boolean locks = head instanceof Head.Locked;
    List<PlateScrew> screws =
        levels.stream()
            .map(
                at ->
                    new PlateScrew(
                        0,
                        at,
                        STEEL,
                        locks ? 4.3 : 3.0,
                        locks ? 5.0 : 4.5,
                        locks ? 1.0 : 1.75,
                        1,
                        1,
                        head,
                        false,
                        true))
            .toList();
    return new FixedBone(
        new Shaft(
            new Material(young, 0.3, young / 5),
            new HollowCircle(26, inner),
            150,
            150,
            OptionalDouble.of(52)),
        fracture,
        List.of(
            new MetalPlate(
                STEEL, new Rectangle(13.5, 4.5), locks ? 0.5 : 0, 5.4, levels, 0)),
        screws,
        strut,
        Optional.empty(),
        compression);
  }
}
