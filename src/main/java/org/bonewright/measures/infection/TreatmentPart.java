package org.bonewright.measures.infection;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Scene;

/** Whether something is part of the treatment of an infection. */
enum TreatmentPart {
  YES,
  NO,
  UNKNOWN;

  /** Return the best answer of any step; where a step is silent, no in a plan, else unknown. */
  static TreatmentPart of(Scene scene, Function<Operation, Optional<TreatmentPart>> answer) {
    TreatmentPart silent = scene.subject().planned() ? NO : UNKNOWN;
    List<TreatmentPart> answers =
        scene.subject().steps().stream().map(step -> answer.apply(step).orElse(silent)).toList();
    return answers.contains(YES) ? YES : answers.contains(UNKNOWN) ? UNKNOWN : NO;
  }

  /** Return it as the file answers. */
  static TreatmentPart of(Answer answer) {
    return switch (answer) {
      case YES -> YES;
      case NO -> NO;
      case UNKNOWN -> UNKNOWN;
    };
  }

  /** Return whether at least one sample was taken. */
  static TreatmentPart atLeastOne(Quantity samples) {
    return samples.min() >= 1 ? YES : samples.max() < 1 ? NO : UNKNOWN;
  }

  /** Return whether it went on for some time. */
  static TreatmentPart someTime(Quantity weeks) {
    return weeks.min() > 0 ? YES : weeks.max() <= 0 ? NO : UNKNOWN;
  }
}
