package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.List;
import org.bonewright.casefile.Graft;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether cancellous graft is brought: from a crest, a metaphysis or by the reamer. */
final class CancellousGraft implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "cancellous-graft",
        "Cancellous graft",
        Definition.yesOrNo(),
        "yes when cancellous autograft or what the reamer gathered is used, in any stage",
        List.of("operations/biology/kind"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Biology biology = Biology.of(scene);
    if (!biology.told()) {
      return Reading.unknown(Biology.asked(scene));
    }
    boolean cancellous =
        biology.has(EnumSet.of(Graft.Kind.AUTOGRAFT_CANCELLOUS, Graft.Kind.REAMER_GRAFT));
    return cancellous
        ? Reading.word("yes", "cancellous autograft or reamer graft")
        : Reading.word("no", "no cancellous graft");
  }
}
