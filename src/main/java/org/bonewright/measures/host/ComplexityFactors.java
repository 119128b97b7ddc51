package org.bonewright.measures.host;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many things make a nonunion a case for a specialised unit. */
final class ComplexityFactors implements Measure {

  private static final double LARGE_MM = 30;
  private static final double ILL = 3;
  private static final int REVISIONS = 2;

  @Override
  public Definition definition() {
    return new Definition(
        "complexity-factors",
        "Factors of complexity",
        new Definition.Domain.Numbers("1", "", 0, 6, 1),
        "count of: confirmed infection; more than 30 mm of bone missing; two or more revisions that"
            + " failed; poor bone; open skin over the site; anaesthetic risk (ASA) of class 3 or more. What is not told"
            + " may count or not",
        List.of(
            "infection-state",
            "findings/defectMm",
            "operations/outcome/result",
            "bone-grade",
            "findings/skin",
            "findings/host/asa"),
        "stands in for a published score whose table is not complete here; our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<String> present = new ArrayList<>();
    List<String> open = new ArrayList<>();
    Set<MissingFact> missing = new LinkedHashSet<>();
    sort("infection", word(scene, "infection-state", "confirmed"), present, open);
    sort("large defect", defect(scene), present, open);
    sort("two revisions failed", revisions(scene), present, open);
    sort("poor bone", word(scene, "bone-grade", "poor"), present, open);
    sort("open skin", skin(scene), present, open);
    sort("anaesthetic risk (ASA)", asa(scene), present, open);
    for (String factor : open) {
      missing.addAll(asked(scene, factor));
    }
    return new Reading.Amount(
        present.size(),
        present.size() + open.size(),
        Kind.FACT,
        present.isEmpty() ? "none certain" : String.join(", ", present),
        List.copyOf(missing));
  }

  private static void sort(String name, Answer there, List<String> present, List<String> open) {
    if (there == Answer.YES) {
      present.add(name);
    } else if (there == Answer.UNKNOWN) {
      open.add(name);
    }
  }

  private static List<MissingFact> asked(Scene scene, String factor) {
    return switch (factor) {
      case "infection" -> scene.read("infection-state").missing();
      case "large defect" ->
          List.of(
              scene.missingInCase(
                  "findings/defectMm", "How much bone is missing along the axis, in mm?"));
      case "poor bone" -> scene.read("bone-grade").missing();
      case "open skin" ->
          List.of(scene.missingInCase("findings/skin", "How is the skin over the site?"));
      case "anaesthetic risk (ASA)" ->
          List.of(
              scene.missingInCase("findings/host/asa", "Which class of anaesthetic risk (ASA)?"));
      default ->
          List.of(
              scene.missingInCase("operations/outcome", "What became of each operation before?"));
    };
  }

  private static Answer word(Scene scene, String measure, String word) {
    if (scene.certainly(measure, word)) {
      return Answer.YES;
    }
    return scene.possibly(measure, word) ? Answer.UNKNOWN : Answer.NO;
  }

  private static Answer defect(Scene scene) {
    return scene
        .subject()
        .latest(Finding::defectMm)
        .map(mm -> above(mm.min() > LARGE_MM, mm.max() > LARGE_MM))
        .orElse(Answer.UNKNOWN);
  }

  private static Answer above(boolean surely, boolean perhaps) {
    return surely ? Answer.YES : perhaps ? Answer.UNKNOWN : Answer.NO;
  }

  /** The first fixation is no revision. */
  private static Answer revisions(Scene scene) {
    List<Operation> done = scene.doneBefore();
    int failed = 0;
    int open = 0;
    for (int i = 1; i < done.size(); i++) {
      Optional<Outcome.Result> result = done.get(i).outcome().map(Outcome::result);
      failed += result.equals(Optional.of(Outcome.Result.FAILED)) ? 1 : 0;
      open += result.isEmpty() || result.get() == Outcome.Result.UNKNOWN ? 1 : 0;
    }
    return above(failed >= REVISIONS, failed + open >= REVISIONS);
  }

  private static Answer skin(Scene scene) {
    return scene
        .subject()
        .latest(Finding::skin)
        .map(skin -> skin == Finding.Skin.OPEN ? Answer.YES : Answer.NO)
        .orElse(Answer.UNKNOWN);
  }

  private static Answer asa(Scene scene) {
    Optional<Quantity> asa = scene.subject().latest(f -> f.host().flatMap(Host::asa));
    return asa.map(a -> above(a.min() >= ILL, a.max() >= ILL)).orElse(Answer.UNKNOWN);
  }
}
