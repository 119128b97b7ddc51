package org.bonewright.measures.limb;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.NerveState;
import org.bonewright.casefile.NerveState.Function;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a nerve does not work as the case stands, and since when. */
final class NervePalsy implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nerve-palsy",
        "Palsy of a nerve",
        Definition.words("none", "recovering", "old", "new"),
        "by the last examination of a nerve on file, for a case never operated on also that of the"
            + " injury. New where the same nerve was last found intact before, old where it was not",
        List.of("findings/nerve", "injury/nerve"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<NerveState> examined = examined(scene.subject().caseFile());
    MissingFact missing =
        scene.missingInCase("findings/nerve", "How does the nerve at risk work now?");
    if (examined.isEmpty()) {
      return Reading.unknown(missing);
    }
    NerveState now = examined.get(0);
    return switch (now.function()) {
      case INTACT -> Reading.word("none", "intact");
      case RECOVERING -> Reading.word("recovering", "as last found");
      case PARTIAL, COMPLETE_PALSY -> since(scene, now, examined);
      case NOT_EXAMINED -> Reading.unknown(missing);
    };
  }

  private static Reading since(Scene scene, NerveState now, List<NerveState> examined) {
    Optional<NerveState> before =
        examined.stream().skip(1).filter(earlier -> earlier.name() == now.name()).findFirst();
    boolean byInjury = scene.subject().caseFile().operations().isEmpty();
    if (byInjury || before.map(b -> b.function() != Function.INTACT).orElse(false)) {
      return Reading.word("old", byInjury ? "by the injury" : "not intact before either");
    }
    return before.isPresent()
        ? Reading.word("new", "intact before")
        : Reading.words(
            Set.of("old", "new"),
            Kind.FACT,
            "not told how it worked before",
            scene.missingInCase("injury/nerve", "How did the same nerve work after the injury?"));
  }

  /** Return what examinations showed, the latest first; the injury comes last. */
  private static List<NerveState> examined(CaseFile file) {
    Stream<NerveState> found =
        file.findings().stream()
            .sorted(Comparator.comparingDouble((Finding f) -> f.day().middle()).reversed())
            .flatMap(finding -> finding.nerve().stream());
    List<NerveState> all =
        Stream.concat(found, file.injury().nerve().stream())
            .filter(state -> state.function() != Function.NOT_EXAMINED)
            .toList();
    boolean onlyInjury = file.findings().stream().noneMatch(f -> f.nerve().isPresent());
    return onlyInjury && !file.operations().isEmpty() ? List.of() : all;
  }
}
