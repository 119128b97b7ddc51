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

  private SideHeldBy(String id, String title, Predicate<ScrewHold> manner) {
    this.id = id;
    this.title = title;
    this.manner = manner;
  }

  /** Return the measure: does a side hold a conventional screw, or none at all? */
  static Measure conventional() {
    return new SideHeldBy(
        "conventional-side",
        "A side held by conventional screws",
        hold -> hold.conventional() || !hold.locking());
  }

  /** Return the measure: is a side held by locking screws alone? */
  static Measure lockedOnly() {
    return new SideHeldBy(
        "locked-only-side",
        "A side held by locking screws alone",
        hold -> hold.locking() && !hold.conventional());
  }

  @Override
  public Definition definition() {
    return new Definition(
        id,
        title,
        Definition.yesOrNo(),
        "yes when at least one side of the zone is so held by plate screws; a side without any"
            + " screw counts as conventional",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return ScrewHold.ask(
        scene,
        both -> both.stream().anyMatch(manner),
        title.toLowerCase(java.util.Locale.ROOT),
        "no such side");
  }
}
