package org.bonewright.bench;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bench.BenchAnswer.Figure;
import org.bonewright.bench.BenchAnswer.Flag;
import org.bonewright.bench.BenchAnswer.Group;
import org.bonewright.bench.BenchAnswer.OfQuestion;
import org.bonewright.bench.BenchAnswer.Row;
import org.bonewright.bench.BenchFile.EmptyHoles;
import org.bonewright.bench.BenchFile.Holdout;
import org.bonewright.bench.BenchFile.Intact;
import org.bonewright.bench.BenchFile.NailPlay;
import org.bonewright.bench.BenchFile.PlateBend;
import org.bonewright.bench.BenchFile.PlateHoleFactors;
import org.bonewright.bench.BenchFile.Pullout;
import org.bonewright.bench.BenchFile.Reuse;
import org.bonewright.bone.ledger.Line;
import org.bonewright.bone.ledger.ThreadSleeve;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.mechanics.hold.BoltPlay;
import org.bonewright.mechanics.hold.EmptyHole;
import org.bonewright.mechanics.hold.HoldOut;
import org.bonewright.mechanics.hold.PullOut;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.PlateHole;
import org.bonewright.mechanics.section.Rectangle;

/** Answers the single questions of bench files. */
final class SingleQuestions {

  private static final double PER_DEGREE = Math.PI / 180 / 1000;

  private SingleQuestions() {}

  /** Return everything in a question that does not fit together. */
  static List<Problem> problems(BenchFile file) {
    List<Problem> problems = new ArrayList<>();
    if (file instanceof Intact q && q.bone().innerDiameter() >= q.bone().outerDiameter()) {
      problems.add(less("/bone/innerDiameter", "the outer diameter"));
    } else if (file instanceof PlateBend q && q.holeDiameter() >= q.width()) {
      problems.add(less("/holeDiameter", "the width"));
    } else if (file instanceof PlateHoleFactors q && q.holeDiameter() >= q.width()) {
      problems.add(less("/holeDiameter", "the width"));
    } else if (file instanceof Pullout q && q.coreDiameter() >= q.majorDiameter()) {
      problems.add(less("/coreDiameter", "the outer diameter of the thread"));
    } else if (file instanceof NailPlay q && q.holeDiameter() < q.boltDiameter()) {
      problems.add(
          Problem.error("/holeDiameter", "a hole thinner than its bolt", "the bolt or more"));
    } else if (file instanceof NailPlay q && q.holeDiameter() >= q.nailDiameter()) {
      problems.add(less("/holeDiameter", "the nail"));
    } else if (file instanceof Reuse q) {
      check(q, problems);
    } else if (file instanceof Holdout q) {
      if (q.screws().isEmpty()) {
        problems.add(Problem.error("/screws", "nothing", "at least one screw"));
      }
      if (q.capacity().size() != 1 && q.capacity().size() != q.screws().size()) {
        problems.add(
            Problem.error(
                "/capacity",
                q.capacity().size() + " numbers for " + q.screws().size() + " screws",
                "one number for all screws, or one for each"));
      }
    }
    return problems;
  }

  private static void check(Reuse q, List<Problem> problems) {
    if (q.coreDiameter() >= q.majorDiameter()) {
      problems.add(less("/coreDiameter", "the outer diameter of the thread"));
    }
    if (q.parallel().isEmpty() == q.old().isEmpty()) {
      problems.add(Problem.error("", "parallel and old", "one of the two"));
    }
    if (!q.old().isEmpty()
        && !(q.cortexFrom().isPresent()
            && q.cortexTo().isPresent()
            && q.cortexFrom().get() < q.cortexTo().get())) {
      problems.add(
          Problem.error("/cortexTo", "no cortex", "cortexFrom and cortexTo, in that order"));
    }
    for (int i = 0; i < q.old().size(); i++) {
      Reuse.SlantedHole hole = q.old().get(i);
      three(problems, "/old/" + i + "/point", hole.point(), false);
      three(problems, "/old/" + i + "/direction", hole.direction(), true);
    }
  }

  private static void three(
      List<Problem> problems, String pointer, List<Double> values, boolean way) {
    if (values.size() != 3) {
      problems.add(Problem.error(pointer, values.size() + " numbers", "three numbers: x, y, z"));
    } else if (way && values.stream().allMatch(value -> value == 0)) {
      problems.add(Problem.error(pointer, "no direction", "a direction that is not 0, 0, 0"));
    }
  }

  private static Problem less(String pointer, String than) {
    return Problem.error(pointer, "a number that is too large", "less than " + than);
  }

  /** Return the answer to a question that fits together. */
  static BenchAnswer answer(BenchFile file) {
    if (file instanceof Intact q) {
      return intact(q.bone());
    }
    if (file instanceof PlateBend q) {
      return plateBend(q);
    }
    if (file instanceof PlateHoleFactors q) {
      PlateHole hole = new PlateHole(new Rectangle(q.width(), q.thickness()), q.holeDiameter());
      return new OfQuestion(
          List.of(
              new Figure("KtBend", hole.bendingFactor(), ""),
              new Figure("KtTension", hole.tensionFactor(), "")));
    }
    if (file instanceof Pullout q) {
      PullOut thread = new PullOut(q.majorDiameter(), q.coreDiameter(), q.pitch());
      double capacity = thread.capacity(q.boneShearStrength(), q.engagedLength());
      return new OfQuestion(List.of(new Figure("capacity", capacity, "N")));
    }
    if (file instanceof Reuse q) {
      return reuse(q);
    }
    if (file instanceof Holdout q) {
      return holdout(q);
    }
    if (file instanceof EmptyHoles q) {
      return emptyHole(q);
    }
    if (file instanceof NailPlay q) {
      BoltPlay play = new BoltPlay(q.holeDiameter(), q.boltDiameter(), q.nailDiameter());
      return new OfQuestion(
          List.of(
              new Figure("torsion", play.turns(), "degrees"),
              new Figure("axial", play.along(), "mm")));
    }
    throw new IllegalArgumentException("not a single question: " + file);
  }

