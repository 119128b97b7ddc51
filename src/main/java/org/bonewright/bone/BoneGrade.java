package org.bonewright.bone;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.BoneQuality;
import org.bonewright.casefile.Quantity;

/** How well bone holds a screw: good, reduced or poor. */
public enum BoneGrade {
  GOOD,
  REDUCED,
  POOR;

  private static final Set<BoneName> THICK =
      EnumSet.of(BoneName.HUMERUS, BoneName.FEMUR, BoneName.TIBIA);

  /**
   * Return the worst grade that the measurements show: one, or several where a measurement is a
   * range across a cut-off; none when no measurement grades this kind of bone.
   *
   * <p>Cut-offs: deltoid tuberosity index below 1.4 poor, to 1.6 reduced (Spross 2015 through
   * Labronici); combined cortical thickness below 4 mm poor (Tingart 2003, from memory); cortex at
   * the screws of humerus, femur or tibia below 3 mm poor, to 4 mm reduced (from memory; a sound
   * radius or clavicle is thinner than that); femoral cortical index below 0.4 poor (from memory);
   * DXA T-score to -2.5 poor, to -1 reduced (WHO, from memory). Hounsfield units differ between
   * scanners and grade nothing here.
   */
  public static Set<BoneGrade> measured(BoneName bone, Collection<BoneQuality> measurements) {
    Optional<BoneGrade> best = worst(bone, measurements, Quantity::max);
    Optional<BoneGrade> worst = worst(bone, measurements, Quantity::min);
    return best.isEmpty() || worst.isEmpty()
        ? EnumSet.noneOf(BoneGrade.class)
        : EnumSet.range(best.get(), worst.get());
  }

  private static Optional<BoneGrade> worst(
      BoneName bone, Collection<BoneQuality> measurements, ToDoubleFunction<Quantity> bound) {
    return measurements.stream()
        .flatMap(one -> grade(bone, one.method(), bound.applyAsDouble(one.value())).stream())
        .max(Comparator.naturalOrder());
  }

  private static Optional<BoneGrade> grade(BoneName bone, BoneQuality.Method method, double value) {
    return switch (method) {
      case DELTOID_TUBEROSITY_INDEX -> Optional.of(cut(value, 1.4, 1.6));
      case COMBINED_CORTICAL_THICKNESS -> Optional.of(value < 4 ? POOR : GOOD);
      case CORTICAL_THICKNESS ->
          THICK.contains(bone) ? Optional.of(cut(value, 3, 4)) : Optional.empty();
      case FEMORAL_CORTICAL_INDEX -> Optional.of(value < 0.4 ? POOR : GOOD);
      case DXA_T_SCORE -> Optional.of(value <= -2.5 ? POOR : value <= -1 ? REDUCED : GOOD);
      case CT_HOUNSFIELD -> Optional.empty();
    };
  }

  private static BoneGrade cut(double value, double poorBelow, double reducedBelow) {
    return value < poorBelow ? POOR : value < reducedBelow ? REDUCED : GOOD;
  }
}
