package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a fragment was drawn to the plate before it was locked. */
final class FragmentScrewOrder implements Measure {

  private static final String PULLED_FIRST = "pulled-first";
  private static final String LOCKED_FIRST = "locked-first";

  @Override
  public Definition definition() {
    return new Definition(
        "fragment-screw-order",
        "Order of screws within a fragment",
        Definition.words(PULLED_FIRST, LOCKED_FIRST),
        "locked first when, in a fragment that holds both kinds, a locking screw was in before a"
            + " conventional one; pulled first when every conventional screw came before every"
            + " locking one in each such fragment; two kinds at the same place of the order leave it"
            + " open",
        List.of("operations/fixation/screws/order", "mixed-fragment"),
        "Doornink et al., J Trauma 2010, for the order");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("mixed-fragment", "no")) {
      return new Reading.None("no fragment holds both kinds of screw");
    }
    Optional<List<FragmentScrews>> sides = FragmentScrews.bothSides(scene);
    if (sides.isEmpty()) {
      return FragmentScrews.unknown(scene);
    }
    List<FragmentScrews> mixed = sides.get().stream().filter(FragmentScrews::mixed).toList();
    if (mixed.stream().anyMatch(FragmentScrewOrder::lockedFirst)) {
      return Reading.word(LOCKED_FIRST, "a locking screw came before a conventional one");
    }
    return mixed.stream().allMatch(FragmentScrewOrder::pulledFirst)
        ? Reading.word(PULLED_FIRST, "every conventional screw came first")
        : Reading.unknown(FragmentScrews.order(scene));
  }

  private static boolean lockedFirst(FragmentScrews side) {
    return side.locking().stream()
        .anyMatch(locking -> side.conventional().stream().anyMatch(row -> before(locking, row)));
  }

  private static boolean pulledFirst(FragmentScrews side) {
    return side.locking().stream()
        .allMatch(locking -> side.conventional().stream().allMatch(row -> before(row, locking)));
  }

  /** Return whether one row certainly went in before the other. */
  private static boolean before(ScrewRow one, ScrewRow other) {
    return one.order().isPresent()
        && other.order().isPresent()
        && one.order().get() < other.order().get();
  }
}
