package org.bonewright.measures.hold;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.measures.BoneDoubt;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether there is a reason to measure the quality of the bone. */
final class BoneDoubtMeasure implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "bone-doubt",
        "Reason to measure bone quality",
        Definition.yesOrNo(),
        "yes at age 60 or more, after a fracture from standing height, with steroids, after one rest"
            + " of more than six months in a cast, a brace or traction, or when an earlier operation"
            + " fixed the bone; an unstated age leaves it open, an unstated energy only beside a drug for weak bone",
        List.of(
            "patient/ageYears",
            "injury/energy",
            "findings/host/drugs",
            "nonOperative",
            "operations/outcome/result"),
        "common practice, no source; what an unstated energy or drug means is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    BoneDoubt doubt = BoneDoubt.of(scene.subject());
    String reasons =
        doubt.reasons().stream().map(BoneDoubt.Reason::text).collect(Collectors.joining(", "));
    if (doubt.certain()) {
      return Reading.word("yes", reasons);
    }
    if (doubt.reasons().isEmpty()) {
      return Reading.word("no", "no reason stated");
    }
    return Reading.words(
        Set.of("yes", "no"),
        Kind.FACT,
        reasons,
        doubt.reasons().stream()
            .flatMap(reason -> reason.open().stream())
            .distinct()
            .toArray(MissingFact[]::new));
  }
}
