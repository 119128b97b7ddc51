package org.bonewright.bone.ledger;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;

/** Makes tracks for tests: 4.5 mm thick, core 3.0, through both cortices, unless changed. */
record Drill(
    Dimension level,
    Optional<Direction> direction,
    double tilt,
    Dimension diameter,
    double core,
    Track.Reach reach,
    boolean mayBeGone) {

  static Drill at(double level, double degrees) {
    return new Drill(
        exactly(level),
        Optional.of(new Direction(((degrees % 360) + 360) % 360)),
        0,
        exactly(4.5),
        3.0,
        Track.Reach.BOTH_CORTICES,
        false);
  }

  static Dimension exactly(double value) {
    return between(value, value);
  }

  static Dimension between(double min, double max) {
    return new Dimension(min, max, false, "test");
  }

  Drill level(double min, double max) {
    return new Drill(between(min, max), direction, tilt, diameter, core, reach, mayBeGone);
  }

  Drill tilted(double degrees) {
    return new Drill(level, direction, degrees, diameter, core, reach, mayBeGone);
  }

  Drill thick(double outer) {
    return thick(outer, outer);
  }

  Drill thick(double min, double max) {
    return new Drill(level, direction, tilt, between(min, max), core, reach, mayBeGone);
  }

  Drill thread(double outer, double coreDiameter) {
    return new Drill(level, direction, tilt, exactly(outer), coreDiameter, reach, mayBeGone);
  }

  Drill reaching(Track.Reach cortices) {
    return new Drill(level, direction, tilt, diameter, core, cortices, mayBeGone);
  }

  Drill fromSomewhere() {
    return new Drill(level, Optional.empty(), tilt, diameter, core, reach, mayBeGone);
  }

  Drill perhapsGone() {
    return new Drill(level, direction, tilt, diameter, core, reach, true);
  }

  Track track() {
    return track("screw");
  }

  Track track(String name) {
    return new Track(
        name,
        0,
        "op-1/plate-1",
        Track.Kind.PLATE_SCREW,
        Optional.of(level),
        direction,
        tilt,
        diameter,
        core,
        reach,
        Optional.empty());
  }

  OldTrack old() {
    return old("old");
  }

  OldTrack old(String name) {
    return new OldTrack(track(name), Optional.of(level), "op-1", Optional.empty(), true, mayBeGone);
  }
}
