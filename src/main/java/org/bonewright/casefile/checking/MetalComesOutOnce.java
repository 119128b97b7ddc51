package org.bonewright.casefile.checking;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bonewright.casefile.Removal;

/** What has been taken out is not taken out again, nor single screws of it. */
final class MetalComesOutOnce implements Check {

  private static final String ALLOWED = "metal that is still in the bone";

  @Override
  public void look(Contents contents, Objections objections) {
    Map<String, Procedure> out = new HashMap<>();
    contents.done().forEach(procedure -> take(procedure, contents, out, objections));
    contents.sequences().stream()
        .filter(sequence -> sequence.stream().anyMatch(Procedure::isPlanned))
        .forEach(
            plan -> {
              Map<String, Procedure> outInPlan = new HashMap<>(out);
              plan.forEach(stage -> take(stage, contents, outInPlan, objections));
            });
  }

  /** Single screws first: within one operation they may be named besides the whole implant. */
  private static void take(
      Procedure procedure, Contents contents, Map<String, Procedure> out, Objections objections) {
    List<Located<Removal>> removals =
        Located.each(procedure.operation().removed(), procedure.at().field("removed"))
            .filter(removal -> contents.removable(removal.value().of(), procedure).isPresent())
            .sorted(Comparator.comparing(removal -> removal.value().isWhole()))
            .toList();
    for (Located<Removal> removal : removals) {
      String whole = removal.value().of();
      Procedure before = out.get(whole);
      if (before != null) {
        refuse(removal.at().field("of"), whole, before, objections);
      } else if (removal.value().isWhole()) {
        out.put(whole, procedure);
      } else {
        single(removal, procedure, out, objections);
      }
    }
  }

  private static void single(
      Located<Removal> removal,
      Procedure procedure,
      Map<String, Procedure> out,
      Objections objections) {
    Removal taken = removal.value();
    At at = removal.at();
    each("the screw of hole ", Located.each(taken.holes(), at.field("holes")), taken)
        .forEach(part -> takePart(part, procedure, out, objections));
    each("bolt ", Located.each(taken.bolts(), at.field("bolts")), taken)
        .forEach(part -> takePart(part, procedure, out, objections));
    each("pin ", Located.each(taken.pins(), at.field("pins")), taken)
        .forEach(part -> takePart(part, procedure, out, objections));
  }

  private static Stream<Located<String>> each(
      String noun, Stream<Located<Integer>> numbers, Removal taken) {
    return numbers.map(
        number -> new Located<>(noun + number.value() + " of " + taken.of(), number.at()));
  }

  private static void takePart(
      Located<String> part,
      Procedure procedure,
      Map<String, Procedure> out,
      Objections objections) {
    Procedure before = out.putIfAbsent(part.value(), procedure);
    if (before != null) {
      refuse(part.at(), part.value(), before, objections);
    }
  }

  private static void refuse(At at, String what, Procedure before, Objections objections) {
    objections.refuse(
        at,
        "the removal of " + what + ", which " + before.operation().id() + " took out already",
        ALLOWED);
  }
}
