package org.bonewright.measures.reuse;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether an old hole is to be rescued by a thicker screw, and whether the bone can take it. */
final class Rescue implements Measure {

  /** What is asked. */
  enum What {
    /** Whether a rescue is planned. */
    PLANNED,
    /** The smallest step in diameter. */
    STEP,
    /** The widest hole for its bone. */
    RATIO,
    /** The thinnest cortex. */
    CORTEX
  }

  private static final String SCREW =
      "a screw in an old hole, thicker than the one before, without cement or nut";
  private static final List<String> INPUTS =
      List.of("operations/fixation/screws/track", "operations/fixation/screws/diameterMm");

  private final What what;

  Rescue(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case PLANNED ->
          of(
              "rescue-screw",
              "An old hole used for a thicker screw",
              Definition.yesOrNo(),
              "yes for " + SCREW);
      case STEP ->
          of(
              "rescue-step",
              "Step up of the rescue screw",
              Definition.signedMillimetres(),
              "diameter of the new screw less that of the one before; the smallest over rescue-screw");
      case RATIO ->
          of(
              "rescue-ratio",
              "Hole of the rescue screw",
              Definition.ratio(),
              "diameter of the screw over the outer diameter of the bone there; the largest over"
                  + " rescue-screw");
      case CORTEX ->
          of(
              "rescue-cortex",
              "Cortex at the rescue screw",
              Definition.millimetres(),
              "thickness of the cortex there; the smallest over rescue-screw");
    };
  }

  private static Definition of(String id, String title, Definition.Domain domain, String formula) {
    return new Definition(id, title, domain, formula, INPUTS, "common practice, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    if (NewScrew.plates(scene).isEmpty()) {
      return what == What.PLANNED && scene.certainly("new-plate", "no")
          ? Reading.word("no", "no new plate")
          : NewScrew.noPlate(scene);
    }
    Optional<MissingFact> untold = NewScrew.untold(scene);
    if (untold.isPresent()) {
      return Reading.unknown(untold.get());
    }
    List<NewScrew> possible =
        NewScrew.all(scene).stream().filter(screw -> isRescue(screw, false)).toList();
    return what == What.PLANNED ? planned(scene, possible) : number(scene, possible);
  }

  private static boolean isRescue(NewScrew screw, boolean certainly) {
    Optional<ScrewRow.Track> said = screw.row().track();
    Bite.Contact contact = screw.bite().contact();
    if (screw.row().augmentation().isPresent()
        || said.equals(Optional.of(ScrewRow.Track.OLD_HOLE))
        || said.equals(Optional.of(ScrewRow.Track.FRESH))) {
      return false;
    }
    if (said.equals(Optional.of(ScrewRow.Track.OLD_HOLE_LARGER))) {
      return true;
    }
    if (contact != Bite.Contact.REUSED) {
      return !certainly && contact == Bite.Contact.UNSURE;
    }
    return screw
        .bite()
        .stepUp()
        .map(step -> certainly ? step.min() > 0 : step.max() > 0)
        .orElse(!certainly);
  }

  private Reading planned(Scene scene, List<NewScrew> possible) {
    if (possible.isEmpty()) {
      return Reading.word("no", "none");
    }
    return possible.stream().anyMatch(screw -> isRescue(screw, true))
        ? Reading.word("yes", possible.get(0).bite().track().name())
        : Reading.words(
            Set.of("yes", "no"), Kind.FACT, "place of old holes not exact", asked(scene, possible));
  }

  private Reading number(Scene scene, List<NewScrew> possible) {
    Extremes found = new Extremes();
    for (NewScrew screw : possible) {
      Optional<Dimension> value = value(scene, screw);
      if (value.isEmpty()) {
        return Reading.unknown(asked(scene, possible));
      }
      found.add(value.get(), isRescue(screw, true));
    }
    Optional<Dimension> reading = what == What.RATIO ? found.most() : found.least();
    return reading
        .map(
            number ->
                Reading.number(
                    number, possible.get(0).bite().track().name(), asked(scene, possible)))
        .orElseGet(() -> new Reading.None("no old hole used for a thicker screw"));
  }

  private Optional<Dimension> value(Scene scene, NewScrew screw) {
    Track track = screw.bite().track();
    return switch (what) {
      case STEP -> isRescue(screw, true) ? screw.bite().stepUp() : Optional.empty();
      case RATIO -> Optional.of(Holes.in(scene).ratio(track));
      default -> scene.ledger().levelOnBone(track).map(level -> scene.bone().cortexAt(level));
    };
  }

  private MissingFact asked(Scene scene, List<NewScrew> possible) {
    String id = possible.get(0).plate().plate().id();
    return switch (what) {
      case PLANNED, STEP ->
          scene.missing(
              "fixation/" + id + "/screws/track",
              "Which screws of "
                  + id
                  + " use an old hole, how thick are they, and how thick was the"
                  + " one before?");
      case RATIO, CORTEX ->
          scene.missingInCase(
              "bone/sections", "How thick are bone and cortex where the old hole is used again?");
    };
  }
}
