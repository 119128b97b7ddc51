package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Graft;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether graft is brought to the site from elsewhere. */
final class GraftBroughtIn implements Measure {

  private static final Set<Graft.Kind> FROM_THE_SITE =
      EnumSet.of(Graft.Kind.REAMER_GRAFT, Graft.Kind.DECORTICATION, Graft.Kind.SPACER);

  @Override
  public Definition definition() {
    return new Definition(
        "graft-brought-in",
        "Graft brought in",
        Definition.yesOrNo(),
        "yes when graft, marrow, growth factor or substitute comes from elsewhere, in any stage; what"
            + " reaming or decortication yields on the way does not count",
        List.of("operations/biology/kind"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Biology biology = Biology.of(scene);
    if (!biology.told()) {
      return Reading.unknown(Biology.asked(scene));
    }
    return biology.has(EnumSet.complementOf(EnumSet.copyOf(FROM_THE_SITE)))
        ? Reading.word("yes", "graft from elsewhere")
        : Reading.word("no", "no graft from elsewhere");
  }
}
