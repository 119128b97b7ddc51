package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Injury;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether there are two separate lines with an intact piece between. */
final class TwoLinesApart implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "two-lines-apart",
        "Two lines with an intact piece between",
        Definition.yesOrNo(),
        "yes for a segmental fracture, no for every other pattern",
        List.of("findings/pattern", "injury/pattern"),
        "usual classification of shaft fractures");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Injury.Pattern> pattern = StatedPattern.of(scene);
    if (pattern.isEmpty()) {
      return Reading.unknown(StatedPattern.missing(scene));
    }
    return Reading.word(
        pattern.get() == Injury.Pattern.SEGMENTAL ? "yes" : "no", Words.of(pattern.get()));
  }
}
