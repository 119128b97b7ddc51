package org.bonewright.casefile.reading;

import org.bonewright.casefile.Direction;
import org.jspecify.annotations.Nullable;

/** A direction around the bone: degrees within one turn, or the word for a surface. */
final class DirectionShape implements Shape {

  private final WordShape words = WordShape.of(Direction.Named.class);

  @Override
  public @Nullable Object read(Spot spot) {
    if (spot.part() instanceof Part.Figure figure) {
      boolean withinTurn = figure.value() >= 0 && figure.value() < 360;
      return withinTurn ? new Direction(figure.value()) : spot.refuse(allowed());
    }
    if (spot.part() instanceof Part.Text) {
      return words.read(spot) instanceof Direction.Named named ? named.direction() : null;
    }
    return spot.refuse(allowed());
  }

  @Override
  public String allowed() {
    return "degrees from 0 to below 360, or " + words.allowed();
  }
}
