package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Construct;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Removal;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Bolts taken out of a nail that stays, so that load can close the line.
 *
 * @param nail the nail as it was put in
 * @param nailing the operation that put it in
 * @param taken the bolts that come out; empty entries where the file lists no bolts
 */
record Dynamisation(Nail nail, Operation nailing, List<Bolt> taken) {

  /**
   * Return the dynamisation of a subject: bolts come out of a nail that stays, and no plate, nail
   * or fixator goes in.
   */
  static Optional<Dynamisation> of(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    boolean other =
        steps.stream()
            .flatMap(step -> step.fixation().stream().flatMap(List::stream))
            .anyMatch(Implant::isMain);
    if (other) {
      return Optional.empty();
    }
    return steps.stream()
        .flatMap(step -> step.removed().stream().flatMap(List::stream))
        .filter(removal -> !removal.bolts().isEmpty())
        .flatMap(
            removal -> held(scene, removal.of()).stream().map(h -> of(scene, h, removal.bolts())))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Construct.Held> held(Scene scene, String path) {
    return scene.construct().implants().stream()
        .filter(h -> h.path().equals(path) && h.implant() instanceof Nail)
        .findFirst();
  }

  private static Optional<Dynamisation> of(Scene scene, Construct.Held held, List<Integer> places) {
    return scene.subject().upToHere().stream()
        .filter(operation -> operation.id().equals(held.operation()))
        .findFirst()
        .flatMap(nailing -> asPutIn(nailing, held).map(nail -> of(nail, nailing, places)));
  }

  private static Optional<Nail> asPutIn(Operation nailing, Construct.Held held) {
    return nailing.fixation().stream()
        .flatMap(List::stream)
        .filter(implant -> implant.id().equals(held.implant().id()))
        .filter(Nail.class::isInstance)
        .map(Nail.class::cast)
        .findFirst();
  }

  private static Dynamisation of(Nail nail, Operation nailing, List<Integer> places) {
    List<Bolt> all = nail.bolts().orElse(List.of());
    List<Bolt> taken =
        places.stream().filter(place -> place <= all.size()).map(p -> all.get(p - 1)).toList();
    return new Dynamisation(nail, nailing, taken);
  }

  /** Return the reading where bolts are taken out of no nail, or of one across a united line. */
  static Optional<Reading> noneHere(Scene scene) {
    if (of(scene).isEmpty()) {
      return Optional.of(
          untold(scene)
              .<Reading>map(Reading::unknown)
              .orElseGet(() -> new Reading.None("no bolt taken out of a nail that stays")));
    }
    if (scene.certainly("still-broken", "no")) {
      return Optional.of(new Reading.None("the bone had united"));
    }
    return scene.certainly("still-broken", "yes")
        ? Optional.empty()
        : Optional.of(new Reading.Unknown(scene.read("still-broken").missing()));
  }

  /** Return what is to be asked where bolts come out of an implant that no operation tells. */
  private static Optional<MissingFact> untold(Scene scene) {
    List<String> nailed =
        scene.subject().steps().stream()
            .flatMap(step -> step.removed().stream().flatMap(List::stream))
            .filter(removal -> !removal.bolts().isEmpty())
            .map(Removal::of)
            .toList();
    return scene.subject().upToHere().stream()
        .filter(operation -> operation.fixation().isEmpty())
        .map(Operation::id)
        .filter(id -> nailed.stream().anyMatch(path -> path.startsWith(id + "/")))
        .map(id -> scene.missingInCase(id + "/fixation", "Which nail was put in at " + id + "?"))
        .findFirst();
  }

  /** Return the callus on the last films before, where they tell of it. */
  static Optional<Film.Callus> callus(Scene scene) {
    return scene.subject().findings().stream()
        .flatMap(finding -> finding.films().stream())
        .flatMap(film -> film.callus().stream())
        .findFirst();
  }

  /** Return whether callus holds the length, where the last films tell of it. */
  static Optional<Boolean> held(Scene scene) {
    return callus(scene).map(c -> c == Film.Callus.BRIDGING || c == Film.Callus.ABUNDANT);
  }

  static MissingFact callusMissing(Scene scene) {
    return scene.missingInCase("findings/films/callus", "How much callus do the last films show?");
  }

  /** Return the day of the subject; of a plan, that of the last findings. */
  static Optional<Quantity> day(Scene scene) {
    return scene.subject().planned()
        ? scene.subject().findings().stream().findFirst().map(Finding::day)
        : scene.operation().day();
  }
}
