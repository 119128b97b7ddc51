package org.bonewright.measures.compression;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Resection;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.line.WholeZoneCut;

/** By how much the bone shortens when its ends are brought together. */
final class ShorteningToClose implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "shortening-to-close",
        "Shortening needed to close",
        Definition.millimetres(),
        "bone missing along the axis as last found, and what all steps cut out; where one cut"
            + " certainly takes the whole zone the missing part lies within it, else anything from"
            + " the larger of the two to their sum",
        List.of("findings/defectMm", "findings/zone", "injury/zone", "operations/resection"),
        "arithmetic; levels are read across what is missing");
  }

  @Override
  public Reading take(Scene scene) {
    List<MissingFact> missing = new ArrayList<>();
    Optional<Quantity> defect = scene.subject().latest(Finding::defectMm);
    if (defect.isEmpty() || !defect.get().isExact()) {
      missing.add(
          scene.missingInCase(
              "findings/defectMm", "How much bone is missing along the axis, in mm?"));
    }
    boolean told = scene.subject().steps().stream().allMatch(step -> step.resection().isPresent());
    List<Resection> cuts =
        scene.subject().steps().stream()
            .map(Operation::resection)
            .flatMap(Optional::stream)
            .flatMap(List::stream)
            .toList();
    double least = cuts.stream().mapToDouble(ShorteningToClose::least).sum();
    double most = cuts.stream().mapToDouble(ShorteningToClose::most).sum();
    if (!told || least < most) {
      missing.add(
          scene.missing("resection", "Were the bone ends cut back, and by how much, in mm?"));
    }
    if (defect.isEmpty() || !told) {
      return new Reading.Unknown(missing);
    }
    Quantity found = defect.get();
    boolean within = WholeZoneCut.certain(scene);
    double min = Math.max(found.min(), least);
    double max = within ? Math.max(found.max(), most) : found.max() + most;
    if (min < max && missing.isEmpty()) {
      missing.add(
          scene.missingInCase(
              "findings/zone", "From which level to which is the bone not united, in mm?"));
    }
    Dimension cut = new Dimension(least, most, false, "");
    String working =
        Dimension.stated(found, "").numbers()
            + " mm missing, "
            + cut.numbers()
            + " mm cut out"
            + (within ? " with the whole zone" : "");
    return Reading.number(
        new Dimension(min, max, false, ""), working, missing.toArray(MissingFact[]::new));
  }

  private static double least(Resection cut) {
    return Math.max(0, cut.toMm().min() - cut.fromMm().max());
  }

  private static double most(Resection cut) {
    return Math.max(0, cut.toMm().max() - cut.fromMm().min());
  }
}
