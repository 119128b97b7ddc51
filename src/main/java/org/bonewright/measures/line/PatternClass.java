package org.bonewright.measures.line;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** The class of fracture pattern that decides how a line is bridged or compressed. */
final class PatternClass implements Measure {

  /** Ends this near count as meeting, in mm; our convention. */
  private static final double ENDS_MEET = 5;

  @Override
  public Definition definition() {
    return new Definition(
        "pattern-class",
        "Pattern",
        Definition.words("simple", "wedge", "multifragmentary", "defect"),
        "transverse, oblique and spiral lines are simple; multifragmentary and segmental ones are"
            + " multifragmentary; a missing piece of shaft is a defect. The pattern of what has not"
            + " united counts where a finding states it, else that of the injury. Once the whole zone"
            + " is cut out: simple where the gap left is at most 5 mm, else a defect",
        List.of("findings/pattern", "injury/pattern", "operations/resection", "gap-widest"),
        "usual classification of shaft fractures; segmental as multifragmentary is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.subject().steps().stream().noneMatch(PatternClass::cuts)) {
      return stated(scene);
    }
    if (wholeZoneCut(scene)) {
      return afterCut(scene);
    }
    return WholeZoneCut.impossible(scene)
        ? stated(scene)
        : either(scene, stated(scene), afterCut(scene));
  }

  private static boolean cuts(Operation step) {
    return step.resection().map(cut -> !cut.isEmpty()).orElse(false);
  }

  private static boolean wholeZoneCut(Scene scene) {
    boolean nothingLeft =
        scene.zoneAsFound().length().map(l -> l.min() > 0).orElse(false)
            && scene.zone().length().map(l -> l.max() <= 0).orElse(false);
    return nothingLeft || WholeZoneCut.certain(scene);
  }

  /** What a cut through the whole zone leaves: two ends that meet, or a gap between them. */
  private static Reading afterCut(Scene scene) {
    Reading gap = scene.read("gap-widest");
    if (gap instanceof Reading.Amount wide && wide.max() <= ENDS_MEET) {
      return Reading.word("simple", "the zone is cut out, two ends meet");
    }
    if (gap instanceof Reading.Amount wide && wide.min() > ENDS_MEET) {
      return Reading.word(
          "defect", "the zone is cut out, a gap of " + wide.shown() + " mm is left");
    }
    return Reading.words(
        Set.of("simple", "defect"),
        Kind.FACT,
        "the zone is cut out, the gap left is not told exactly",
        gap.missing().toArray(MissingFact[]::new));
  }

  /** Where the zone is not known, a cut may have taken all of it or a part. */
  private static Reading either(Scene scene, Reading whole, Reading cut) {
    MissingFact zone =
        scene.missingInCase(
            "injury/zone", "From which level to which is the bone broken or not united, in mm?");
    List<MissingFact> missing =
        Stream.of(List.of(zone), whole.missing(), cut.missing())
            .flatMap(List::stream)
            .distinct()
            .toList();
    if (!(whole instanceof Reading.Word a) || !(cut instanceof Reading.Word b)) {
      return new Reading.Unknown(missing);
    }
    Set<String> possible = new TreeSet<>(a.possible());
    possible.addAll(b.possible());
    return Reading.words(
        possible,
        Kind.FACT,
        "bone is cut out, of a zone that is not told",
        missing.toArray(MissingFact[]::new));
  }

  private static Reading stated(Scene scene) {
    return StatedPattern.of(scene)
        .map(PatternClass::of)
        .orElseGet(() -> Reading.unknown(StatedPattern.missing(scene)));
  }

  private static Reading of(Injury.Pattern pattern) {
    String word =
        switch (pattern) {
          case TRANSVERSE, OBLIQUE, SPIRAL -> "simple";
          case WEDGE -> "wedge";
          case MULTIFRAGMENTARY, SEGMENTAL -> "multifragmentary";
          case SEGMENTAL_DEFECT -> "defect";
        };
    return Reading.word(word, Words.of(pattern));
  }
}
