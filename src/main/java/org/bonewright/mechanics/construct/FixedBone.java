package org.bonewright.mechanics.construct;

import java.util.List;
import java.util.Optional;

/**
 * A broken bone with all that holds it.
 *
 * @param shaft the bone
 * @param fracture the line between its two fragments
 * @param plates none or several
 * @param screws the screws of the plates
 * @param strut a strut in or beside the canal, if there is one
 * @param nail a nail with its bolts, if there is one
 * @param compression what presses the fragments together before any load, if anything does
 */
public record FixedBone(
    Shaft shaft,
    Fracture fracture,
    List<MetalPlate> plates,
    List<PlateScrew> screws,
    Optional<BoneStrut> strut,
    Optional<MetalNail> nail,
    Optional<Compression> compression) {

  /** Copies the lists. */
  public FixedBone {
    plates = List.copyOf(plates);
    screws = List.copyOf(screws);
  }
}
