package org.bonewright.measures.graft;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What the graft is made of. */
final class GraftMakeup implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "graft-makeup",
        "Make-up of the graft",
        Definition.words("nothing", "substitute", "mixed", "living"),
        "living for autograft, marrow, growth factor, decortication, membrane and vascularised bone;"
            + " substitute for allograft or bone substitute alone; mixed for both. Over every stage;"
            + " a cement spacer and a strut count for nothing here",
        List.of("operations/biology/kind"),
        "Giannoudis et al., Injury 2007, for the distinction");
  }

  @Override
  public Reading take(Scene scene) {
    Biology biology = Biology.of(scene);
    if (!biology.told()) {
      return Reading.unknown(Biology.asked(scene));
    }
    boolean living = biology.has(Biology.LIVING);
    boolean scaffold = biology.has(Biology.SCAFFOLD);
    if (living) {
      return scaffold
          ? Reading.word("mixed", "living graft and substitute")
          : Reading.word("living", "living graft");
    }
    return scaffold
        ? Reading.word("substitute", "substitute or allograft alone")
        : Reading.word("nothing", "no graft");
  }
}
