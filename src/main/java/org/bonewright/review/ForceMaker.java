package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
          "endurance-used",
          "metal-life-over-union",
          "screw-pull-margin",
          "stiffness-gain");

  /** Every construct that is modelled has this number. */
  private static final String ALWAYS = "contact-under-load";

  private static final List<String> LIMITS =
      List.of(
          "Compare constructs on one bone; a single number is only a hint, and never a date.",
          "One load without muscles, a round straight bone, plane sections, small movements, no"
              + " healing.",
          "Plates are straight and rest on the bone at their screws only; a gap is taken as even.",
          "Stress at the edge of a hole is 10 to 15 % too high; torsion of a plated gap 5 to 12 % too"
              + " soft.",
          "Likely: nine in ten of the sampled sets of assumptions lie within.");

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
        LIMITS);
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
        : Optional.of(new ForceTable.Row(measure, definition.title(), unit(definition), cells));
  }

  private static ForceTable.Cell cell(Reading reading) {
    boolean number = reading instanceof Reading.Sampled || reading instanceof Reading.Amount;
    return new ForceTable.Cell(number ? reading.shown() : "–", reading.working());
  }

  private static String unit(Definition definition) {
    return definition.domain() instanceof Definition.Domain.Numbers numbers
        ? numbers.shownUnit()
        : "";
  }

  private String inShort(Subject subject) {
    List<String> parts = new ArrayList<>();
    said(subject, "gap-strain", "strain at the line ").ifPresent(parts::add);
    if (parts.isEmpty()) {
      said(subject, ALWAYS, "ends touch; in contact under load ").ifPresent(parts::add);
    }
    said(subject, "metal-life-over-union", "plate lasts ")
        .map(life -> life + " times the time to union")
        .ifPresent(parts::add);
    said(subject, "screw-pull-margin", "most loaded screw bears ")
        .map(margin -> margin + " times its pull")
        .ifPresent(parts::add);
    said(subject, "stiffness-gain", "stiffness ")
        .map(gain -> gain + " times that of what failed before")
        .ifPresent(parts::add);
    return subject.id() + ": " + String.join("; ", parts) + ".";
  }

  private Optional<String> said(Subject subject, String measure, String before) {
    return scene(subject).read(measure) instanceof Reading.Sampled sampled
        ? Optional.of(before + sampled.shown(unit(rules.definition(measure))))
        : Optional.empty();
  }
}
