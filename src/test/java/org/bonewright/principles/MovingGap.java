package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.measures.Definition;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card.Limit;

/**
 * A small principle whose numbers may be sampled, judged here by hand. With a plate, and where the
 * gap moves by more than 0.1: a movement above 2 in the femur, above 1 in the tibia, is minor where
 * the screws slip by more than 1; above 5 it is critical, slip or not.
 */
final class MovingGap {

  private MovingGap() {}

  static final Map<String, Definition.Domain> DOMAINS =
      Map.of(
          "bone", Definition.words("femur", "tibia"),
          "plate", Definition.yesOrNo(),
          "gap", Definition.millimetres(),
          "slip", Definition.millimetres());
  static final Card CARD =
      TestCards.card(
          "small",
          Map.of("bone", "bone", "plate", "plate", "gap", "gap", "slip", "slip"),
          Map.of(
              "moves", TestCards.limit("gap", 0.1),
              "wide", new Limit("gap", List.of("bone"), Map.of("femur", 2.0, "tibia", 1.0), ""),
              "open", TestCards.limit("gap", 5),
              "slips", TestCards.limit("slip", 1)));
  static final Worlds WORLDS =
      new Worlds(CARD, id -> new Definition(id, id, DOMAINS.get(id), "", List.of(), ""));

  static final Reading FEMUR = Reading.word("femur", "");
  static final Reading TIBIA = Reading.word("tibia", "");
  static final Reading YES = Reading.word("yes", "");
  static final Reading SLIPS = Reading.number(2, "");
  static final MissingFact BONE = new MissingFact("bone", "Which bone?");
  static final MissingFact PLATE = new MissingFact("plate", "Is there a plate?");
  static final MissingFact WEIGHT = new MissingFact("weight", "How heavy is the patient?");

  static final double STILL = 0.05;
  static final double LITTLE = 0.5;
  static final double BETWEEN = 1.5;
  static final double WIDE = 3;
  static final double OPEN = 6;

  /** What came of some readings. */
  record Judged(Verdict verdict, Optional<SampleShare> share) {

    Verdict.Unknown unknown() {
      return (Verdict.Unknown) verdict;
    }

    String shared() {
      return share.map(SampleShare::inWords).orElse("nothing");
    }
  }

  static Judged judged(Reading bone, Reading plate, Reading gap, Reading slip) {
    Map<String, Reading> readings =
        new TreeMap<>(Map.of("bone", bone, "plate", plate, "gap", gap, "slip", slip));
    List<World> worlds = WORLDS.of(readings);
    List<World> wider = WORLDS.whateverTheModel(readings);
    Verdicts said = new Verdicts();
    worlds.forEach(world -> say(world, said));
    wider.forEach(world -> say(world, said));
    CardVerdict joined = new CardVerdict(WORLDS, worlds, said, readings);
    return new Judged(joined.verdict(), joined.share(joined.verdict(), wider));
  }

  static void say(World world, Verdicts said) {
    if (world.choice("plate").equals("yes") && above(world, "gap", "moves")) {
      said.applies(world);
    }
    if (above(world, "gap", "wide") && above(world, "slip", "slips")) {
      said.unmet(world, "minor", "wide");
    }
    if (above(world, "gap", "open")) {
      said.unmet(world, "critical", "open");
    }
  }

  static boolean above(World world, String need, String limit) {
    Double value = world.value(need);
    return value != null && value > world.limit(limit);
  }

  static Judged femur(Reading gap) {
    return judged(FEMUR, YES, gap, SLIPS);
  }

  static Reading sampled(List<Double> samples, MissingFact... missing) {
    return new Reading.Sampled(samples.get(0), samples, "", "the load", List.of(missing));
  }

  /** Return samples with so many at each of some numbers, in pairs. */
  static List<Double> samples(Object... countsAndNumbers) {
    List<Double> samples = new ArrayList<>();
    for (int i = 0; i < countsAndNumbers.length; i += 2) {
      samples.addAll(
          Collections.nCopies(
              (Integer) countsAndNumbers[i], ((Number) countsAndNumbers[i + 1]).doubleValue()));
    }
    return samples;
  }

  static Reading gap(Object... countsAndNumbers) {
    return sampled(samples(countsAndNumbers));
  }
}
