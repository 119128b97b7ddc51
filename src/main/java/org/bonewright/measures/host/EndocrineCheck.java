package org.bonewright.measures.host;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether metabolism was looked into: a referral in the plan, or its results on record. */
final class EndocrineCheck implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "endocrine-check",
        "Metabolism looked into",
        Definition.yesOrNo(),
        "yes when the plan refers to an endocrinologist, or vitamin D, calcium, phosphate,"
            + " parathyroid hormone and thyroid stimulating hormone are all on record; else no",
        List.of(
            "plans/endocrineReferral",
            "findings/host/vitaminDNgMl",
            "findings/host/calciumMmolL",
            "findings/host/phosphateMmolL",
            "findings/host/pthPgMl",
            "findings/host/tshMuL"),
        "Brinker et al., J Orthop Trauma 2007, for the screen; five of its values count here");
  }

  @Override
  public Reading take(Scene scene) {
    if (referred(scene)) {
      return word("yes", "referral in the plan");
    }
    long found =
        Stream.<Function<Host, Optional<Quantity>>>of(
                Host::vitaminDNgMl,
                Host::calciumMmolL,
                Host::phosphateMmolL,
                Host::pthPgMl,
                Host::tshMuL)
            .filter(value -> scene.subject().latest(f -> f.host().flatMap(value)).isPresent())
            .count();
    return word(found == 5 ? "yes" : "no", found + " of 5 values on record, no referral");
  }

  private static boolean referred(Scene scene) {
    return scene.subject().plan().flatMap(Plan::endocrineReferral).equals(Optional.of(Answer.YES));
  }

  private static Reading word(String word, String working) {
    SortedSet<String> only = new TreeSet<>(List.of(word));
    return new Reading.Word(only, Kind.RECORD, working, List.of());
  }
}
