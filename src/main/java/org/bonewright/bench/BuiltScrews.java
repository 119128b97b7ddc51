package org.bonewright.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.bench.BenchFile.Construct;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.section.Material;

/** Puts the screws of a bench file into the holes of its plates, or says what does not fit. */
final class BuiltScrews {

  private static final double PATCH_RADIUS = 5;
  private static final double PLATE_ON_BONE = 0.3;
  private static final double SAME_LEVEL = 1e-6;

  private final Construct file;
  private final List<BenchPlate> plates;
  private final List<Problem> problems = new ArrayList<>();

  BuiltScrews(Construct file, List<BenchPlate> plates) {
    this.file = file;
    this.plates = plates;
  }

  /** Return everything that does not fit, once the screws were asked for. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  private void refuse(String pointer, String found, String allowed) {
    problems.add(Problem.error(pointer, found, allowed));
  }

  /** Return the screws; those that do not fit are left out and told. */
  List<PlateScrew> screws() {
    List<PlateScrew> screws = new ArrayList<>();
    Set<String> filled = new HashSet<>();
    for (int i = 0; i < file.screws().size(); i++) {
      BenchScrew kind = file.screws().get(i);
      if (kind.at().isEmpty()) {
        for (int plate = 0; plate < plates.size(); plate++) {
          if (kind.plate().isEmpty() || kind.plate().get() == plate) {
            for (double at : plates.get(plate).holes()) {
              add(screws, filled, kind, i, plate, at);
            }
          }
        }
      }
      for (int k = 0; k < kind.at().size(); k++) {
        double at = kind.at().get(k);
        List<Integer> on = platesWithHole(kind, at);
        String place = "/screws/" + i + "/at/" + k;
        if (on.isEmpty()) {
          refuse(place, "the number " + at, "the level of a hole of the plate");
        } else if (on.size() > 1) {
          refuse(place, "a level at which " + on.size() + " plates have a hole", "name the plate");
        } else {
          add(
              screws,
              filled,
              kind,
              i,
              on.get(0),
              plates.get(on.get(0)).holes().stream()
                  .filter(hole -> Math.abs(hole - at) < SAME_LEVEL)
                  .findFirst()
                  .orElse(at));
        }
      }
    }
    return screws;
  }

  private List<Integer> platesWithHole(BenchScrew kind, double at) {
    List<Integer> on = new ArrayList<>();
    for (int plate = 0; plate < plates.size(); plate++) {
      boolean named = kind.plate().map(Integer.valueOf(plate)::equals).orElse(true);
      if (named
          && plates.get(plate).holes().stream().anyMatch(h -> Math.abs(h - at) < SAME_LEVEL)) {
        on.add(plate);
      }
    }
    return on;
  }

  private void add(
      List<PlateScrew> screws,
      Set<String> filled,
      BenchScrew kind,
      int index,
      int plate,
      double at) {
    String place = "/screws/" + index + "/at";
    if (!filled.add(plate + " " + at)) {
      refuse(place, "two screws in the hole at " + at, "one screw in each hole");
    }
    if (!inBone(file, at)) {
      refuse(place, "a screw at " + at, "levels within the fragments, outside the gap");
      return;
    }
    double major = kind.majorDiameter().orElse(kind.coreDiameter());
    if (major < kind.coreDiameter()) {
      refuse("/screws/" + index + "/majorDiameter", "less than the core", "at least the core");
    }
    boolean locking = kind.type() == BenchScrew.Type.LOCKING;
    screws.add(
        new PlateScrew(
            plate,
            at,
            Material.isotropic(kind.young(), kind.poisson()),
            kind.coreDiameter(),
            major,
            kind.pitch().orElse(0.0),
            1,
            kind.cortices().orElse(2) > 1 ? 1 : 0,
            locking
                ? new Head.Locked()
                : new Head.Pressed(
                    kind.preload().orElse(0.0),
                    kind.patchRadius().orElse(PATCH_RADIUS),
                    kind.friction().orElse(PLATE_ON_BONE)),
            kind.rigid().orElse(false),
            kind.stiffZone().orElse(true)));
  }

  /** Return whether a level lies in one of the fragments, not in the gap or beyond. */
  static boolean inBone(Construct file, double at) {
    double half = file.gap().orElse(0.0) / 2;
    return at < 0
        ? at < -half && at > -half - file.bone().proximalLength()
        : at > half && at < half + file.bone().distalLength();
  }
}
