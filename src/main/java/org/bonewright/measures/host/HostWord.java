package org.bonewright.measures.host;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Examination;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** A word about the patient, the latest that was known. */
final class HostWord implements Measure {

  /** Which question. */
  enum What {
    SMOKING,
    DIABETES,
    TUMOUR
  }

  private final What what;

  HostWord(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case SMOKING ->
          of(
              "smoking",
              "Smoking",
              Definition.words("never", "stopped", "current"),
              "findings/host/smoking");
      case DIABETES -> of("diabetes", "Diabetes", Definition.yesOrNo(), "findings/host/diabetes");
      case TUMOUR ->
          of(
              "tumour-suspected",
              "Tumour suspected",
              Definition.yesOrNo(),
              "findings/tumourSuspected");
    };
  }

  private static Definition of(String id, String title, Definition.Domain domain, String input) {
    return new Definition(
        id, title, domain, "the latest answer that was known", List.of(input), "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing = scene.missingInCase(definition().inputs().get(0), question());
    return scene
        .subject()
        .latest(this::word)
        .<Reading>map(word -> Reading.word(word, "as stated"))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private Optional<String> word(Finding finding) {
    return switch (what) {
      case SMOKING ->
          finding
              .host()
              .flatMap(Host::smoking)
              .filter(smoking -> smoking != Host.Smoking.UNKNOWN)
              .map(Words::of);
      case DIABETES ->
          finding
              .host()
              .flatMap(Host::diabetes)
              .filter(answer -> answer != Answer.UNKNOWN)
              .map(Words::of);
      case TUMOUR -> finding.tumourSuspected().flatMap(HostWord::suspected);
    };
  }

  /** Not looked for is not known: it must never clear the bone. */
  private static Optional<String> suspected(Examination examination) {
    return switch (examination) {
      case PRESENT -> Optional.of("yes");
      case ABSENT -> Optional.of("no");
      case NOT_DONE, UNKNOWN -> Optional.empty();
    };
  }

  private String question() {
    return switch (what) {
      case SMOKING -> "Does the patient smoke: never, stopped, current?";
      case DIABETES -> "Has the patient diabetes?";
      case TUMOUR -> "Is there any suspicion of a tumour at the site?";
    };
  }
}
