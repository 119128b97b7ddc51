package org.bonewright.mechanics.construct;

import java.util.List;
import java.util.Optional;

/**
 * What holds a broken bone beside its plates and what lies in its canal.
 *
 * @param fixator an external fixator, if there is one
 * @param lags lag screws across the fracture
 * @param onlay a strut on the surface of the bone, if there is one
 */
public record Beside(
    Optional<BarFixator> fixator, List<LaggedScrew> lags, Optional<OnlayStrut> onlay) {

  /** Nothing of these. */
  public static final Beside NOTHING = new Beside(Optional.empty(), List.of(), Optional.empty());

  /** Copies the list. */
  public Beside {
    lags = List.copyOf(lags);
  }

  /** Return an external fixator alone. */
  public static Beside of(BarFixator fixator) {
    return new Beside(Optional.of(fixator), List.of(), Optional.empty());
  }

  /** Return lag screws alone. */
  public static Beside of(List<LaggedScrew> lags) {
    return new Beside(Optional.empty(), lags, Optional.empty());
  }

  /** Return a strut on the bone alone. */
  public static Beside of(OnlayStrut onlay) {
    return new Beside(Optional.empty(), List.of(), Optional.of(onlay));
  }
}
