package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.RuleSet;

/** Gathers what was computed of the forces in each construct. */
final class ForceMaker {

  private static final List<String> MEASURES =
      List.of(
          "load-pressing",
          "load-bending",
          "load-torsion",
          "gap-strain",
          "gap-movement",
          "far-cortex-movement",
          "near-cortex-movement",
          "shear-movement",
          "contact-under-load",
          "opening-moment",
          "plate-stress-range",
          "plate-stress-steady",
          "nail-stress-range",
          "bolt-stress-range",
          "pin-stress-range",
          "endurance-used",
          "metal-life-over-union",
          "screw-pull-margin",
          "hold-out-share",
          "hold-out-mode",
          "strut-share",
          "stiffness-gain",
          "hole-weakening");

  /** Stiffness within a twentieth is the same. */
  private static final double SAME = 0.95;

  /** Every construct that is modelled has this number. */
  private static final String ALWAYS = "contact-under-load";

  private static final List<String> LIMITS =
      List.of(
          "Compare constructs on one bone; a single number is only a hint, and never a date.",
          "One load without muscles, a round straight bone, plane sections, small movements, no"
              + " healing.",
          "Plates are straight and rest on the bone at their screws only; a gap is taken as even.",
          "A nail meets the wall of its canal at four levels at most; only the holes of its bolts weaken"
              + " it; play in those holes is left out.",
          "Stress at the edge of a hole is 10 to 15 % too high; torsion of a plated gap 5 to 12 % too"
              + " soft.",
          "Likely: nine in ten of the sampled sets of assumptions lie within.");

  private static final String FIXATOR =
      "Clamps of a fixator are taken as rigid and pins as tight in the bone; real ones give more, and"
          + " how long they last is not said.";

  private final JudgedCase judged;
  private final RuleSet rules;
  private final List<Subject> columns = new ArrayList<>();
  private final List<String> notModelled = new ArrayList<>();

  ForceMaker(JudgedCase judged, RuleSet rules) {
    this.judged = judged;
    this.rules = rules;
  }

  ForceTable table() {
    judged.subjects().stream()
        .filter(subject -> subject.scope() != Subject.Scope.STAGE)
        .forEach(this::sort);
    return new ForceTable(
        columns.stream().map(Subject::id).toList(),
        MEASURES.stream().flatMap(measure -> row(measure).stream()).toList(),
        columns.stream().map(this::inShort).toList(),
        notModelled,
        limits());
  }

  private List<String> limits() {
    boolean fixator =
        columns.stream().anyMatch(subject -> sampled(subject, "pin-stress-range").isPresent());
    return fixator ? Stream.concat(LIMITS.stream(), Stream.of(FIXATOR)).toList() : LIMITS;
  }

  private void sort(Subject subject) {
    Reading reading = scene(subject).read(ALWAYS);
    if (reading instanceof Reading.Sampled) {
      columns.add(subject);
    } else if (reading instanceof Reading.None none) {
      notModelled.add(subject.id() + ": " + none.why());
    } else {
      notModelled.add(
          subject.id()
              + ": not told: "
              + reading.missing().stream().findFirst().map(m -> m.question()).orElse(""));
    }
  }

  private Scene scene(Subject subject) {
    return judged.scene(subject);
  }

  private Optional<ForceTable.Row> row(String measure) {
    List<ForceTable.Cell> cells =
        columns.stream().map(subject -> cell(scene(subject).read(measure))).toList();
    Definition definition = rules.definition(measure);
    return cells.stream().allMatch(cell -> cell.shown().equals("–"))
        ? Optional.empty()
        : Optional.of(
            new ForceTable.Row(measure, definition.title(), definition.shownUnit(), cells));
  }

  private static ForceTable.Cell cell(Reading reading) {
    boolean told = !(reading instanceof Reading.None || reading instanceof Reading.Unknown);
    return new ForceTable.Cell(told ? reading.shown() : "–", reading.working());
  }

  /** Of ends that touch there is something to say where a gain was computed. */
  private String inShort(Subject subject) {
    List<String> parts = new ArrayList<>();
    said(subject, "gap-strain").ifPresent(strain -> parts.add("strain " + strain));
    sampled(subject, "metal-life-over-union").map(ForceMaker::life).ifPresent(parts::add);
    sampled(subject, "stiffness-gain").map(ForceMaker::gain).ifPresent(parts::add);
    if (!parts.isEmpty() && scene(subject).certainly("modelled-line", "touching")) {
      said(subject, ALWAYS).ifPresent(share -> parts.add(0, "ring in contact " + share));
    }
    return String.join("; ", parts);
  }

  /** Likely is what nine samples in ten say, as for verdicts. */
  private static String life(Reading.Sampled life) {
    long samples = life.samples().size();
    long breaks = life.samples().stream().filter(share -> share < 1).count();
    if (nineInTen(breaks, samples)) {
      return "metal likely breaks before union";
    }
    return nineInTen(samples - breaks, samples)
        ? "metal not expected to break before union"
        : "metal may break before union";
  }

  /** Whole numbers, as for verdicts: a tenth is no number of the machine. */
  private static boolean nineInTen(long count, long samples) {
    return count * 10 >= samples * 9;
  }

  private static String gain(Reading.Sampled gain) {
    if (gain.high() < SAME) {
      return "softer than before";
    }
    return gain.nominal() <= 1 / SAME
        ? "no stiffer than before"
        : Dimension.number(Math.rint(gain.nominal() * 10) / 10) + " times as stiff";
  }

  private Optional<String> said(Subject subject, String measure) {
    return sampled(subject, measure)
        .map(sampled -> sampled.shown(rules.definition(measure).shownUnit()));
  }

  private Optional<Reading.Sampled> sampled(Subject subject, String measure) {
    return scene(subject).read(measure) instanceof Reading.Sampled sampled
        ? Optional.of(sampled)
        : Optional.empty();
  }
}
