package org.bonewright.measures.hold;

import java.util.List;
import java.util.function.Predicate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a side of the zone is held in one manner: by conventional screws, or locked only. */
final class SideHeldBy implements Measure {

  private final String id;
  private final String title;
  private final Predicate<ScrewHold> manner;
  private final boolean lockedOnly;

  private SideHeldBy(String id, String title, Predicate<ScrewHold> manner, boolean lockedOnly) {
    this.id = id;
    this.title = title;
    this.manner = manner;
    this.lockedOnly = lockedOnly;
  }

  /** Return the measure: does a side hold a conventional screw, or none at all? */
  static Measure conventional() {
    return new SideHeldBy(
        "conventional-side",
        "A side held by conventional screws",
        hold -> hold.conventional() || !hold.locking(),
        false);
  }

  /** Return the measure: is a side held by locking screws alone? */
  static Measure lockedOnly() {
    return new SideHeldBy(
        "locked-only-side",
        "A side held by locking screws alone",
        hold -> hold.locking() && !hold.conventional(),
        true);
  }

  @Override
  public Definition definition() {
    return new Definition(
        id,
        title,
        Definition.yesOrNo(),
        "yes when at least one side of the zone is so held by plate screws; a side without any"
            + " screw counts as conventional. Where the record gives a number of cortices and not the"
            + " holes, the make of the plate tells, if it takes conventional screws only",
        List.of(
            "operations/fixation/screws",
            "operations/fixation/place",
            "operations/fixation/fewestCortices",
            "operations/fixation/family"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (StatedHold.in(scene).filter(StatedHold::conventional).isPresent()) {
      return Reading.word(lockedOnly ? "no" : "yes", "a plate for conventional screws");
    }
    return ScrewHold.ask(
        scene,
        both -> both.stream().anyMatch(manner),
        title.toLowerCase(java.util.Locale.ROOT),
        "no such side");
  }
}
