package org.bonewright.measures.reuse;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Opening;
import org.bonewright.bone.ledger.Track;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many of the new plate screws go in close to an old hole. */
final class ShareNearOldHoles implements Measure {

  private static final double DIAMETERS = 1.5;

  @Override
  public Definition definition() {
    return new Definition(
        "new-screws-at-old-holes",
        "Screws put in at old holes",
        Definition.percent(),
        "share of the new plate screws whose entry lies within 1.5 times the larger diameter of an"
            + " old hole, middle to middle on the surface of the bone",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "same-surface revision teaching, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    if (NewScrew.plates(scene).isEmpty()) {
      return NewScrew.noPlate(scene);
    }
    Optional<MissingFact> untold = NewScrew.untold(scene);
    if (untold.isPresent()) {
      return Reading.unknown(untold.get());
    }
    List<MissingFact> gaps = HoleMap.gapsAtEnd(scene);
    if (!gaps.isEmpty()) {
      return new Reading.Unknown(gaps);
    }
    List<NewScrew> screws = NewScrew.all(scene);
    if (screws.isEmpty()) {
      return new Reading.None("no new plate screw");
    }
    int certain = 0;
    int possible = 0;
    for (NewScrew screw : screws) {
      List<OldTrack> old =
          scene.ledger().metBy(screw.bite().track().round()).stream()
              .filter(hole -> hole.track().round() < scene.subject().before().size())
              .toList();
      certain += old.stream().anyMatch(hole -> isAt(scene, screw, hole.track(), true)) ? 1 : 0;
      possible += old.stream().anyMatch(hole -> isAt(scene, screw, hole.track(), false)) ? 1 : 0;
    }
    return new Reading.Amount(
        100.0 * certain / screws.size(),
        100.0 * possible / screws.size(),
        Kind.FACT,
        (certain == possible ? "" + certain : certain + " to " + possible) + " of " + screws.size(),
        certain == possible ? List.of() : List.of(HoleMap.placeOfNewPlate(scene)));
  }

  private static boolean isAt(Scene scene, NewScrew screw, Track old, boolean certainly) {
    Track mine = screw.bite().track();
    Dimension outer = Holes.in(scene).outer(mine);
    Opening entry = Opening.of(mine, outer).get(0);
    double reach =
        DIAMETERS
            * (certainly
                ? Math.max(mine.diameter().min(), old.diameter().min())
                : Math.max(mine.diameter().max(), old.diameter().max()));
    return Opening.of(old, outer).stream()
        .filter(open -> open.certain() || !certainly)
        .map(open -> entry.centres(open, outer))
        .anyMatch(apart -> (certainly ? apart.max() : apart.min()) <= reach);
  }
}
