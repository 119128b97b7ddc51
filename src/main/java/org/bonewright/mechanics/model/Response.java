package org.bonewright.mechanics.model;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Loads;
import org.bonewright.mechanics.frame.Movements;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.SixSquare;
import org.bonewright.mechanics.frame.Vector;

/**
 * How a joined bone answers a share of a load while its patches stay in one state: linear but for
 * the ends of the bone, which may meet.
 */
final class Response {

  private final FixedBone fixed;
  private final Joined joined;
  private final Map<Integer, PatchStand> stands;
  private final Optional<Meeting> meeting;
  private final Optional<Prestress.Pull> pull;

  /**
   * Prepare the answers.
   *
   * @param stands how the patches stand
   * @param prestress what the plate is set under before any load
   */
  Response(FixedBone fixed, Joined joined, Map<Integer, PatchStand> stands, Prestress prestress) {
    this.fixed = fixed;
    this.joined = joined;
    this.stands = Map.copyOf(stands);
    this.pull = prestress.on(joined);
    this.meeting = meeting(fixed, joined);
  }

  private static Optional<Meeting> meeting(FixedBone fixed, Joined joined) {
    if (!(fixed.fracture().filling() instanceof Filling.Touching touching)) {
      return Optional.empty();
    }
    SixSquare.Maker give = new SixSquare.Maker();
    for (int i = 0; i < SixSquare.SIZE; i++) {
      Loads unit = joined.frame().loads().pair(joined.ends(), Six.unit(i));
      Six moved = joined.frame().under(unit).across(joined.ends());
      for (int j = 0; j < SixSquare.SIZE; j++) {
        give.add(j, i, moved.get(j));
      }
    }
    BoneEnds ends =
        new BoneEnds(
            fixed.shaft().section(), fixed.shaft().material().young(), fixed.fracture().gap());
    return Optional.of(new Meeting(ends, touching.friction(), give.make()));
  }

  /**
   * What a share of a load does.
   *
   * @param movements of every node
   * @param rest how the bone ends rest against each other; empty where they cannot meet
   */
  record Answer(Movements movements, Optional<Meeting.Rest> rest) {}

  /**
   * Return what a share of a load does.
   *
   * @return empty if the bone ends found no rest
   */
  Optional<Answer> to(Load load, double share) {
    Movements free = joined.frame().under(loads(load, share));
    if (meeting.isEmpty()) {
      return Optional.of(new Answer(free, Optional.empty()));
    }
    return meeting
        .get()
        .rest(free.across(joined.ends()))
        .map(
            rest ->
                new Answer(
                    joined.frame().under(loads(load, share).pair(joined.ends(), rest.push())),
                    Optional.of(rest)));
  }

  private Loads loads(Load load, double share) {
    Loads loads = joined.frame().loads();
    double reach = joined.bone().reach();
    Load part = load.times(share);
    loads.add(
        joined.bone().loaded(),
        new Vector(part.shearX(), part.shearY(), part.axial()),
        new Vector(
            part.bendingX() + reach * part.shearY(),
            part.bendingY() - reach * part.shearX(),
            part.torque()));
    stands.forEach((screw, stand) -> loads.pair(patchLink(screw), stand.kept().times(-1)));
    pull.ifPresent(p -> loads.pair(p.link(), p.force()));
    return loads;
  }

  private Link patchLink(int screw) {
    Link link = joined.patchLinks().get(screw);
    if (link == null) {
      throw new IllegalStateException("no patch at screw " + screw);
    }
    return link;
  }

  /** Return what each patch that touches carries: forces as it resists them. */
  Map<Integer, Six> patches(Answer answer) {
    Map<Integer, Six> carried = new HashMap<>();
    joined
        .patches()
        .forEach(
            (screw, link) -> {
              if (link.isPresent()) {
                carried.put(screw, answer.movements().force(link.getAsInt()));
              }
            });
    return carried;
  }

  /** Return the joined bone. */
  Joined joined() {
    return joined;
  }

  /** Return the forces in a link, with what the prestress of a plate takes from them. */
  Six force(Answer answer, int link) {
    Six force = answer.movements().force(link);
    return pull.isPresent() && pull.get().link() == link ? force.minus(pull.get().force()) : force;
  }

  /** Return the fixed bone. */
  FixedBone fixed() {
    return fixed;
  }
}
