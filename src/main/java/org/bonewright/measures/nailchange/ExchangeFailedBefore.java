package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the operation before was itself an exchange of nails. */
final class ExchangeFailedBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "exchange-failed-before",
        "Exchange of nails before",
        Definition.yesOrNo(),
        "yes when the last operation that was meant to unite the bone exchanged a nail for another",
        List.of(NailRevision.ID),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      return Reading.word("no", "no operation before");
    }
    String id = then.get().operation().id();
    if (then.get().certainly(NailRevision.ID, NailRevision.EXCHANGED)) {
      return Reading.word("yes", id + " exchanged the nail");
    }
    return then.get().possibly(NailRevision.ID, NailRevision.EXCHANGED)
        ? Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "what " + id + " did with the nail is not told",
            then.get().read(NailRevision.ID).missing().toArray(MissingFact[]::new))
        : Reading.word("no", id + " exchanged no nail");
  }
}
