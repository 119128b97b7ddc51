package org.bonewright.casefile.checking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Companion;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.checking.Procedure.Scene;
import org.bonewright.casefile.checking.Procedure.Sequence;

/** A case file laid out for the checks: its operations as sequences in time, its metal by name. */
final class Contents {

  private final CaseFile file;
  private final List<List<Procedure>> sequences;
  private final List<Procedure> procedures;
  private final List<Fitted<Implant>> implants;
  private final Map<String, Fitted<Implant>> doneByName = new HashMap<>();
  private final Map<Sequence, Map<String, Fitted<Implant>>> plannedByName = new HashMap<>();

  private Contents(CaseFile file, List<List<Procedure>> sequences) {
    this.file = file;
    this.sequences = List.copyOf(sequences);
    this.procedures = sequences.stream().flatMap(List::stream).toList();
    this.implants = procedures.stream().flatMap(p -> p.fitted().stream()).toList();
    for (Fitted<Implant> implant : implants) {
      (implant.by().isPlanned() ? namesIn(implant.by().sequence()) : doneByName)
          .putIfAbsent(implant.name(), implant);
    }
  }

  private Map<String, Fitted<Implant>> namesIn(Sequence plan) {
    return plannedByName.computeIfAbsent(plan, sequence -> new HashMap<>());
  }

  /** Return the contents of a file. */
  static Contents of(CaseFile file) {
    List<List<Procedure>> sequences = new ArrayList<>();
    sequences.add(sequence(file.operations(), At.FILE.field("operations"), Scene.BONE));
    sequences.add(
        sequence(
            file.companion().map(Companion::operations).orElse(List.of()),
            At.FILE.field("companion").field("operations"),
            Scene.COMPANION));
    Located.each(file.plans(), At.FILE.field("plans"))
        .map(Contents::stages)
        .forEach(sequences::add);
    return new Contents(file, sequences);
  }

  private static List<Procedure> stages(Located<Plan> plan) {
    return sequence(plan.value().stages(), plan.at().field("stages"), Scene.PLAN);
  }

  private static List<Procedure> sequence(List<Operation> operations, At at, Scene scene) {
    Sequence sequence = new Sequence(at, scene);
    List<Procedure> procedures = new ArrayList<>();
    for (int i = 0; i < operations.size(); i++) {
      procedures.add(new Procedure(operations.get(i), at.item(i), sequence, i));
    }
    return List.copyOf(procedures);
  }

  /** Return the file itself. */
  CaseFile file() {
    return file;
  }

  /** Return the operations on the bone, those on the bone beside, and the stages of each plan. */
  List<List<Procedure>> sequences() {
    return sequences;
  }

  /** Return every operation and stage. */
  List<Procedure> procedures() {
    return procedures;
  }

  /** Return the operations that were done, on the bone and on the one beside. */
  List<Procedure> done() {
    return procedures.stream().filter(procedure -> !procedure.isPlanned()).toList();
  }

  /** Return every stage of every plan. */
  List<Procedure> planned() {
    return procedures.stream().filter(Procedure::isPlanned).toList();
  }

  /** Return every implant that an operation or stage puts in. */
  List<Fitted<Implant>> implants() {
    return implants;
  }

  /** Return every implant of one kind. */
  <T extends Implant> List<Fitted<T>> implants(Class<T> kind) {
    return implants.stream().filter(f -> f.isA(kind)).map(f -> f.as(kind)).toList();
  }

  /** Return the implant that an operation can take out by this full name: put in by then. */
  Optional<Fitted<Implant>> removable(String name, Procedure by) {
    return named(name, by).filter(implant -> !by.comesBefore(implant.by()));
  }

  /** Return the implant with this full name, as seen from an operation: not one of another plan. */
  Optional<Fitted<Implant>> named(String name, Procedure seenFrom) {
    return Optional.ofNullable(doneByName.get(name))
        .or(
            () ->
                Optional.ofNullable(plannedByName.get(seenFrom.sequence()))
                    .map(names -> names.get(name)));
  }
}
