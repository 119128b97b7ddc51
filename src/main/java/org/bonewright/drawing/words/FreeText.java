package org.bonewright.drawing.words;

import java.util.List;
import java.util.stream.Collectors;
import org.bonewright.bone.ledger.Corridor;
import org.bonewright.casefile.Direction;

/** Free bone in words. */
public final class FreeText {

  /** What free bone does not mean. */
  public static final String LIMITS =
      "Joints, vessels, soft tissue and the plate's own length are not looked at.";

  private final FreeBone free;
  private final Surfaces surfaces;

  /** Make one for the free bone of a bone as it stands. */
  public FreeText(FreeBone free, Standing standing) {
    this.free = free;
    this.surfaces = standing.surfaces();
  }

  /** Return what is free on one surface: "lateral: 96–148 mm free". */
  public String on(Direction surface) {
    List<Corridor> corridors = free.on(surface);
    return surfaces.name(surface)
        + ": "
        + (corridors.isEmpty() ? "no room free" : levels(corridors) + " mm free");
  }

  /** Return what is free on every surface, in one line. */
  public String line() {
    return Surfaces.all().stream()
        .map(
            surface -> {
              List<Corridor> corridors = free.on(surface);
              return surfaces.name(surface)
                  + " "
                  + (corridors.isEmpty() ? "nowhere" : levels(corridors));
            })
        .collect(Collectors.joining("; "));
  }

  /** Whole mm, on the safe side. */
  private static String levels(List<Corridor> corridors) {
    return corridors.stream()
        .map(c -> (long) Math.ceil(c.from()) + "–" + (long) Math.floor(c.to()))
        .collect(Collectors.joining(", "));
  }
}
