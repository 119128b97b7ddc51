package org.bonewright.measures.load;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.BoneName;

/**
 * What each bone usually bears at a fracture of its shaft. Immutable: whoever takes measures is
 * handed the table that is in force, the published one or that of a site.
 *
 * <p>The numbers for legs are for each newton of body weight. Of a published figure no more than an
 * abstract or an excerpt was read; what is marked <em>from memory</em> was not read at all.
 */
public final class UsualLoads {

  private static final Set<BoneName> LEG = EnumSet.of(BoneName.FEMUR, BoneName.TIBIA);

  private static final String LIGHT_LEG =
      " A leg that bears nothing: a tenth of it (our convention).";
  private static final String FOREARM =
      "Orders of magnitude (from memory); torsion at full use: turning the forearm against"
          + " resistance, 3 to 6 N·m (from memory). The side under tension changes with the use.";

  /** Superior, which a case file writes as lateral. */
  private static final double SUPERIOR = 90;

  /** Lateral, leaning to the front. */
  private static final double FEMUR_TENSION = 70;

  private static final double EIGHTH = 45;

  private static final UsualLoads PUBLISHED =
      new UsualLoads(
          Map.of(
              BoneName.HUMERUS, List.of(humerus()),
              BoneName.FEMUR, List.of(femur()),
              BoneName.TIBIA, List.of(tibia()),
              BoneName.RADIUS,
                  List.of(
                      arm(
                          "use of the forearm",
                          LoadSpans.assumed(20, 100, 1, 3, 0.5, 2),
                          LoadSpans.assumed(150, 500, 5, 15, 3, 6),
                          FOREARM)),
              BoneName.ULNA,
                  List.of(
                      arm(
                          "use of the forearm",
                          LoadSpans.assumed(20, 100, 1, 3, 0.5, 2),
                          LoadSpans.assumed(50, 300, 5, 15, 3, 6),
                          FOREARM)),
              BoneName.CLAVICLE, List.of(clavicle())));

  private final Map<BoneName, List<UsualLoad>> loads;

  private UsualLoads(Map<BoneName, List<UsualLoad>> loads) {
    this.loads = new EnumMap<>(loads);
  }

  /** Return the table that Bonewright comes with. */
  public static UsualLoads published() {
    return PUBLISHED;
  }

  /**
   * Return the table with other loads of one bone.
   *
   * @throws IllegalArgumentException if there is none
   */
  public UsualLoads with(BoneName bone, List<UsualLoad> instead) {
    if (instead.isEmpty()) {
      throw new IllegalArgumentException("no load of the " + bone);
    }
    Map<BoneName, List<UsualLoad>> changed = new EnumMap<>(loads);
    changed.put(bone, List.copyOf(instead));
    return new UsualLoads(changed);
  }

  /** Return what a bone bears, an entry for each activity; one at least. */
  public List<UsualLoad> of(BoneName bone) {
    return Optional.ofNullable(loads.get(bone)).orElseThrow();
  }

  /** Return whether a bone is one of the leg, which bears the weight of the body. */
  public static boolean isOfTheLeg(BoneName bone) {
    return LEG.contains(bone);
  }

  private static UsualLoad humerus() {
    return arm(
        "use of the arm, up to leaning on a crutch or a chair",
        LoadSpans.assumed(50, 150, 3, 7.5, 2, 4),
        LoadSpans.assumed(300, 500, 10, 20, 5, 10),
        "Light use: range of laboratory protocols (from memory). Full use: values of the shaft"
            + " (from memory); the shoulder joint bears up to 1.7 body weights on crutches,"
            + " Westerhoff 2012 (excerpt read); torsion in daily life 3 to 8 N·m (from memory).");
  }

  private static UsualLoad femur() {
    return leg(
        LoadSpans.assumed(2.5, 3.1, 0.047, 0.098, 0.002, 0.013),
        Optional.of(FEMUR_TENSION),
        EIGHTH,
        "Two instrumented replacements, peaks of 2.8 body weights walking and 3.1 on stairs, bending"
            + " 4.7 to 9.8 and torque 0.2 to 1.3 body weight x cm, Taylor and Walker 2001 (excerpt"
            + " read); the lower end of 2.5 from memory. A model with all muscles has only 1.1 body"
            + " weights and 5 body weight x cm, Duda 1997 (excerpt of a later review read). Tension"
            + " at the lateral side, leaning to the front (from memory).");
  }

  private static UsualLoad tibia() {
    return leg(
        LoadSpans.assumed(2.5, 4.7, 0.041, 0.0716, 0.004, 0.014),
        Optional.empty(),
        0,
        "Muscle model, peaks of 4.7 body weights and 71.6 body weight x mm, sagittal, in late"
            + " stance, Wehner 2009 (excerpt read); lower ends and torsion from memory. In five"
            + " people the upper tibia bent backwards and inwards in stance, Yang 2014 (excerpt"
            + " read), which is tension at front and outer side; whether that holds at the peak of"
            + " the model was not seen, so any side may be under tension.");
  }

  private static UsualLoad clavicle() {
    return new UsualLoad(
        "use of the arm, from a sling to lifting",
        LoadSpans.assumed(20, 100, 1, 3, 0.5, 1.5),
        LoadSpans.assumed(100, 300, 5, 12, 2, 5),
        false,
        Optional.of(SUPERIOR),
        EIGHTH,
        "Orders of magnitude (from memory). The weight of the arm puts the upper side under tension"
            + " (from memory).");
  }

  private static UsualLoad arm(String activity, LoadSpans light, LoadSpans full, String source) {
    return new UsualLoad(activity, light, full, false, Optional.empty(), 0, source);
  }

  private static UsualLoad leg(
      LoadSpans full, Optional<Double> tensionDeg, double spreadDeg, String source) {
    return new UsualLoad(
        "walking and stairs",
        UsualLoad.lightOf(full),
        full,
        true,
        tensionDeg,
        spreadDeg,
        source + LIGHT_LEG);
  }
}
