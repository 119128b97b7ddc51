package org.bonewright.measures.reuse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Opening;
import org.bonewright.bone.ledger.Track;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The longest row of holes in the bone, a new one among them, with little bone between them. */
final class HoleRow implements Measure {

  private static final double SAME_HOLE = 0.5;

  @Override
  public Definition definition() {
    return new Definition(
        "holes-in-tight-row",
        "Holes in a tight row",
        Definition.count(1),
        "holes in a row along the bone, at least one of them new, in which each has less than one"
            + " larger diameter of bone, edge to edge, to the next; holes are in a row where their"
            + " middles lie less than a larger diameter apart round the bone; a hole used again"
            + " counts once; 1: no hole is that close to another",
        List.of("operations/fixation", "operations/removed"),
        "one diameter: common practice; the width of a row is our convention");
  }

  /** A hole where it opens on the surface. */
  private record Spot(Track track, Opening opening, boolean isNew, Dimension outer) {

    boolean isCloseTo(Spot other, boolean certainly) {
      if (track.name().equals(other.track.name())) {
        return false;
      }
      Dimension a = track.diameter();
      Dimension b = other.track.diameter();
      Dimension along = opening.along(other.opening);
      Dimension across = opening.across(other.opening, outer);
      if (certainly) {
        double larger = Math.max(a.min(), b.min());
        return across.max() < larger && along.max() < larger + (a.min() + b.min()) / 2;
      }
      double larger = Math.max(a.max(), b.max());
      return across.min() < larger && along.min() < larger + (a.max() + b.max()) / 2;
    }
  }

  @Override
  public Reading take(Scene scene) {
    List<MissingFact> gaps = HoleMap.gapsAtEnd(scene);
    if (!gaps.isEmpty()) {
      return new Reading.Unknown(gaps);
    }
    Holes holes = Holes.in(scene);
    if (holes.drilled().isEmpty()) {
      return new Reading.None("no new hole");
    }
    Set<String> certainRow = longest(spots(scene, holes, true), true);
    Set<String> possibleRow = longest(spots(scene, holes, false), false);
    int min = Math.max(1, certainRow.size());
    int max = Math.max(min, possibleRow.size());
    return new Reading.Amount(
        min,
        max,
        Kind.FACT,
        max == 1 ? "none close to another" : String.join(", ", possibleRow),
        min == max ? List.of() : List.of(HoleMap.placeOfNewPlate(scene)));
  }

  /** Return every opening; a hole used again is left out where it certainly, or perhaps, is one. */
  private static List<Spot> spots(Scene scene, Holes holes, boolean certainly) {
    List<Spot> spots = new ArrayList<>();
    for (OldTrack hole : holes.all()) {
      boolean again =
          !holes.isNew(hole)
              && holes.drilled().stream()
                  .anyMatch(fresh -> isUsedAgain(scene, holes, hole, fresh, certainly));
      if (!again) {
        Dimension outer = holes.outer(hole.track());
        Opening.of(hole.track(), outer).stream()
            .filter(opening -> opening.certain() || !certainly)
            .forEach(
                opening -> spots.add(new Spot(hole.track(), opening, holes.isNew(hole), outer)));
      }
    }
    return spots;
  }

  private static boolean isUsedAgain(
      Scene scene, Holes holes, OldTrack old, OldTrack fresh, boolean certainly) {
    Dimension outer = holes.outer(fresh.track());
    Opening entry = Opening.of(fresh.track(), outer).get(0);
    boolean here =
        Opening.of(old.track(), outer).stream()
            .map(opening -> opening.centres(entry, outer))
            .anyMatch(apart -> (certainly ? apart.min() : apart.max()) <= SAME_HOLE);
    return here
        || NewScrew.all(scene).stream()
            .map(NewScrew::bite)
            .filter(bite -> bite.contact() == Bite.Contact.REUSED)
            .filter(bite -> bite.track().name().equals(fresh.track().name()))
            .map(Bite::closest)
            .filter(closest -> certainly || closest.size() == 1)
            .anyMatch(closest -> closest.contains(old.track().name()));
  }

  /** Return the names of the holes of the longest row that holds a new one. */
  private static Set<String> longest(List<Spot> spots, boolean certainly) {
    Set<String> longest = new TreeSet<>();
    Set<Spot> seen = new HashSet<>();
    for (Spot start : spots) {
      if (start.isNew() && seen.add(start)) {
        Set<String> row = new TreeSet<>(Set.of(start.track().name()));
        Deque<Spot> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
          Spot spot = open.remove();
          for (Spot next : spots) {
            if (!seen.contains(next) && spot.isCloseTo(next, certainly)) {
              seen.add(next);
              row.add(next.track().name());
              open.add(next);
            }
          }
        }
        longest = row.size() > longest.size() ? row : longest;
      }
    }
    return longest;
  }
}
