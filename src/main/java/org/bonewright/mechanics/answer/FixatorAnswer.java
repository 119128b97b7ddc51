package org.bonewright.mechanics.answer;

import java.util.List;

/**
 * What an external fixator carries under one load.
 *
 * @param bars what each bar carries at each pin and at the line, the nearest bar first
 * @param pins what each pin carries, in the order of the fixator
 */
public record FixatorAnswer(List<List<TubeCut>> bars, List<PinDemand> pins) {

  /** Copies the lists. */
  public FixatorAnswer {
    bars = List.copyOf(bars);
    pins = List.copyOf(pins);
  }
}
