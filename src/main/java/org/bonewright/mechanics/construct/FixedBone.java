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
 * @param beside what else holds it
 */
public record FixedBone(
    Shaft shaft,
    Fracture fracture,
    List<MetalPlate> plates,
    List<PlateScrew> screws,
    Optional<BoneStrut> strut,
    Optional<MetalNail> nail,
    Optional<Compression> compression,
    Beside beside) {

  /** Copies the lists. */
  public FixedBone {
    plates = List.copyOf(plates);
    screws = List.copyOf(screws);
  }

  /** Make a bone with nothing else that holds it. */
  public FixedBone(
      Shaft shaft,
      Fracture fracture,
      List<MetalPlate> plates,
      List<PlateScrew> screws,
      Optional<BoneStrut> strut,
      Optional<MetalNail> nail,
      Optional<Compression> compression) {
    this(shaft, fracture, plates, screws, strut, nail, compression, Beside.NOTHING);
  }

  /** Return the same bone with this beside. */
  public FixedBone with(Beside other) {
    return new FixedBone(shaft, fracture, plates, screws, strut, nail, compression, other);
  }

  /** Return the same bone with other screws in its plates. */
  public FixedBone screwed(List<PlateScrew> others) {
    return new FixedBone(shaft, fracture, plates, others, strut, nail, compression, beside);
  }
}
