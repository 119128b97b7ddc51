package org.bonewright.measures.compression;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Compression;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Whether the gap that compression had to close can be asked for: it is in the file, or still to be
 * measured for a plan. Nobody can tell it years after an operation; what was left tells then.
 */
final class GapBeforeRecorded implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "gap-before-recorded",
        "Gap to close on record",
        Definition.words("yes", "no", "planned"),
        "yes when the gap before compression is stated; planned when it is not, and the operation"
            + " is still to be done; else no",
        List.of("operations/compression/gapBeforeMm"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    boolean stated = scene.fixing().compression().flatMap(Compression::gapBeforeMm).isPresent();
    String word = stated ? "yes" : scene.fixingIsPlanned() ? "planned" : "no";
    return Reading.words(Set.of(word), Kind.RECORD, stated ? "as stated" : "not stated");
  }
}
