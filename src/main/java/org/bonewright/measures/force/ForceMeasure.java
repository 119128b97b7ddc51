package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.load.LoadMeasures;

/** One number of what a construct does under load. */
final class ForceMeasure implements Measure {

  /** What the construct and its load are made from. */
  static final List<String> INPUTS =
      List.of(
          LoadMeasures.STATED,
          "bone/sections",
          "bone/quality",
          "operations/fixation",
          "operations/reduction",
          "operations/compression",
          "operations/aftercare/load",
          "pattern-class",
          "compression-method",
          "zone-length");

  private final Definition definition;
  private final Modelling modelling;
  private final ToDoubleFunction<Solved> number;
  private final WhenClosed whenClosed;
  private final Part part;

  /** Whether it says something of ends that touch all round, and of a gap. */
  enum WhenClosed {
    /** Of both. */
    SAME("", ""),
    /** Of a gap alone: nothing strains where there is none. */
    NO_GAP("the ends touch, there is no gap to strain", ""),
    /** Of a gap alone: ends that touch bear the load with the metal. */
    SHARED("the ends touch and bear the load with the metal", ""),
    /** Of ends that touch alone. */
    ONLY("", "there is a gap");

    private final String closed;
    private final String open;

    WhenClosed(String closed, String open) {
      this.closed = closed;
      this.open = open;
    }

    /** Return why it says nothing of a line; empty where it says something. */
    private Optional<String> silent(LineSketch line) {
      return Optional.of(line.closed() ? closed : open).filter(why -> !why.isEmpty());
    }
  }

  /** What it is a number of. */
  enum Part {
    WHOLE(""),
    PLATE("no plate holds the bone"),
    WITHIN("neither plate nor nail holds the bone"),
    NAIL("no nail holds the bone"),
    FIXATOR("no external fixator holds the bone");

    private final String none;

    Part(String none) {
      this.none = none;
    }

    private boolean isIn(Sketch sketch) {
      return switch (this) {
        case WHOLE -> true;
        case PLATE -> !sketch.plates().isEmpty();
        case WITHIN -> !sketch.plates().isEmpty() || sketch.nail().isPresent();
        case NAIL -> sketch.nail().isPresent();
        case FIXATOR -> sketch.fixator().isPresent();
      };
    }
  }

  /**
   * Make a measure.
   *
   * @param part what must hold the bone for it to say something
   * @param whenClosed whether it says something of ends that touch
   * @param number reads it off one solution
   */
  ForceMeasure(
      Modelling modelling,
      String id,
      String title,
      Definition.Domain domain,
      String formula,
      String source,
      Part part,
      WhenClosed whenClosed,
      ToDoubleFunction<Solved> number) {
    this.part = part;
    this.definition = new Definition(id, title, domain, formula, INPUTS, source);
    this.modelling = modelling;
    this.number = number;
    this.whenClosed = whenClosed;
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    return modelling.forces(scene).read(this::read);
  }

  private Reading read(Forces.Known known) {
    if (!part.isIn(known.sketch())) {
      return new Reading.None(part.none);
    }
    return whenClosed
        .silent(known.sketch().line())
        .<Reading>map(Reading.None::new)
        .orElseGet(() -> known.reading(number));
  }
}
