package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.Outcome;

/** What the model answers to a bench file. */
public sealed interface BenchAnswer {

  /**
   * The answer to a construct.
   *
   * @param bone the construct as it was modelled
   * @param loads what each load does, in the order of the file
   * @param stiffness how stiff it is; empty where the model has no answer
   * @param openingMoment N·m at which the far cortex opens, where it was asked for and there is one
   * @param limits what the model cannot say
   */
  record OfConstruct(
      FixedBone bone,
      List<AnsweredLoad> loads,
      Optional<Stiffness> stiffness,
      Optional<Double> openingMoment,
      List<String> limits)
      implements BenchAnswer {}

  /**
   * A load with what it does.
   *
   * @param load the load
   * @param outcome the answer, or why there is none
   * @param holdOut how much of it pressed screws bear until they are pulled out, where the strength
   *     of the bone is given
   */
  record AnsweredLoad(Load load, Outcome outcome, Optional<ConstructHoldOut> holdOut) {}

  /**
   * The answer to a single question: names with one number or several.
   *
   * @param parts in order
   */
  record OfQuestion(List<Part> parts) implements BenchAnswer {}

  /** A part of an answer. */
  sealed interface Part {

    /** Return its name. */
    String name();
  }

  /**
   * One number.
   *
   * @param unit as written, empty for a pure number
   */
  record Figure(String name, double value, String unit) implements Part {}

  /** Several numbers of one kind. */
  record Row(String name, List<Double> values, String unit) implements Part {}

  /** Yes or no. */
  record Flag(String name, boolean value) implements Part {}

  /** Parts under one name. */
  record Group(String name, List<Part> parts) implements Part {}
}
