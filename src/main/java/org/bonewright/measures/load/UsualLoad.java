package org.bonewright.measures.load;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneLoad;
import org.bonewright.casefile.Direction;

/**
 * One activity, at the lightest use of the limb and with no limit to it.
 *
 * @param activity what is done
 * @param light at light use: the arm carries nothing to speak of, the leg bears nothing
 * @param full with no limit
 * @param perNewton whether both are for each newton of body weight
 * @param tensionDeg the direction around the bone, in degrees as in a case file, of the side that
 *     bending puts under tension; empty for any
 * @param tensionSpreadDeg how far off that direction it may be, either way
 * @param source where it comes from
 */
public record UsualLoad(
    String activity,
    LoadSpans light,
    LoadSpans full,
    boolean perNewton,
    Optional<Double> tensionDeg,
    double tensionSpreadDeg,
    String source) {

  /** Gravity, in N for each kg. */
  static final double GRAVITY = 9.81;

  /** What a site states for a leg is for somebody of this weight, in kg; our convention. */
  public static final double SITE_KG = 75;

  /** Light use, where only full use is stated; our convention. */
  static final double LIGHT_SHARE = 0.1;

  /** Half the distance between two named sides: how exactly a stated side is meant. */
  private static final double STATED_SPREAD = 22.5;

  /** Return the load that a case file states of its patient. */
  static UsualLoad ofPatient(BoneLoad stated) {
    return of(stated, spans(stated, false), false, stated.source());
  }

  /**
   * Return the load that a site sets instead of one of the table. Of a leg it is for somebody of
   * {@link #SITE_KG} and follows the weight of the patient.
   */
  public static UsualLoad ofSite(BoneLoad stated, boolean leg) {
    Dimension share = Dimension.assumed(1 / (SITE_KG * GRAVITY), 1 / (SITE_KG * GRAVITY), "");
    LoadSpans spans = spans(stated, true);
    return of(stated, leg ? spans.times(share) : spans, leg, stated.source());
  }

  private static UsualLoad of(BoneLoad stated, LoadSpans full, boolean perNewton, String source) {
    return new UsualLoad(
        stated.activity().strip(),
        lightOf(full),
        full,
        perNewton,
        stated.tensionSide().map(Direction::degrees),
        stated.tensionSide().isPresent() ? STATED_SPREAD : 0,
        source.strip());
  }

  /** Return light use by the convention, where nothing better is known. */
  static LoadSpans lightOf(LoadSpans full) {
    return full.times(Dimension.assumed(LIGHT_SHARE, LIGHT_SHARE, ""));
  }

  private static LoadSpans spans(BoneLoad stated, boolean assumed) {
    List<Dimension> all =
        Stream.of(stated.pressN(), stated.bendingNm(), stated.torsionNm())
            .map(quantity -> new Dimension(quantity.min(), quantity.max(), assumed, ""))
            .toList();
    return new LoadSpans(all.get(0), all.get(1), all.get(2));
  }

  /** Return it with no limit, in N and N·m, for this body weight in kg. */
  public LoadSpans full(Dimension kg) {
    return perNewton ? full.times(newtons(kg)) : full;
  }

  /** Return it at light use, in N and N·m, for this body weight in kg. */
  public LoadSpans light(Dimension kg) {
    return perNewton ? light.times(newtons(kg)) : light;
  }

  /** Return the weight of a mass, in N. */
  static Dimension newtons(Dimension kg) {
    return new Dimension(kg.min() * GRAVITY, kg.max() * GRAVITY, kg.assumed(), "");
  }
}
