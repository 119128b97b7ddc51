package org.bonewright.measures.compression;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether locking screws stand on both sides of the line. */
final class LockedBothSides implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "locked-both-sides",
        "Locking screws on both sides of the line",
        Definition.yesOrNo(),
        "yes when the longest plate holds at least one locking screw in each main fragment",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("plate-used", "no")) {
      return Reading.word("no", "no plate in place");
    }
    if (FragmentScrews.certainlyWithout(scene, true)) {
      return Reading.word("no", "no locking screw");
    }
    return FragmentScrews.bothSides(scene)
        .map(
            sides ->
                sides.stream().noneMatch(side -> side.locking().isEmpty())
                    ? Reading.word("yes", "locking screws near and far")
                    : Reading.word("no", "locking screws on one side at most"))
        .orElseGet(() -> FragmentScrews.unknown(scene));
  }
}
