package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Injury;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the fracture can shorten or spin on an unlocked nail. */
final class AxiallyUnstable implements Measure {

  private static final double HALF_IN_CONTACT = 50;

  @Override
  public Definition definition() {
    return new Definition(
        "axially-unstable",
        "Can shorten or spin",
        Definition.yesOrNo(),
        "no for a transverse line with at least half of the circumference in contact; yes for every"
            + " other pattern, and for less contact",
        List.of("injury/pattern", "findings/pattern", "contact-percent"),
        "Brumback et al., JBJS Am 1988, for which lines may be left dynamic");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Injury.Pattern> pattern = StatedPattern.of(scene);
    if (pattern.isEmpty()) {
      return Reading.unknown(StatedPattern.missing(scene));
    }
    if (pattern.get() != Injury.Pattern.TRANSVERSE) {
      return Reading.word("yes", Words.of(pattern.get()) + " pattern");
    }
    Reading contact = scene.read("contact-percent");
    if (contact instanceof Reading.Amount share) {
      if (share.min() >= HALF_IN_CONTACT) {
        return Reading.word("no", "transverse, " + share.shown() + " % in contact");
      }
      if (share.max() < HALF_IN_CONTACT) {
        return Reading.word("yes", "transverse, only " + share.shown() + " % in contact");
      }
    }
    return Reading.words(
        Set.of("yes", "no"),
        Kind.FACT,
        "transverse, contact " + contact.shown(),
        contact.missing().toArray(MissingFact[]::new));
  }
}
