package org.bonewright.measures.limb;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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

  private static final List<Function> WORSE =
      List.of(Function.INTACT, Function.RECOVERING, Function.PARTIAL, Function.COMPLETE_PALSY);

  @Override
  public Definition definition() {
    return new Definition(
        "nerve-palsy",
        "Palsy of a nerve",
        Definition.words("none", "recovering", "old", "new"),
        "by the last examination of each nerve on file, the worst of them; for a case never operated"
            + " on also that of the injury. New where the same nerve was last found intact before, old"
            + " where it was not",
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
    NerveState now = worst(examined);
    return switch (now.function()) {
      case INTACT -> Reading.word("none", "intact");
      case RECOVERING -> Reading.word("recovering", "as last found");
      case PARTIAL, COMPLETE_PALSY -> since(scene, now, examined);
      case NOT_EXAMINED -> Reading.unknown(missing);
    };
  }

  /** Return the nerve that works worst, each as last examined. */
  private static NerveState worst(List<NerveState> examined) {
    Map<NerveState.Nerve, NerveState> last = new EnumMap<>(NerveState.Nerve.class);
    examined.forEach(state -> last.putIfAbsent(state.name(), state));
    return Collections.max(
        last.values(), Comparator.comparingInt(state -> WORSE.indexOf(state.function())));
  }

  private static Reading since(Scene scene, NerveState now, List<NerveState> examined) {
    Optional<NerveState> before =
        examined.stream().filter(earlier -> earlier.name() == now.name()).skip(1).findFirst();
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
    boolean onlyInjury =
        file.findings().stream()
            .flatMap(finding -> finding.nerve().stream())
            .allMatch(state -> state.function() == Function.NOT_EXAMINED);
    return onlyInjury && !file.operations().isEmpty() ? List.of() : all;
  }
}
