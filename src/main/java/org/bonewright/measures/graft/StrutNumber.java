package org.bonewright.measures.graft;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** A number of the struts of one place; of several struts the smallest. */
final class StrutNumber implements Measure {

  private final Definition definition;
  private final Strut.Where where;
  private final BiFunction<Scene, Strut, Reading> number;

  StrutNumber(Definition definition, Strut.Where where, BiFunction<Scene, Strut, Reading> number) {
    this.definition = definition;
    this.where = where;
    this.number = number;
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    List<Reading> readings =
        Biology.struts(steps).stream()
            .filter(strut -> strut.where() == where)
            .map(strut -> number.apply(scene, strut))
            .toList();
    if (readings.isEmpty()) {
      return steps.stream().allMatch(step -> step.fixation().isPresent())
          ? new Reading.None("no such strut")
          : Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
    }
    return smallest(readings);
  }

  private static Reading smallest(List<Reading> readings) {
    Set<MissingFact> missing = new TreeSet<>();
    readings.forEach(reading -> missing.addAll(reading.missing()));
    List<String> working = new ArrayList<>();
    double min = Double.POSITIVE_INFINITY;
    double max = Double.POSITIVE_INFINITY;
    boolean assumed = false;
    for (Reading reading : readings) {
      if (!(reading instanceof Reading.Amount amount)) {
        return new Reading.Unknown(List.copyOf(missing));
      }
      min = Math.min(min, amount.min());
      max = Math.min(max, amount.max());
      assumed |= amount.kind() == Kind.ASSUMED;
      working.add(amount.working());
    }
    return new Reading.Amount(
        min,
        max,
        assumed ? Kind.ASSUMED : Kind.FACT,
        String.join("; ", working),
        min == max ? List.of() : List.copyOf(missing));
  }
}
