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
 * @param fixator an external fixator, if there is one
 */
public record FixedBone(
    Shaft shaft,
    Fracture fracture,
    List<MetalPlate> plates,
    List<PlateScrew> screws,
    Optional<BoneStrut> strut,
    Optional<MetalNail> nail,
    Optional<Compression> compression,
    Optional<BarFixator> fixator) {

  /** Copies the lists. */
  public FixedBone {
    plates = List.copyOf(plates);
    screws = List.copyOf(screws);
  }

  /** Make a bone that is fixed from within only. */
  public FixedBone(
      Shaft shaft,
      Fracture fracture,
      List<MetalPlate> plates,
      List<PlateScrew> screws,
      Optional<BoneStrut> strut,
      Optional<MetalNail> nail,
      Optional<Compression> compression) {
    this(shaft, fracture, plates, screws, strut, nail, compression, Optional.empty());
  }

  /** Return the same bone with an external fixator as well. */
  public FixedBone with(BarFixator outside) {
    return new FixedBone(
        shaft, fracture, plates, screws, strut, nail, compression, Optional.of(outside));
  }
}
