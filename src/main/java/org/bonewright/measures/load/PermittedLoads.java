package org.bonewright.measures.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneLoad;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * What the bone of a scene may bear at the fracture: the loads that the case states, else those of
 * the table, under the load limit of the aftercare.
 *
 * <p>A limit lies between light and full use. A leg bears in proportion to the limit's share of the
 * body weight, and muscles press two to three times as hard as the limit; never less than at light
 * use. An arm is loaded in a straight line from light use at 2 kg to full use at 20 kg. All of this
 * is our convention. A weight that is not known is 55 to 95 kg.
 */
public final class PermittedLoads {

  private static final Dimension USUAL_KG = Dimension.assumed(55, 95, "");
  private static final double ARM_LIGHT_KG = 2;
  private static final double ARM_FULL_KG = 20;
  private static final double FEWEST_MUSCLES = 2;
  private static final double MOST_MUSCLES = 3;

  private final UsualLoads usual;

  /** Make it for a table. */
  public PermittedLoads(UsualLoads usual) {
    this.usual = usual;
  }

  /** Return the loads of the first six weeks after the operation, an entry for each activity. */
  public List<LoadRange> of(Scene scene) {
    return loads(scene, Allowance.first(scene));
  }

  /** Return what would narrow the loads; the same for both limits. */
  public List<MissingFact> missing(Scene scene) {
    Set<MissingFact> missing = new LinkedHashSet<>(Allowance.first(scene).missing());
    boolean counts = UsualLoads.isOfTheLeg(scene.boneName());
    if (counts && weight(scene).min() < weight(scene).max()) {
      missing.add(scene.missingInCase("patient/weightKg", "What does the patient weigh, in kg?"));
    }
    missing.add(
        scene.missingInCase(
            "loads", "Which load does the fracture bear in this patient, if it was reckoned?"));
    return List.copyOf(missing);
  }

  private List<LoadRange> loads(Scene scene, Allowance allowance) {
    List<BoneLoad> stated = scene.subject().caseFile().loads();
    List<UsualLoad> all =
        stated.isEmpty()
            ? usual.of(scene.boneName())
            : stated.stream().map(UsualLoad::ofPatient).toList();
    return all.stream().map(load -> range(load, scene, allowance)).toList();
  }

  private static LoadRange range(UsualLoad load, Scene scene, Allowance allowance) {
    boolean leg = UsualLoads.isOfTheLeg(scene.boneName());
    Dimension kg = weight(scene);
    LoadSpans full = load.full(kg);
    LoadSpans spans =
        allowance
            .limitKg()
            .map(limit -> leg ? ofLeg(load, kg, limit) : ofArm(load, kg, limit))
            .map(limited -> allowance.perhapsFree() ? limited.upTo(full) : limited)
            .orElse(full);
    return new LoadRange(
        load.activity(),
        spans.press(),
        spans.bending(),
        spans.torsion(),
        load.tensionDeg(),
        load.tensionSpreadDeg(),
        load.source(),
        basis(load, scene, allowance, leg));
  }

  private static LoadSpans ofLeg(UsualLoad load, Dimension kg, Dimension limit) {
    if (limit.min() >= kg.max()) {
      return load.full(kg);
    }
    LoadSpans borne;
    if (load.perNewton()) {
      Dimension weight = UsualLoad.newtons(least(limit, kg));
      Dimension press = load.full().press();
      Dimension muscles =
          Dimension.assumed(
              Math.min(press.min(), FEWEST_MUSCLES), Math.max(press.max(), MOST_MUSCLES), "");
      borne = load.full().times(weight).pressing(LoadSpans.times(muscles, weight));
    } else {
      borne =
          load.full()
              .times(
                  Dimension.assumed(
                      Math.min(1, limit.min() / kg.max()),
                      Math.min(1, limit.max() / kg.min()),
                      ""));
    }
    return borne.atLeast(load.light(kg));
  }

  private static LoadSpans ofArm(UsualLoad load, Dimension kg, Dimension limit) {
    if (limit.min() >= ARM_FULL_KG) {
      return load.full(kg);
    }
    return load.light(kg)
        .toward(load.full(kg), Dimension.assumed(share(limit.min()), share(limit.max()), ""));
  }

  private static double share(double kg) {
    return Math.max(0, Math.min(1, (kg - ARM_LIGHT_KG) / (ARM_FULL_KG - ARM_LIGHT_KG)));
  }

  private static Dimension least(Dimension one, Dimension other) {
    return new Dimension(
        Math.min(one.min(), other.min()),
        Math.min(one.max(), other.max()),
        one.assumed() || other.assumed(),
        "");
  }

  private static Dimension weight(Scene scene) {
    Optional<Quantity> told = scene.subject().caseFile().patient().weightKg();
    return told.map(kg -> Dimension.stated(kg, "")).orElse(USUAL_KG);
  }

  private static String basis(UsualLoad load, Scene scene, Allowance allowance, boolean leg) {
    List<String> parts = new ArrayList<>();
    parts.add(allowance.inWords());
    boolean limited = allowance.tellsALimit();
    if (load.perNewton() || (leg && limited)) {
      Dimension kg = weight(scene);
      parts.add("body weight " + (kg.assumed() ? "taken as " : "") + kg.numbers() + " kg");
    }
    if (limited) {
      parts.add(leg ? ofLegInWords(load) : armInWords());
    }
    return String.join("; ", parts);
  }

  private static String ofLegInWords(UsualLoad load) {
    return "in proportion to its share of the body weight"
        + (load.perNewton() ? ", muscles pressing two to three times as hard" : "")
        + ", never below light use (our convention)";
  }

  private static String armInWords() {
    return "in a straight line from light use at 2 kg to full use at 20 kg (our convention)";
  }
}
