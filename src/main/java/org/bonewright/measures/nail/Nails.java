package org.bonewright.measures.nail;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Nail;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What every nail measure starts from. */
public final class Nails {

  private Nails() {}

  /** Return the nail that holds the bone at the end of the subject; the last one put in. */
  public static Optional<Nail> nail(Scene scene) {
    List<Nail> nails = scene.construct().of(Nail.class);
    return nails.isEmpty() ? Optional.empty() : Optional.of(nails.get(nails.size() - 1));
  }

  /** Return "none" where there certainly is no nail, else that the implants are not known. */
  static Reading noNail(Scene scene) {
    return scene.certainly("nail-used", "no")
        ? new Reading.None("no nail in place")
        : new Reading.Unknown(scene.read("nail-used").missing());
  }

  static MissingFact boltsMissing(Scene scene, Nail nail) {
    return scene.missing(
        "fixation/" + nail.id() + "/bolts",
        "How many bolts has " + nail.id() + " at each end, at which level and of what diameter?");
  }
}
