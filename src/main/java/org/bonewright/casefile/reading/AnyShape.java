package org.bonewright.casefile.reading;

/** Anything at all, left as it is. */
final class AnyShape implements Shape {

  @Override
  public Object read(Spot spot) {
    return spot.part();
  }

  @Override
  public String allowed() {
    return "anything";
  }
}
