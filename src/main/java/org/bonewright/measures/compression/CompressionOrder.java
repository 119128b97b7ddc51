package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the line was compressed before locking screws stood on both sides of it. */
final class CompressionOrder implements Measure {

  private static final String COMPRESSED_FIRST = "compressed-first";
  private static final String LOCKED_FIRST = "locked-first";

  @Override
  public Definition definition() {
    return new Definition(
        "compression-order",
        "Compressed before locked on both sides",
        Definition.words(COMPRESSED_FIRST, LOCKED_FIRST),
        "compressed first when it is stated that compression came before the first locking screw;"
            + " else, for eccentric screws, by the order of insertion: compressed first when every"
            + " conventional screw was in before locking screws stood on both sides, locked first"
            + " when every one came later; else, for a device or clamp, compressed first when every"
            + " screw of one fragment was in before any of the other; else not known",
        List.of(
            "operations/compression/beforeLocking",
            "operations/fixation/screws/order",
            "compression-method",
            "locked-both-sides"),
        "Gautier and Sommer, Injury 2003, from memory; reading the order of the screws so is our"
            + " convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("locked-both-sides", "no")) {
      return new Reading.None("no locking screws on both sides of the line");
    }
    Optional<List<FragmentScrews>> sides = FragmentScrews.bothSides(scene);
    if (sides.isEmpty()) {
      return FragmentScrews.unknown(scene);
    }
    Optional<Answer> stated = scene.fixing().compression().flatMap(Compression::beforeLocking);
    if (stated.equals(Optional.of(Answer.YES))) {
      return Reading.word(COMPRESSED_FIRST, "as stated");
    }
    Optional<Boolean> first =
        scene.certainly("compression-method", "eccentric-screws")
            ? byScrews(sides.get())
            : scene.certainly("compression-method", "tension-device")
                    || scene.certainly("compression-method", "clamp")
                ? oneSideAfterTheOther(sides.get())
                : Optional.empty();
    return first
        .map(f -> Reading.word(f ? COMPRESSED_FIRST : LOCKED_FIRST, "by the order of the screws"))
        .orElseGet(
            () ->
                Reading.unknown(
                    stated.equals(Optional.of(Answer.NO))
                        ? FragmentScrews.order(scene)
                        : scene.missingOfFixing(
                            "compression/beforeLocking",
                            "Was the line compressed before the first locking screw went in?")));
  }

  private static Optional<Boolean> byScrews(List<FragmentScrews> sides) {
    List<ScrewRow> conventional =
        sides.stream().flatMap(side -> side.conventional().stream()).toList();
    OptionalInt near = earliest(sides.get(0).locking());
    OptionalInt far = earliest(sides.get(1).locking());
    if (conventional.isEmpty() || near.isEmpty() || far.isEmpty() || !ordered(conventional)) {
      return Optional.empty();
    }
    int bothLocked = Math.max(near.getAsInt(), far.getAsInt());
    if (conventional.stream().allMatch(row -> row.order().orElseThrow() < bothLocked)) {
      return Optional.of(true);
    }
    return conventional.stream().allMatch(row -> row.order().orElseThrow() > bothLocked)
        ? Optional.of(false)
        : Optional.empty();
  }

  /** The plate must be loose on one fragment while a device or clamp pulls. */
  private static Optional<Boolean> oneSideAfterTheOther(List<FragmentScrews> sides) {
    List<ScrewRow> near = all(sides.get(0));
    List<ScrewRow> far = all(sides.get(1));
    if (!ordered(near) || !ordered(far)) {
      return Optional.empty();
    }
    boolean apart =
        latest(near) < earliest(far).orElse(0) || latest(far) < earliest(near).orElse(0);
    return apart ? Optional.of(true) : Optional.empty();
  }

  private static List<ScrewRow> all(FragmentScrews side) {
    return Stream.concat(side.conventional().stream(), side.locking().stream()).toList();
  }

  private static boolean ordered(List<ScrewRow> rows) {
    return rows.stream().allMatch(row -> row.order().isPresent());
  }

  /** Return the earliest place in the order; nothing where a row has none. */
  private static OptionalInt earliest(List<ScrewRow> rows) {
    return ordered(rows)
        ? rows.stream().mapToInt(row -> row.order().orElseThrow()).min()
        : OptionalInt.empty();
  }

  private static int latest(List<ScrewRow> rows) {
    return rows.stream().mapToInt(row -> row.order().orElseThrow()).max().orElse(0);
  }
}
