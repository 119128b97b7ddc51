package org.bonewright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Patient;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Side;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Words;

/** Says the records of a case in a surgeon's words. */
final class Said {

  private Said() {}

  static String numbers(Quantity quantity) {
    return Dimension.stated(quantity, "").numbers();
  }

  static String patient(Patient patient) {
    List<String> parts = new ArrayList<>();
    parts.add(patient.ageYears().map(age -> numbers(age) + " years").orElse("age not stated"));
    patient
        .sex()
        .filter(sex -> sex != Patient.Sex.OTHER)
        .ifPresent(sex -> parts.add(Words.of(sex)));
    patient.weightKg().ifPresent(kg -> parts.add(numbers(kg) + " kg"));
    patient.demand().ifPresent(demand -> parts.add("demand: " + Words.of(demand)));
    return String.join(", ", parts);
  }

  static String injury(CaseFile caseFile) {
    Bone bone = caseFile.bone();
    Injury injury = caseFile.injury();
    List<String> parts = new ArrayList<>();
    parts.add(
        bone.side() == Side.NOT_STATED
            ? Words.of(bone.name()) + ", side not stated"
            : Words.of(bone.side()) + " " + Words.of(bone.name()));
    parts.add(injury.pattern().map(Words::of).orElse("pattern not stated"));
    injury
        .openGrade()
        .map(g -> g == Injury.OpenGrade.NONE ? "closed" : "open, grade " + g.name())
        .ifPresent(parts::add);
    injury
        .zone()
        .flatMap(z -> z.fromMm().flatMap(a -> z.toMm().map(b -> numbers(a) + " to " + numbers(b))))
        .ifPresent(zone -> parts.add("zone " + zone + " mm"));
    return String.join(", ", parts);
  }

  /** The operation in a few clauses; one that has a title is told by it and its implants alone. */
  static String operation(Operation operation) {
    List<String> parts = new ArrayList<>();
    boolean brief = operation.title().isPresent();
    operation.title().ifPresent(parts::add);
    operation
        .fixation()
        .ifPresentOrElse(
            put -> put.forEach(implant -> parts.add(implant(implant, brief))),
            () -> parts.add("implants not stated"));
    if (brief) {
      return String.join("; ", parts);
    }
    operation.concept().ifPresent(concept -> parts.add(Words.of(concept) + " stability"));
    operation
        .compression()
        .filter(c -> c.method() != Compression.Method.NONE)
        .ifPresent(c -> parts.add("compressed by " + Words.of(c.method())));
    operation
        .biology()
        .filter(grafts -> !grafts.isEmpty())
        .ifPresent(grafts -> grafts.forEach(graft -> parts.add(graft(graft))));
    operation
        .removed()
        .filter(removed -> !removed.isEmpty())
        .ifPresent(
            removed ->
                parts.add(
                    "removed "
                        + String.join(
                            ", ", removed.stream().map(r -> r.of()).distinct().toList())));
    return String.join("; ", parts);
  }

  private static String counted(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  private static String graft(Graft graft) {
    return Words.of(graft.kind()) + graft.volumeMl().map(v -> " " + numbers(v) + " mL").orElse("");
  }

  private static String implant(Implant implant, boolean brief) {
    if (implant instanceof Plate plate) {
      return plate(plate, brief);
    }
    if (implant instanceof Nail nail) {
      return nail.outerMm().map(d -> numbers(d) + " mm ").orElse("")
          + "nail"
          + nail.bolts().map(bolts -> ", " + counted(bolts.size(), "bolt")).orElse("");
    }
    if (implant instanceof Strut strut) {
      return Words.of(strut.where()) + " strut";
    }
    return implant instanceof ExternalFixator
        ? "external fixator"
        : implant instanceof LagScrew ? "lag screw" : implant instanceof Cerclage ? "cerclage" : "";
  }

  private static String plate(Plate plate, boolean brief) {
    StringBuilder words = new StringBuilder();
    plate.holes().ifPresent(holes -> words.append(holes).append("-hole "));
    plate.surface().map(Said::surface).ifPresent(surface -> words.append(surface).append(' '));
    if (!brief) {
      plate.family().map(Words::of).ifPresent(family -> words.append(family).append(' '));
    }
    words.append("plate");
    plate
        .screws()
        .ifPresent(
            rows ->
                words
                    .append(", ")
                    .append(
                        counted(rows.stream().mapToInt(row -> row.at().size()).sum(), "screw")));
    return words.toString();
  }

  /** The surface by its nearest name; an angle of its own is told beside it. */
  private static String surface(Direction direction) {
    Direction.Named nearest =
        Arrays.stream(Direction.Named.values())
            .min(Comparator.comparingDouble(named -> named.direction().angleTo(direction)))
            .orElseThrow();
    return nearest.direction().equals(direction)
        ? Words.of(nearest)
        : Words.of(nearest) + " (" + Dimension.number(direction.degrees()) + "°)";
  }

  private static String mode(FailureMode mode) {
    return switch (mode) {
      case CALLUS_LINE_OPEN -> "callus, line open";
      case NO_UNION_METAL_INTACT -> "no union, metal intact";
      default -> Words.of(mode);
    };
  }

  static Optional<String> outcome(Operation operation) {
    return operation.outcome().map(outcome -> outcome(outcome) + notKept(operation, outcome));
  }

  /** Aftercare that was not followed is told beside a failure; it is no fault of the operation. */
  private static String notKept(Operation operation, Outcome outcome) {
    boolean told =
        outcome.result() == Outcome.Result.FAILED
            && operation.aftercare().flatMap(Aftercare::followed).equals(Optional.of(Answer.NO));
    return told ? "; load limits were not kept" : "";
  }

  private static String outcome(Outcome outcome) {
    String day =
        outcome
            .day()
            .map(d -> " by day " + numbers(d))
            .or(() -> outcome.weeksAfter().map(w -> " after " + numbers(w) + " weeks"))
            .orElse("");
    String mode = outcome.mode().map(m -> ": " + mode(m)).orElse("");
    String hole = outcome.hole().map(h -> " (hole " + h + ")").orElse("");
    String result = Words.of(outcome.result());
    return result.substring(0, 1).toUpperCase(Locale.ROOT)
        + result.substring(1)
        + day
        + mode
        + hole;
  }
}
