package org.bonewright.measures.infection;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.SampleResult;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * The suggestive signs of fracture-related infection that were known when a subject began: those
 * that do not prove it but ask for a work-up (consensus 2018). The latest answer counts; what was
 * not done is no evidence.
 *
 * <p>Our conventions: markers taken within two weeks of the injury or of an operation are no sign;
 * loosening or lysis is none where the operation before failed in a mechanical mode.
 */
final class SuggestiveSigns {

  private static final double CRP_MG_L = 10;
  private static final double ESR_MM_H = 30;
  private static final double WHITE_CELLS_G_L = 11;

  private static final Set<FailureMode> MECHANICAL =
      EnumSet.complementOf(
          EnumSet.of(
              FailureMode.ALL_SCREWS_LUCENT,
              FailureMode.PINS_LOOSE,
              FailureMode.STRUT_RESORBED,
              FailureMode.NO_UNION_METAL_INTACT,
              FailureMode.INFECTION));

  private final Scene scene;
  private final List<String> present = new ArrayList<>();
  private final List<MissingFact> open = new ArrayList<>();

  private SuggestiveSigns(Scene scene) {
    this.scene = scene;
  }

  static SuggestiveSigns of(Scene scene) {
    SuggestiveSigns signs = new SuggestiveSigns(scene);
    signs.sign("fever", "fever", InfectionSigns::fever, "Was there fever of 38.3 °C or more?");
    signs.sign(
        "local signs",
        "localSigns",
        InfectionSigns::localSigns,
        "Is there redness, warmth, swelling or growing pain?");
    signs.sign(
        "wound discharge",
        "discharge",
        InfectionSigns::discharge,
        "Is there new, lasting or growing wound discharge?");
    signs.sign(
        "joint effusion",
        "jointEffusion",
        InfectionSigns::jointEffusion,
        "Is there a new effusion of a joint beside?");
    signs.sign("sequestrum", "sequestrum", InfectionSigns::sequestrum, "Is there a sequestrum?");
    signs.sign(
        "periosteal bone",
        "periostealBone",
        InfectionSigns::periostealBone,
        "Is there new periosteal bone away from the line?");
    signs.marker("C-reactive protein", "crpMgL", InfectionSigns::crpMgL, CRP_MG_L);
    signs.marker("sedimentation rate", "esrMmH", InfectionSigns::esrMmH, ESR_MM_H);
    signs.marker("white cells", "whiteCellsG9L", InfectionSigns::whiteCellsG9L, WHITE_CELLS_G_L);
    signs.lysis();
    signs.oneSample();
    return signs;
  }

  /** Return the signs that count. */
  List<String> present() {
    return List.copyOf(present);
  }

  /** Return what is not known. */
  List<MissingFact> open() {
    return List.copyOf(open);
  }

  private void ask(String field, String question) {
    open.add(scene.missingInCase("findings/infection/" + field, question));
  }

  private void sign(
      String name,
      String field,
      Function<InfectionSigns, Optional<Examination>> sign,
      String question) {
    Optional<Examination> answer = latest(sign);
    if (answer.isEmpty() || answer.get() == Examination.UNKNOWN) {
      ask(field, question);
    } else if (answer.get() == Examination.PRESENT) {
      present.add(name);
    }
  }

  private <T> Optional<T> latest(Function<InfectionSigns, Optional<T>> question) {
    return scene.subject().latest(finding -> finding.infection().flatMap(question));
  }

  private void marker(
      String name,
      String field,
      Function<InfectionSigns, Optional<Quantity>> marker,
      double normal) {
    Optional<Quantity> value =
        scene.subject().findings().stream()
            .filter(finding -> NormalReaction.isOver(finding, scene.doneBefore()))
            .flatMap(finding -> finding.infection().flatMap(marker).stream())
            .findFirst();
    if (value.isEmpty() || (value.get().min() <= normal && value.get().max() > normal)) {
      ask(field, "What was the " + name + ", two weeks or more after injury and operation?");
    } else if (value.get().min() > normal) {
      present.add(name + " raised");
    }
  }

  private void lysis() {
    Optional<Examination> answer = latest(InfectionSigns::lysis);
    if (answer.isEmpty() || answer.get() == Examination.UNKNOWN) {
      ask("lysis", "Is there lysis or loosening on the films?");
    } else if (answer.get() == Examination.PRESENT) {
      Optional<FailureMode> mode =
          scene
              .failedBefore()
              .map(Scene::operation)
              .flatMap(Operation::outcome)
              .flatMap(Outcome::mode);
      if (mode.isEmpty()) {
        ask("lysis", "Does the way in which the metal failed explain the lysis?");
      } else if (!MECHANICAL.contains(mode.get())) {
        present.add("lysis");
      }
    }
  }

  private void oneSample() {
    Optional<SampleResult> samples = latest(InfectionSigns::samples);
    String question = "How many deep samples were taken, and in how many did an organism grow?";
    if (samples.isEmpty()) {
      ask("samples", question);
    } else if (samples.get().taken().max() > 0) {
      Optional<Quantity> grown = samples.get().sameOrganism();
      if (grown.isEmpty() || (grown.get().min() < 1 && grown.get().max() >= 1)) {
        ask("samples", question);
      } else if (grown.get().min() >= 1) {
        present.add("growth in a deep sample");
      }
    }
  }
}
