package org.bonewright.measures.infection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far infection is known or feared: confirmed, suspected, heightened or none. */
final class InfectionState implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "infection-state",
        "State of infection",
        Definition.words("confirmed", "suspected", "heightened", "none"),
        "confirmed by a confirmatory sign; suspected by fever, local signs, discharge, joint"
            + " effusion, sequestrum, periosteal bone, raised C-reactive protein (10 mg/L),"
            + " sedimentation rate (30 mm/h) or white cells (11), lysis that no mechanical failure explains, or growth in one sample;"
            + " heightened by an open injury of grade II or more, an earlier infection, two"
            + " operations before, or a fixator before; else none, as for a closed injury without an"
            + " earlier implant",
        List.of(
            "confirmatory-signs",
            "site-at-risk",
            "findings/infection",
            "injury/openGrade",
            "operations/outcome/mode"),
        "Metsemakers et al., Injury 2018; the three states are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("site-at-risk", "no")) {
      return Reading.word("none", "closed injury, no earlier implant");
    }
    Set<String> possible = new TreeSet<>();
    List<MissingFact> missing = new ArrayList<>();
    List<String> working = new ArrayList<>();
    if (confirmed(scene, possible, missing, working)
        || suspected(scene, possible, missing, working)
        || heightened(scene, possible, missing, working)) {
      return reading(possible, working, missing);
    }
    possible.add("none");
    working.add("no sign, nothing in the history");
    return reading(possible, working, missing);
  }

  private static Reading reading(
      Set<String> possible, List<String> working, List<MissingFact> missing) {
    List<MissingFact> once = missing.stream().distinct().toList();
    return Reading.words(
        possible, Kind.FACT, String.join("; ", working), once.toArray(MissingFact[]::new));
  }

  private static boolean confirmed(
      Scene scene, Set<String> possible, List<MissingFact> missing, List<String> working) {
    Reading signs = scene.read("confirmatory-signs");
    if (signs instanceof Reading.Amount count && count.max() < 1) {
      return false;
    }
    possible.add("confirmed");
    if (signs instanceof Reading.Amount count && count.min() >= 1) {
      working.add(count.working());
      return true;
    }
    missing.addAll(signs.missing());
    return false;
  }

  private static boolean suspected(
      Scene scene, Set<String> possible, List<MissingFact> missing, List<String> working) {
    SuggestiveSigns signs = SuggestiveSigns.of(scene);
    if (signs.present().isEmpty() && signs.open().isEmpty()) {
      return false;
    }
    possible.add("suspected");
    working.addAll(signs.present());
    missing.addAll(signs.present().isEmpty() ? signs.open() : List.of());
    return !signs.present().isEmpty();
  }

  private static boolean heightened(
      Scene scene, Set<String> possible, List<MissingFact> missing, List<String> working) {
    List<Operation> before = scene.subject().before();
    List<String> reasons = new ArrayList<>();
    Optional<Injury.OpenGrade> grade = scene.subject().caseFile().injury().openGrade();
    if (grade.map(g -> g.compareTo(Injury.OpenGrade.II) >= 0).orElse(false)) {
      reasons.add("open injury");
    }
    if (before.size() >= 2) {
      reasons.add("operated twice or more");
    }
    boolean pins =
        before.stream()
            .flatMap(o -> o.fixation().stream())
            .flatMap(List::stream)
            .anyMatch(ExternalFixator.class::isInstance);
    if (pins) {
      reasons.add("fixator before");
    }
    if (infectedBefore(scene, before)) {
      reasons.add("infection or a wound problem before");
    }
    if (!reasons.isEmpty()) {
      possible.add("heightened");
      working.addAll(reasons);
      return true;
    }
    boolean told = before.stream().allMatch(o -> o.fixation().isPresent());
    if (grade.isEmpty() || !told) {
      possible.add("heightened");
      missing.add(
          grade.isEmpty()
              ? scene.missingInCase("injury/openGrade", "Was the injury open, and of which grade?")
              : scene.missingInCase("operations/fixation", "Was a fixator used before?"));
    }
    return false;
  }

  private static boolean infectedBefore(Scene scene, List<Operation> before) {
    boolean failed =
        before.stream()
            .flatMap(o -> o.outcome().flatMap(Outcome::mode).stream())
            .anyMatch(mode -> mode == FailureMode.INFECTION);
    return failed
        || scene.subject().findings().stream()
            .flatMap((Finding finding) -> finding.infection().stream())
            .anyMatch(InfectionState::wasSeen);
  }

  private static boolean wasSeen(InfectionSigns signs) {
    Optional<Examination> present = Optional.of(Examination.PRESENT);
    return signs.pus().equals(present)
        || signs.sinus().equals(present)
        || signs.woundBreakdown().equals(present)
        || signs.discharge().equals(present);
  }
}
