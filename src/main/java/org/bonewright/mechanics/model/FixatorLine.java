package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.mechanics.answer.FixatorAnswer;
import org.bonewright.mechanics.construct.BarFixator;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;

/** An external fixator: its bars, and pins that are one with them where they are clamped. */
final class FixatorLine {

  private final List<BeamLine> bars;
  private final List<PinColumn> pins;

  /** Lay a fixator into a frame. */
  FixatorLine(Frame frame, BarFixator fixator, Shaft shaft, BoneLine bone) {
    Vector out = Turned.outward(fixator.azimuth());
    double radius = shaft.section().outer() / 2;
    List<Double> levels = fixator.pins().stream().map(BarFixator.Pin::at).toList();
    this.bars =
        fixator.bars().stream()
            .map(
                bar ->
                    new BeamLine(
                        frame,
                        bar.section(),
                        bar.material(),
                        out.times(radius + bar.distance()),
                        BeamLine.ROUND,
                        levels))
            .toList();
    List<PinColumn> columns = new ArrayList<>();
    for (BarFixator.Pin pin : fixator.pins()) {
      columns.add(PinColumn.of(frame, pin, out, shaft, bone.at(pin.at()), bars.get(0)));
      betweenBars(frame, pin);
    }
    this.pins = List.copyOf(columns);
  }

  private void betweenBars(Frame frame, BarFixator.Pin pin) {
    BeamStiffness shank = PinColumn.stiffness(pin, pin.diameter());
    for (int i = 1; i < bars.size(); i++) {
      Vector from = bars.get(i).point(pin.at());
      Vector to = bars.get(i - 1).point(pin.at());
      frame.link(
          Beams.link(
              bars.get(i).at(pin.at()),
              bars.get(i - 1).at(pin.at()),
              from,
              to,
              BoneLine.ALONG,
              List.of(new Beams.Piece(to.minus(from).length(), shank)),
              List.of()));
    }
  }

  /** Return what it carries. */
  FixatorAnswer answer(Answer answer) {
    return new FixatorAnswer(
        bars.stream().map(bar -> bar.cuts(answer)).toList(),
        pins.stream().map(pin -> pin.demand(answer)).toList());
  }
}
