package org.bonewright.measures.force;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The construct of a scene, solved under every set of assumptions. */
sealed interface Forces permits Forces.Known, Refused {

  /**
   * Solved.
   *
   * @param sketch what was built
   * @param answers what came of it
   * @param asks what would make the load exact
   */
  record Known(Sketch sketch, Solutions.Answers<Solved> answers, List<MissingFact> asks)
      implements Forces {

    /** Return one number of it as a reading. */
    Reading reading(ToDoubleFunction<Solved> number) {
      List<Double> values = answers.samples().stream().map(number::applyAsDouble).toList();
      return new Reading.Sampled(
          Middle.of(values), values, working(), Decides.among(answers.draws()).of(values), asks);
    }

    private String working() {
      int left = Draws.NUMBER - answers.draws().size();
      return sketch.told()
          + (left == 0 ? "" : "; no answer in " + left + " of " + Draws.NUMBER + " sets");
    }
  }

  /** Return what a measure reads: what it makes of the solved construct, else why there is none. */
  default Reading read(Function<Known, Reading> measure) {
    return this instanceof Refused refused ? refused.reading() : measure.apply((Known) this);
  }

  /**
   * Return them for a scene.
   *
   * @param loads what it bears
   * @param asks what would make that exact
   * @param solutions solves the construct
   */
  static Forces of(Scene scene, List<Loading> loads, List<MissingFact> asks, Solutions solutions) {
    Sketch.Attempt attempt = SketchMaker.of(scene);
    if (attempt instanceof Refused refused) {
      return refused;
    }
    Sketch sketch = ((Sketch.Attempt.Ready) attempt).sketch();
    return solutions
        .under(sketch, loads, scene.boneName(), scene.subject().isRevision())
        .<Forces>map(answers -> new Known(sketch, answers, asks))
        .orElseGet(() -> new Refused(Reading.unknown(noAnswer(scene))));
  }

  /** Return what is asked where the model finds no answer. */
  static MissingFact noAnswer(Scene scene) {
    return scene.missing(
        "fixation",
        "The model finds no answer: does a screw hold on each side of the line, and are all told?");
  }
}
