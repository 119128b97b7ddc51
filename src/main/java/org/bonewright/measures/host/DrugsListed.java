package org.bonewright.measures.host;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Host;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a list of drugs that matter for bone is on file. */
final class DrugsListed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "drugs-listed",
        "Drugs that matter for bone listed",
        Definition.yesOrNo(),
        "yes when a list of drugs is on file, be it empty, else no",
        List.of("findings/host/drugs"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    boolean listed = scene.subject().latest(f -> f.host().flatMap(Host::drugs)).isPresent();
    return Reading.words(
        Set.of(listed ? "yes" : "no"), Kind.RECORD, listed ? "a list is on file" : "no list");
  }
}
