package org.bonewright.measures.compression;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether one main fragment is held by conventional and locking screws together. */
final class MixedFragment implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "mixed-fragment",
        "Both kinds of screw in one fragment",
        Definition.yesOrNo(),
        "yes when the longest plate holds at least one conventional and one locking screw on the"
            + " same side of the zone",
        List.of("operations/fixation/screws", "operations/fixation/place"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("plate-used", "no")) {
      return Reading.word("no", "no plate in place");
    }
    if (FragmentScrews.certainlyWithout(scene, true)
        || FragmentScrews.certainlyWithout(scene, false)) {
      return Reading.word("no", "one kind of screw only");
    }
    return FragmentScrews.bothSides(scene)
        .map(
            sides ->
                sides.stream().anyMatch(FragmentScrews::mixed)
                    ? Reading.word("yes", "both kinds in one fragment")
                    : Reading.word("no", "one kind in each fragment"))
        .orElseGet(() -> FragmentScrews.unknown(scene));
  }
}
