package org.bonewright.measures.host;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Patient;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether there is a reason to look for malnutrition. */
final class MalnutritionRisk implements Measure {

  private static final double OLD = 70;
  private static final double THIN = 18.5;
  private static final int SEVERAL = 2;

  @Override
  public Definition definition() {
    return new Definition(
        "malnutrition-risk",
        "Reason to look at nutrition",
        Definition.yesOrNo(),
        "yes for two or more operations before, an age of 70 or more, or a body mass index below"
            + " 18.5",
        List.of("operations", "patient/ageYears", "patient/heightCm", "patient/weightKg"),
        "common practice, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.doneBefore().size() >= SEVERAL) {
      return Reading.word("yes", scene.doneBefore().size() + " operations before");
    }
    Patient patient = scene.subject().caseFile().patient();
    List<String> open = new ArrayList<>();
    List<MissingFact> missing = new ArrayList<>();
    Optional<Quantity> age = patient.ageYears();
    if (age.isPresent() && age.get().min() >= OLD) {
      return Reading.word("yes", "age");
    }
    if (age.isEmpty() || age.get().max() >= OLD) {
      open.add("age");
      missing.add(scene.missingInCase("patient/ageYears", "How old is the patient?"));
    }
    Optional<Quantity> height = patient.heightCm();
    Optional<Quantity> weight = patient.weightKg();
    if (height.isPresent() && weight.isPresent()) {
      double thinnest = index(weight.get().min(), height.get().max());
      double heaviest = index(weight.get().max(), height.get().min());
      if (heaviest < THIN) {
        return Reading.word("yes", "body mass index");
      }
      if (thinnest < THIN) {
        open.add("body mass index");
        missing.add(
            scene.missingInCase("patient/weightKg", "How heavy and how tall is the patient?"));
      }
    }
    return open.isEmpty()
        ? Reading.word("no", "neither age nor earlier operations nor weight")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            String.join(", ", open) + " not told exactly",
            missing.toArray(MissingFact[]::new));
  }

  private static double index(double kg, double cm) {
    return kg / (cm / 100 * (cm / 100));
  }
}