  private static BenchAnswer intact(Intact.WholeBone bone) {
    HollowCircle tube = new HollowCircle(bone.outerDiameter(), bone.innerDiameter());
    Material material = BenchBone.material(bone.young(), bone.poisson().orElse(0.3), bone.shear());
    double bending = material.young() * tube.weak() / bone.length() * PER_DEGREE;
    double torsion = material.shear() * tube.torsion() / bone.length() * PER_DEGREE;
    return new OfQuestion(
        List.of(
            new Group(
                "stiffness",
                List.of(
                    new Figure("axial", material.young() * tube.area() / bone.length(), "N/mm"),
                    new Figure("bending", bending, "N·m/deg"),
                    new Figure("torsion", torsion, "N·m/deg")))));
  }

  private static BenchAnswer plateBend(PlateBend q) {
    Rectangle plate = new Rectangle(q.width(), q.thickness());
    Material material = Material.isotropic(q.young(), q.poisson());
    double moment = q.load().moment();
    double turn = moment * q.length() / (q.young() * plate.weak());
    if (q.holeDiameter() == 0) {
      double stress = Math.abs(moment) * q.thickness() / 2 / plate.weak();
      return bent(turn, stress, 1);
    }
    PlateHole hole = new PlateHole(plate, q.holeDiameter());
    double nominal = Math.abs(moment) * q.thickness() / 2 / hole.netWeak();
    return bent(
        turn + moment * hole.give(material).weak(),
        nominal * hole.bendingFactor(),
        hole.bendingFactor());
  }

  private static BenchAnswer bent(double turn, double stress, double concentration) {
    return new OfQuestion(
        List.of(
            new Figure("endRotation", turn, "rad"),
            new Figure("peakStress", stress, "MPa"),
            new Figure("concentration", concentration, "")));
  }

  private static BenchAnswer reuse(Reuse q) {
    if (!q.parallel().isEmpty()) {
      ThreadSleeve thread = thread(q, 0, 1);
      List<Double> shares =
          q.parallel().stream()
              .map(
                  hole ->
                      thread.outside(
                          List.of(
                              new ThreadSleeve.Bore(
                                  new Line(0, hole.offset(), 0, 1, 0, 0), hole.oldDiameter()))))
              .toList();
      return new OfQuestion(List.of(new Row("engagedFraction", shares, "")));
    }
    double from = q.cortexFrom().orElse(0.0);
    ThreadSleeve thread = thread(q, from, q.cortexTo().orElse(1.0) - from);
    List<ThreadSleeve.Bore> bores = q.old().stream().map(SingleQuestions::bore).toList();
    List<Double> shares = bores.stream().map(bore -> thread.outside(List.of(bore))).toList();
    return new OfQuestion(
        List.of(
            new Row("engagedFraction", shares, ""),
            new Figure("together", thread.outside(bores), "")));
  }

  /** The screw runs along z in the file and along x here, since a screw never runs along a bone. */
  private static ThreadSleeve thread(Reuse q, double from, double length) {
    return new ThreadSleeve(
        new Line(0, 0, 0, 1, 0, 0), from, length, q.coreDiameter(), q.majorDiameter());
  }

  private static ThreadSleeve.Bore bore(Reuse.SlantedHole hole) {
    List<Double> p = hole.point();
    List<Double> d = hole.direction();
    double length = Math.sqrt(d.stream().mapToDouble(v -> v * v).sum());
    return new ThreadSleeve.Bore(
        new Line(
            p.get(2), p.get(0), p.get(1), d.get(2) / length, d.get(0) / length, d.get(1) / length),
        hole.diameter());
  }

  private static BenchAnswer holdout(Holdout q) {
    List<Double> capacities =
        q.capacity().size() == 1
            ? q.screws().stream().map(at -> q.capacity().get(0)).toList()
            : q.capacity();
    HoldOut row = new HoldOut(q.screws(), capacities);
    return new OfQuestion(
        List.of(
            new Row("sequential", row.sequential(q.loadAt()), "N"),
            new Flag("unzips", row.unzips(q.loadAt())),
            new Figure("group", row.group(q.loadAt()), "N")));
  }

  private static BenchAnswer emptyHole(EmptyHoles q) {
    return new OfQuestion(
        List.of(
            new Group(
                "torsionRetained",
                List.of(
                    new Row("low", q.ratios().stream().map(EmptyHole::torsionLow).toList(), ""),
                    new Row("high", q.ratios().stream().map(EmptyHole::torsionHigh).toList(), ""))),
            new Row("bendingRetained", q.ratios().stream().map(EmptyHole::bending).toList(), "")));
  }
}
