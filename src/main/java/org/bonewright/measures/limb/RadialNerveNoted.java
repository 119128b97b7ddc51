package org.bonewright.measures.limb;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.NerveHandling;
import org.bonewright.casefile.NerveState;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the function of the radial nerve is written down about an operation on the humerus. */
final class RadialNerveNoted implements Measure {

  private static final double A_DAY = 1;

  /** Which side of the operation. */
  enum When {
    BEFORE,
    AFTER
  }

  private final When when;

  RadialNerveNoted(When when) {
    this.when = when;
  }

  @Override
  public Definition definition() {
    return when == When.BEFORE
        ? new Definition(
            "radial-nerve-before",
            "Radial nerve written down before",
            Definition.yesOrNo(),
            "yes where a finding since the operation before tells how it works, for a first"
                + " operation also the injury; no where it is said not to be examined, and in a plan"
                + " where nothing tells",
            List.of("findings/nerve", "injury/nerve"),
            "bookkeeping")
        : new Definition(
            "radial-nerve-after",
            "Radial nerve written down after",
            Definition.yesOrNo(),
            "yes where the operation says so, or a finding of the day after; no where it is said not"
                + " to be examined, and in a plan that does not name it",
            List.of("operations/nerve/examinedAfter", "findings/nerve"),
            "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.boneName() != BoneName.HUMERUS) {
      return new Reading.None("not the humerus");
    }
    List<NerveState> told = (when == When.BEFORE ? before(scene) : after(scene)).toList();
    if (when == When.BEFORE && !told.isEmpty() && undated(scene).isPresent()) {
      String id = undated(scene).orElseThrow().id();
      return Reading.unknown(
          new MissingFact(id + "/day", "On which day, roughly, was " + id + "?"));
    }
    Optional<Answer> said =
        when == When.AFTER
            ? scene.operation().nerve().flatMap(NerveHandling::examinedAfter)
            : Optional.empty();
    if (told.stream().anyMatch(RadialNerveNoted::examined)
        || said.equals(Optional.of(Answer.YES))) {
      return Reading.word("yes", "on file");
    }
    if (!told.isEmpty() || said.equals(Optional.of(Answer.NO))) {
      return Reading.word("no", "not examined");
    }
    return scene.subject().planned() && said.isEmpty()
        ? Reading.word("no", when == When.BEFORE ? "nothing on file" : "not planned")
        : Reading.unknown(
            when == When.BEFORE
                ? scene.missing(
                    "nerve", "How did the radial nerve work before the operation, as written then?")
                : scene.missing(
                    "nerve/examinedAfter",
                    "Was the radial nerve examined within a day after, and written down?"));
  }

  private static boolean examined(NerveState state) {
    return state.function() != NerveState.Function.NOT_EXAMINED;
  }

  /** Return the operation before, where it has no day to place a finding by. */
  private static Optional<Operation> undated(Scene scene) {
    List<Operation> done = scene.doneBefore();
    return done.isEmpty()
        ? Optional.empty()
        : Optional.of(done.get(done.size() - 1)).filter(last -> last.day().isEmpty());
  }

  private static Stream<NerveState> before(Scene scene) {
    List<Operation> done = scene.doneBefore();
    double since =
        done.isEmpty() ? 0 : done.get(done.size() - 1).day().map(Quantity::middle).orElse(0.0);
    Stream<NerveState> found =
        scene.subject().findings().stream()
            .filter(finding -> finding.day().middle() >= since)
            .flatMap(finding -> finding.nerve().stream());
    Stream<NerveState> injury =
        done.isEmpty() ? scene.subject().caseFile().injury().nerve().stream() : Stream.empty();
    return radial(Stream.concat(found, injury));
  }

  private static Stream<NerveState> after(Scene scene) {
    Optional<Quantity> day = scene.operation().day();
    return radial(
        scene.subject().caseFile().findings().stream()
            .filter(finding -> day.map(d -> soonAfter(finding, d)).orElse(false))
            .flatMap(finding -> finding.nerve().stream()));
  }

  private static boolean soonAfter(Finding finding, Quantity operation) {
    double days = finding.day().middle() - operation.middle();
    return days > 0 && days <= A_DAY;
  }

  private static Stream<NerveState> radial(Stream<NerveState> nerves) {
    return nerves.filter(nerve -> nerve.name() == NerveState.Nerve.RADIAL);
  }
}
