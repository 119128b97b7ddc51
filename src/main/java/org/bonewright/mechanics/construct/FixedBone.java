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
 * @param lags lag screws across the fracture
 * @param onlay a strut on the surface of the bone, if there is one
 */
public record FixedBone(
    Shaft shaft,
    Fracture fracture,
    List<MetalPlate> plates,
    List<PlateScrew> screws,
    Optional<BoneStrut> strut,
    Optional<MetalNail> nail,
    Optional<Compression> compression,
    Optional<BarFixator> fixator,
    List<LaggedScrew> lags,
    Optional<OnlayStrut> onlay) {

  /** Copies the lists. */
  public FixedBone {
    plates = List.copyOf(plates);
    screws = List.copyOf(screws);
    lags = List.copyOf(lags);
  }

  /** Make a bone without an external fixator, lag screws and a strut on it. */
  public FixedBone(
      Shaft shaft,
      Fracture fracture,
      List<MetalPlate> plates,
      List<PlateScrew> screws,
      Optional<BoneStrut> strut,
      Optional<MetalNail> nail,
      Optional<Compression> compression) {
    this(
        shaft,
        fracture,
        plates,
        screws,
        strut,
        nail,
        compression,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  /** Return the same bone with an external fixator as well. */
  public FixedBone with(BarFixator outside) {
    return new FixedBone(
        shaft,
        fracture,
        plates,
        screws,
        strut,
        nail,
        compression,
        Optional.of(outside),
        lags,
        onlay);
  }

  /** Return the same bone with these lag screws. */
  public FixedBone with(List<LaggedScrew> lagged) {
    return new FixedBone(
        shaft, fracture, plates, screws, strut, nail, compression, fixator, lagged, onlay);
  }

  /** Return the same bone with other screws in its plates. */
  public FixedBone screwed(List<PlateScrew> others) {
    return new FixedBone(
        shaft, fracture, plates, others, strut, nail, compression, fixator, lags, onlay);
  }

  /** Return the same bone with a strut on its surface. */
  public FixedBone with(OnlayStrut outside) {
    return new FixedBone(
        shaft,
        fracture,
        plates,
        screws,
        strut,
        nail,
        compression,
        fixator,
        lags,
        Optional.of(outside));
  }
}
