package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.Movement;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.Load;

/** Answers of the model made up by hand, for tests that reckon with them. */
final class HandAnswers {

  private HandAnswers() {}

  static LoadAnswer answer(
      Load load, Optional<StrutCut> strut, List<PlateCut> cuts, List<ScrewDemand> screws) {
    return new LoadAnswer(
        load,
        new Movement(0, 0, 0, 0, 0, 0),
        new GapMovement(0, 0, 0, 0, 0, OptionalDouble.empty(), OptionalDouble.empty()),
        Optional.empty(),
        List.of(cuts),
        screws,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        strut,
        Optional.empty(),
        List.of(),
        OptionalDouble.empty(),
        1);
  }

  /** Return what a plate carries at the line: a force away from the bone and a moment. */
  static PlateCut cut(double away, double weak) {
    return new PlateCut(0, 0, away, 0, weak, 0, 0, 0, 0, 0);
  }

  /** Return a screw that strips at 1000 N. */
  static ScrewDemand screw(double at, double pull) {
    return new ScrewDemand(
        0, at, pull, 0, 0, 0, OptionalDouble.of(1000), "stick", 0, OptionalDouble.empty());
  }
}
