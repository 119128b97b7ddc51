package org.bonewright.bench;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bench.BenchFile.Construct;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.section.Material;

/** Builds the lag screws of a bench file, or says what does not fit. */
final class BuiltLagScrews {

  private static final double HEAD_RADIUS = 4;

  private final Construct file;
  private final boolean closed;

  /**
   * Prepare to build.
   *
   * @param closed whether the ends touch, so that something can press them together
   */
  BuiltLagScrews(Construct file, boolean closed) {
    this.file = file;
    this.closed = closed;
  }

  /** Return everything that does not fit. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < file.lagScrews().size(); i++) {
      BenchLagScrew screw = file.lagScrews().get(i);
      String pointer = "/lagScrews/" + i;
      inBone(problems, pointer + "/head/at", screw.head().at());
      inBone(problems, pointer + "/thread/at", screw.thread().at());
      if (screw.head().at() * screw.thread().at() > 0) {
        problems.add(
            Problem.error(
                pointer + "/thread/at",
                "the number " + screw.thread().at(),
                "a level on the other side of the fracture than the head"));
      }
      if (screw.majorDiameter().orElse(screw.coreDiameter()) < screw.coreDiameter()) {
        problems.add(
            Problem.error(pointer + "/majorDiameter", "less than the core", "at least the core"));
      }
      if (screw.preload().orElse(0.0) > 0 && !closed) {
        problems.add(
            Problem.error(
                pointer + "/preload",
                "a preload",
                "a preload only with gap 0 and contact unilateral"));
      }
    }
    return problems;
  }

  private void inBone(List<Problem> problems, String pointer, double at) {
    if (!BuiltScrews.inBone(file, at)) {
      problems.add(
          Problem.error(
              pointer, "the number " + at, "levels within the fragments, outside the gap"));
    }
  }

  /** Return the screws, which fit. */
  List<LaggedScrew> screws() {
    return file.lagScrews().stream().map(BuiltLagScrews::screw).toList();
  }

  private static LaggedScrew screw(BenchLagScrew screw) {
    return new LaggedScrew(
        screw.azimuth().orElse(0.0),
        place(screw.head()),
        place(screw.thread()),
        Material.isotropic(screw.young(), screw.poisson()),
        screw.coreDiameter(),
        screw.majorDiameter().orElse(screw.coreDiameter()),
        screw.pitch().orElse(0.0),
        screw.preload().orElse(0.0),
        screw.headRadius().orElse(HEAD_RADIUS));
  }

  private static LaggedScrew.Place place(BenchLagScrew.Place place) {
    return new LaggedScrew.Place(place.at(), place.out());
  }
}
