package org.bonewright.mechanics.model;

import java.util.List;
import java.util.Optional;
import org.bonewright.mechanics.frame.Movements;
import org.bonewright.mechanics.frame.Six;

/**
 * What a share of a load does to a fixed bone.
 *
 * @param response how the bone answers then
 * @param movements of every node
 * @param rest how the bone ends rest against each other; empty where they cannot meet
 * @param carried what each point that may change carries beyond what it keeps, as it resists it
 */
record Answer(
    Response response, Movements movements, Optional<Meeting.Rest> rest, List<Six> carried) {

  /** Return the joined bone. */
  Joined joined() {
    return response.reduced().joined();
  }

  /** Return the forces in a link, with what the prestress of a plate takes from them. */
  Six force(int link) {
    Six force = movements.force(link);
    Optional<Prestress.Pull> pull = response.reduced().pull();
    return pull.isPresent() && pull.get().link() == link ? force.minus(pull.get().force()) : force;
  }
}
