package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.nailchange.Checklist.Kept;

/** How many of the conditions under which an exchange nail does well are not kept. */
final class ExchangeConditions implements Measure {

  private static final int CONDITIONS = 6;
  private static final double GAP = 5;
  private static final double LOSS = 20;
  private static final double HALF = 50;

  /** A nail that fills this much of the canal leaves no room for a much thicker one. */
  private static final double FULL = 0.9;

  @Override
  public Definition definition() {
    return new Definition(
        "exchange-conditions-missed",
        "Conditions for an exchange nail not kept",
        new Definition.Domain.Numbers("1", "", 0, CONDITIONS, 1),
        "count of: femur or tibia; line at the isthmus; gap below 5 mm; less than 20 mm of bone and"
            + " less than half of the circumference missing (half in contact will do); hypertrophic"
            + " or oligotrophic, or atrophic with graft; the old nail filled less than 0.9 of the"
            + " canal. None without an exchange",
        List.of(
            "bone-name",
            "line-at-isthmus",
            "gap-widest",
            "findings/defectMm",
            "findings/circumferenceMissingPercent",
            "contact-percent",
            "nonunion-type",
            "graft-makeup",
            FailedNailFill.ID),
        "Brinker and O'Connor, JBJS Am 2007, from memory; the 0.9 is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (!scene.possibly(NailRevision.ID, NailRevision.EXCHANGED)) {
      return new Reading.None("no nail exchanged");
    }
    Checklist list = new Checklist();
    list.add(
        Kept.of(scene.boneName() == BoneName.FEMUR || scene.boneName() == BoneName.TIBIA),
        "neither femur nor tibia",
        List.of());
    list.add(
        Checklist.oneOf(scene, "line-at-isthmus", Set.of("yes")),
        "not at the isthmus",
        scene.read("line-at-isthmus").missing());
    Reading gap = scene.read("gap-widest");
    list.add(Checklist.below(gap, GAP), "gap of " + gap.shown() + " mm", gap.missing());
    loss(scene, list);
    type(scene, list);
    Reading fill = scene.read(FailedNailFill.ID);
    list.add(
        Checklist.below(fill, FULL),
        "the old nail filled " + fill.shown() + " of the canal",
        orElse(fill.missing(), scene.read(NailRevision.ID).missing()));
    return list.reading();
  }

  private static void loss(Scene scene, Checklist list) {
    Reading length =
        stated(
            scene,
            scene.subject().latest(Finding::defectMm),
            "findings/defectMm",
            "How much bone is missing along the axis, in mm?");
    Reading round =
        stated(
            scene,
            scene.subject().latest(Finding::circumferenceMissingPercent),
            "findings/circumferenceMissingPercent",
            "What share of the circumference is missing?");
    Reading contact = scene.read("contact-percent");
    Kept half =
        round instanceof Reading.Unknown
            ? Checklist.atLeast(contact, HALF) == Kept.YES ? Kept.YES : Kept.OPEN
            : Checklist.below(round, HALF);
    list.add(
        Checklist.below(length, LOSS).and(half),
        "too much bone missing",
        Reading.missingOf(length, round));
  }

  private static Reading stated(
      Scene scene, Optional<Quantity> value, String field, String question) {
    MissingFact missing = scene.missingInCase(field, question);
    return value
        .map(q -> Reading.number(Dimension.stated(q, ""), "as found", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private static void type(Scene scene, Checklist list) {
    Reading type = scene.read("nonunion-type");
    if (type instanceof Reading.None) {
      return;
    }
    Kept alive = Checklist.oneOf(scene, "nonunion-type", Set.of("hypertrophic", "oligotrophic"));
    Kept notGone =
        Checklist.oneOf(scene, "nonunion-type", Set.of("hypertrophic", "oligotrophic", "atrophic"));
    Kept grafted = Checklist.oneOf(scene, "graft-makeup", Set.of("substitute", "mixed", "living"));
    list.add(
        alive.or(notGone.and(grafted)),
        type.shown() + (scene.certainly("nonunion-type", "atrophic") ? " without graft" : ""),
        Reading.missingOf(type, scene.read("graft-makeup")));
  }

  private static List<MissingFact> orElse(List<MissingFact> facts, List<MissingFact> other) {
    return facts.isEmpty() ? other : facts;
  }
}
