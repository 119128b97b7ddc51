package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Taken;

/** Cases and sketches for the tests of forces. */
final class Sketches {

  /** How the measures call the plate of {@link CaseText#plated}. */
  static final String PLATE = "op-1/fixation/plate-1/";

  /** A fixator with two bars and three pins on each side of the line of {@link CaseText#plated}. */
  static final String FIXATOR =
      "{id: 'f', kind: 'external-fixator', frame: 'unilateral', bars: 2, barDistanceMm: 50, barMm: 11,"
          + " pins: [{atMm: 70, direction: 'anteromedial', diameterMm: 5},"
          + " {atMm: 110, direction: 'anteromedial', diameterMm: 5},"
          + " {atMm: 150, direction: 'anteromedial', diameterMm: 5},"
          + " {atMm: 210, direction: 'anteromedial', diameterMm: 5},"
          + " {atMm: 250, direction: 'anteromedial', diameterMm: 5},"
          + " {atMm: 290, direction: 'anteromedial', diameterMm: 5}]}";

  private Sketches() {}

  /** Return the scene of the last subject of a case. */
  static Scene scene(CaseText text) {
    List<Subject> subjects = Subject.of(text.file());
    return new Scene(subjects.get(subjects.size() - 1), Taken.CATALOGUE);
  }

  /** Return the sketch of a case that tells enough for one. */
  static Sketch of(CaseText text) {
    if (SketchMaker.of(scene(text)) instanceof Sketch.Attempt.Ready ready) {
      return ready.sketch();
    }
    throw new IllegalStateException(SketchMaker.of(scene(text)).toString());
  }

  /** Return a tibia with an even gap, bridged by a locking plate with these screws. */
  static CaseText bridged(double gap, String screws) {
    return CaseText.plated()
        .at(
            "/operations/0",
            "{concept: 'relative', compression: {method: 'none'}, reduction: {gapNearMm: "
                + gap
                + ", gapFarMm: "
                + gap
                + ", contactPercent: 0}}")
        .at(
            "/operations/0/fixation/0",
            "{family: 'large-fragment-narrow-locking', material: 'steel-cold-worked', holes: 10,"
                + " lengthMm: 180, thicknessMm: 4.5, widthMm: 13.5, standOffMm: 0,"
                + " place: {zoneBetweenHoles: [5, 6], firstHoleMm: 99}, screws: [{at: "
                + screws
                + ", type: 'locking', diameterMm: 5, cortices: 2, track: 'fresh'}]}");
  }

  /** Return the same with six screws, and a gap of 2 mm. */
  static CaseText bridged() {
    return bridged(2, "[1, 3, 5, 6, 8, 10]");
  }

  /** Return a load that is known exactly. */
  static Loading load(double newton, double bending, double torsion) {
    return new Loading(exactly(newton), exactly(bending), exactly(torsion), Optional.empty(), 0);
  }

  static Dimension exactly(double value) {
    return new Dimension(value, value, false, "test");
  }
}
