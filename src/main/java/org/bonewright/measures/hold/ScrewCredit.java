package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * What one plate screw counts for: one credit for each cortex in which at least nine tenths of its
 * thread lie in bone that no old track has taken, half a credit from a half, none below; none for
 * the same hole used again for the same size, none for a screw that was stripped or has failed
 * since. A hole used again for a screw thicker by a millimetre counts in full while it takes no
 * more than three tenths of the bone and the cortex is 3 mm or more. Each wall of a strut that it
 * crosses adds one, two at the most. All of this is our convention; the direction of each rule is
 * established.
 *
 * <p>How many cortices it crosses tells {@link ScrewCortices}.
 */
final class ScrewCredit {

  private static final Dimension ZERO = new Dimension(0, 0, false, "");
  private static final double RESCUE_STEP = 1.0;
  private static final double RESCUE_RATIO = 0.30;
  private static final double RESCUE_CORTEX = 3;

  private final Scene scene;
  private final PlacedPlate plate;
  private final int hole;
  private final ScrewRow row;
  private final List<MissingFact> missing = new ArrayList<>();
  private final Dimension credit;
  private Dimension lost = ZERO;

  ScrewCredit(Scene scene, PlacedPlate plate, int hole, ScrewRow row) {
    this.scene = scene;
    this.plate = plate;
    this.hole = hole;
    this.row = row;
    this.credit = counted();
  }

  /** Return the credits, 0 to 4. */
  Dimension credit() {
    return credit;
  }

  /** Return the cortices that it crosses without holding in them, for the sake of old holes. */
  Dimension lost() {
    return lost;
  }

  /** Return what would make the credits exact. */
  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  private Dimension counted() {
    if (row.state().equals(Optional.of(ScrewRow.State.STRIPPED)) || failedSince()) {
      return ZERO;
    }
    Dimension walls = new StrutWalls(scene).crossedBy(plate, hole);
    if (walls.min() < walls.max()) {
      missing.add(
          scene.missing(
              "fixation/" + plate.plate().id() + "/place",
              "Which screws of " + plate.plate().id() + " pass through the strut?"));
    }
    return inBone().plus(walls).because("");
  }

  private Dimension inBone() {
    Dimension cortices = cortices();
    Optional<Bite> found = scene.bite(plate.plate(), hole);
    if (found.isEmpty()) {
      return cortices;
    }
    Bite bite = found.get();
    Dimension near = credit(bite, bite.near());
    Dimension far = bite.far().map(share -> credit(bite, share)).orElse(ZERO);
    double min = near.min() * Math.min(1, cortices.min());
    double max = near.max() * Math.min(1, cortices.max());
    min += far.min() * Math.max(0, cortices.min() - 1);
    max += far.max() * Math.max(0, cortices.max() - 1);
    lost =
        new Dimension(
            (1 - near.max()) * Math.min(1, cortices.min())
                + (1 - far.max()) * Math.max(0, cortices.min() - 1),
            (1 - near.min()) * Math.min(1, cortices.max())
                + (1 - far.min()) * Math.max(0, cortices.max() - 1),
            false,
            "");
    if (near.min() < near.max() || far.min() < far.max()) {
      missing.add(
          scene.missing(
              "fixation/" + plate.plate().id() + "/screws/track",
              "Do the screws of "
                  + plate.plate().id()
                  + " bite into fresh bone or into old screw holes?"));
    }
    return new Dimension(
        min, max, cortices.assumed() || near.min() < near.max() || far.min() < far.max(), "");
  }

  private Dimension cortices() {
    Dimension crossed = ScrewCortices.of(row);
    if (crossed.min() < crossed.max()) {
      missing.add(
          scene.missing(
              "fixation/" + plate.plate().id() + "/screws/cortices",
              "Do the "
                  + (row.type() == ScrewRow.Type.LOCKING ? "locking " : "")
                  + "screws of "
                  + plate.plate().id()
                  + " cross one cortex or both?"));
    }
    return crossed;
  }

  private Dimension credit(Bite bite, Dimension share) {
    if (bite.contact() == Bite.Contact.REUSED) {
      return reused(bite, share);
    }
    Dimension byShare = new Dimension(credit(share.min()), credit(share.max()), false, "");
    return bite.contact() == Bite.Contact.UNSURE && bite.stepUp().isPresent()
        ? eitherOf(byShare, reused(bite, share))
        : byShare;
  }

  private static Dimension eitherOf(Dimension one, Dimension other) {
    return Dimension.assumed(
        Math.min(one.min(), other.min()), Math.max(one.max(), other.max()), "");
  }

  private Dimension reused(Bite bite, Dimension share) {
    boolean statedLarger = row.track().equals(Optional.of(ScrewRow.Track.OLD_HOLE_LARGER));
    if (row.track().equals(Optional.of(ScrewRow.Track.OLD_HOLE))) {
      return ZERO;
    }
    if (bite.stepUp().isEmpty()) {
      return statedLarger ? new Dimension(1, 1, false, "") : ZERO;
    }
    Dimension step = bite.stepUp().get();
    if (statedLarger && step.max() <= 0) {
      return ZERO;
    }
    boolean rescued = step.min() >= RESCUE_STEP && boneCertainlyTakesIt(bite);
    boolean maybeRescued = step.max() >= RESCUE_STEP && boneMayTakeIt(bite);
    double min = rescued ? 1 : credit(share.min());
    double max = maybeRescued ? 1 : credit(share.max());
    return new Dimension(Math.min(min, max), max, min < max, "");
  }

  private boolean boneCertainlyTakesIt(Bite bite) {
    Dimension outer = outer(bite);
    return bite.track().diameter().max() / outer.min() <= RESCUE_RATIO
        && cortex(bite).map(wall -> wall.min() >= RESCUE_CORTEX).orElse(false);
  }

  private boolean boneMayTakeIt(Bite bite) {
    Dimension outer = outer(bite);
    return bite.track().diameter().min() / outer.max() <= RESCUE_RATIO
        && cortex(bite).map(wall -> wall.max() >= RESCUE_CORTEX).orElse(true);
  }

  private Dimension outer(Bite bite) {
    return scene.bone().outerAt(scene.ledger().levelOnBone(bite.track()));
  }

  private Optional<Dimension> cortex(Bite bite) {
    return scene.ledger().levelOnBone(bite.track()).map(scene.bone()::cortexAt);
  }

  private static double credit(double share) {
    return share >= 0.9 ? 1 : share >= 0.5 ? 0.5 : 0;
  }

  /** A screw of a plate left in place that was seen loose or broken before this subject. */
  private boolean failedSince() {
    boolean retained = scene.before(plate.plate()).size() < scene.subject().upToHere().size() - 1;
    return retained
        && row.state().map(state -> state != ScrewRow.State.SOUND).orElse(false)
        && scene.subject().knowsState(row.stateDay());
  }
}
