package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew;

/**
 * How much of a load pressed screws bear until they are pulled out. The load is raised; patches
 * tilt, slip and lift on the way; when the pull across the whole connection of a screw reaches what
 * its thread bears, the screw is out. Then the load is raised anew on what is left, whose hole is
 * empty there, and so on until the rest cannot hold. Threads of locked screws are not looked at:
 * locked screws give way together (see {@link org.bonewright.mechanics.hold.HoldOut#group}).
 */
public final class HoldOutOfConstruct {

  /** What bears so many times the load counts as not pulled out by it. */
  private static final double LARGEST = 64;

  private static final double LARGER = 4;

  private HoldOutOfConstruct() {}

  /**
   * Raise a load until nothing holds.
   *
   * @param load its direction; shares are counted of its size
   * @return empty where no screw is pressed, the strength of the bone is not given, or the model
   *     has no answer for the load
   */
  public static Optional<ConstructHoldOut> under(FixedBone fixed, Load load) {
    List<ConstructHoldOut.Pulled> pulled = new ArrayList<>();
    FixedBone left = fixed;
    double most = 0;
    while (true) {
      Optional<Stop> stop = raise(left, load);
      if (stop.isEmpty()) {
        break;
      }
      most = Math.max(most, stop.get().share());
      if (stop.get().screw() < 0) {
        break;
      }
      PlateScrew out = left.screws().get(stop.get().screw());
      pulled.add(new ConstructHoldOut.Pulled(out.plate(), out.at(), stop.get().share()));
      left = without(left, stop.get().screw());
    }
    if (pulled.isEmpty() && most == 0) {
      return Optional.empty();
    }
    OptionalDouble first =
        pulled.stream().mapToDouble(ConstructHoldOut.Pulled::loadShare).findFirst();
    boolean endless = most >= LARGEST;
    double next = pulled.size() > 1 ? pulled.get(1).loadShare() : most;
    boolean unzips =
        first.isPresent()
            && (next < first.getAsDouble() || (pulled.size() == 1 && next == first.getAsDouble()));
    return Optional.of(
        new ConstructHoldOut(
            first, endless ? OptionalDouble.empty() : OptionalDouble.of(most), unzips, pulled));
  }

  /**
   * Where raising the load came to an end.
   *
   * @param share of the load
   * @param screw index of the screw that was pulled out; −1 if none was
   */
  private record Stop(double share, int screw) {}

  /** Return where it ended; empty where the model has no answer or nothing is watched. */
  private static Optional<Stop> raise(FixedBone left, Load load) {
    MechanicalModel model = new MechanicalModel(left);
    Optional<LoadPath> path = model.watched().filter(LoadPath::watches);
    if (path.isEmpty() || !(model.under(load) instanceof Outcome.Answered)) {
      return Optional.empty();
    }
    for (double size = 1; size <= LARGEST; size *= LARGER) {
      Optional<LoadPath.End> end = path.get().raise(load.times(size));
      if (end.isEmpty()) {
        break; // bone ends found no rest under so large a load, and nothing was pulled out before
      }
      LoadPath.End there = end.get();
      if (there.reached() < 1) {
        LoadPath.Event last = there.events().get(there.events().size() - 1);
        int screw = last.screw().orElse(-1);
        return Optional.of(new Stop(there.reached() * size, screw));
      }
    }
    return Optional.of(new Stop(LARGEST, -1));
  }

  private static FixedBone without(FixedBone bone, int screw) {
    List<PlateScrew> screws = new ArrayList<>(bone.screws());
    screws.remove(screw);
    return bone.screwed(screws);
  }
}
