package org.bonewright.measures.reuse;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Track;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** By how many holes a new plate reaches farther than the old one, at its shorter end. */
final class LongerThanBefore implements Measure {

  private static final Set<Track.Kind> OLD =
      EnumSet.of(Track.Kind.PLATE_SCREW, Track.Kind.LOCKING_PLATE_SCREW, Track.Kind.PIN);

  @Override
  public Definition definition() {
    return new Definition(
        "holes-beyond-old-plate",
        "Holes beyond the old plate, shorter end",
        new Definition.Domain.Numbers(
            "1", "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0),
        "how far the outermost screw of the longest new plate lies beyond the outermost old hole of"
            + " a plate or fixator, in hole spacings of the new plate, at the end where it is less;"
            + " below zero where it falls short",
        List.of("operations/fixation/place", "operations/fixation/screws"),
        "counting by screws instead of plate ends is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> longest = NewScrew.plates(scene).stream().findFirst();
    if (longest.isEmpty()) {
      return NewScrew.noPlate(scene);
    }
    Optional<MissingFact> untold = NewScrew.untold(scene);
    List<MissingFact> gaps = HoleMap.gapsAtEnd(scene);
    Optional<Dimension> spacing = longest.get().spacing();
    if (untold.isPresent() || !gaps.isEmpty() || spacing.isEmpty()) {
      return untold
          .<Reading>map(Reading::unknown)
          .orElseGet(
              () ->
                  gaps.isEmpty()
                      ? Reading.unknown(spacing(scene, longest.get()))
                      : new Reading.Unknown(gaps));
    }
    List<Dimension> screws =
        NewScrew.all(scene).stream()
            .filter(screw -> screw.plate().plate().equals(longest.get().plate()))
            .flatMap(screw -> screw.bite().track().level().stream())
            .toList();
    if (screws.isEmpty()) {
      return new Reading.None("the new plate holds no screw");
    }
    int round = scene.before(longest.get().plate()).size();
    List<Dimension> old =
        scene.ledger().metBy(round).stream()
            .map(OldTrack::track)
            .filter(track -> OLD.contains(track.kind()))
            .filter(track -> track.round() < scene.subject().before().size())
            .flatMap(track -> track.level().stream())
            .toList();
    return old.isEmpty()
        ? new Reading.None("no hole of a plate or fixator before")
        : reading(scene, screws, old, spacing.get());
  }

  private static Reading reading(
      Scene scene, List<Dimension> screws, List<Dimension> old, Dimension spacing) {
    Dimension near = over(least(old).minus(least(screws)), spacing);
    Dimension far = over(most(screws).minus(most(old)), spacing);
    Dimension shorter =
        new Dimension(
            Math.min(near.min(), far.min()),
            Math.min(near.max(), far.max()),
            near.assumed() || far.assumed(),
            "");
    return new Reading.Amount(
        shorter.min(),
        shorter.max(),
        shorter.assumed() ? Kind.ASSUMED : Kind.FACT,
        "near end " + near.numbers() + ", far end " + far.numbers(),
        shorter.min() == shorter.max() ? List.of() : List.of(HoleMap.placeOfNewPlate(scene)));
  }

  private static Dimension least(List<Dimension> levels) {
    return extreme(levels, true);
  }

  private static Dimension most(List<Dimension> levels) {
    return extreme(levels, false);
  }

  private static Dimension extreme(List<Dimension> levels, boolean isLeast) {
    Extremes all = new Extremes();
    levels.forEach(level -> all.add(level, true));
    return (isLeast ? all.least() : all.most()).orElseThrow();
  }

  /** Divides a length that may be negative. */
  private static Dimension over(Dimension length, Dimension spacing) {
    return new Dimension(
        length.min() / (length.min() < 0 ? spacing.min() : spacing.max()),
        length.max() / (length.max() < 0 ? spacing.max() : spacing.min()),
        length.assumed() || spacing.assumed(),
        "");
  }

  private static MissingFact spacing(Scene scene, PlacedPlate placed) {
    String id = placed.plate().id();
    return scene.missing(
        "fixation/" + id + "/spacingMm", "How far apart are the holes of " + id + ", in mm?");
  }
}
