package org.bonewright.measures.force;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** At how many times the permitted load a plated construct lets go of the bone, and how. */
final class HoldOutMeasure implements Measure {

  private static final double FINEST = 100;

  private final Definition definition;
  private final Modelling modelling;
  private final Function<List<LetGo>, Reading> reading;

  private HoldOutMeasure(
      Definition definition, Modelling modelling, Function<List<LetGo>, Reading> reading) {
    this.definition = definition;
    this.modelling = modelling;
    this.reading = reading;
  }

  static Measure share(Modelling modelling) {
    return new HoldOutMeasure(
        new Definition(
            "hold-out-share",
            "Load at which the plate lets go",
            new Definition.Domain.Numbers("1", "", 0, LetGo.MOST, 0),
            "largest load that the screws bear, over the load of the first six weeks. Conventional"
                + " screws: raised until they are pulled out one after another. Locking screws: the"
                + " load at which all of a side strip together, at least that at which the first does."
                + " Range over "
                + HoldOuts.sets()
                + " sets of assumptions, by the margin of the screws at 5, 50 and 95 in a"
                + " hundred of all; 64 stands for more. None where both kinds of screws hold,"
                + " or a nail or fixator does",
            ForceMeasure.INPUTS,
            "frame model; Chapman et al., J Biomech Eng 1996 (abstract read), used in cortex by"
                + " extension"),
        modelling,
        HoldOutMeasure::share);
  }

  static Measure mode(Modelling modelling) {
    return new HoldOutMeasure(
        new Definition(
            "hold-out-mode",
            "How the plate lets go",
            Definition.words(
                Arrays.stream(LetGo.Mode.values()).map(LetGo.Mode::word).toArray(String[]::new)),
            "unzips where the next conventional screws follow the first under less load; together"
                + " where locking screws strip as a group; slips where plate or fragments slide before"
                + " a screw is pulled out; holds where the rest bears more, or none is pulled out up to"
                + " 64 times the load. Under the sets of hold-out-share",
            ForceMeasure.INPUTS,
            "frame model"),
        modelling,
        HoldOutMeasure::mode);
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    return modelling.forces(scene).read(known -> read(scene, known));
  }

  private Reading read(Scene scene, Forces.Known known) {
    if (known.sketch().nail().isPresent()) {
      return new Reading.None("a nail holds the bone");
    }
    if (known.sketch().fixator().isPresent()) {
      return new Reading.None("an external fixator holds the bone");
    }
    if (known.sketch().mixed()) {
      return new Reading.None(
          "conventional and locking screws share the load: which give way first is not modelled");
    }
    return modelling
        .holdOut(scene, known)
        .map(reading)
        .orElseGet(() -> Reading.unknown(Forces.noAnswer(scene)));
  }

  private static Reading share(List<LetGo> all) {
    return new Reading.Amount(
        rounded(all.stream().mapToDouble(LetGo::share).min().orElseThrow()),
        rounded(all.stream().mapToDouble(LetGo::share).max().orElseThrow()),
        Kind.MODEL,
        all.size()
            + " sets of assumptions: "
            + HoldOuts.words(all).sorted().collect(Collectors.joining(" or ")),
        List.of());
  }

  private static double rounded(double share) {
    return Math.rint(share * FINEST) / FINEST;
  }

  private static Reading mode(List<LetGo> all) {
    return new Reading.Word(
        HoldOuts.words(all).collect(Collectors.toCollection(TreeSet::new)),
        Kind.MODEL,
        all.size() + " sets of assumptions",
        List.of());
  }
}
