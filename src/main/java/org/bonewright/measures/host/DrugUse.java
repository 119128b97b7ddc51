package org.bonewright.measures.host;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Host.Drug;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the latest drug list holds a drug of one group. */
final class DrugUse implements Measure {

  /** Which group. */
  enum Group {
    /** Drugs that slow the healing of bone. */
    SLOWING("bone-slowing-drug", "A drug that slows bone"),
    /** Drugs against the loss of bone that shut down its turnover. */
    ANTIRESORPTIVE("antiresorptive-drug", "Bisphosphonate or denosumab");

    private final String id;
    private final String title;

    Group(String id, String title) {
      this.id = id;
      this.title = title;
    }

    private Set<Drug> drugs() {
      return switch (this) {
        case SLOWING -> EnumSet.of(Drug.NSAID, Drug.STEROID, Drug.IMMUNOSUPPRESSANT);
        case ANTIRESORPTIVE -> EnumSet.of(Drug.BISPHOSPHONATE, Drug.DENOSUMAB);
      };
    }
  }

  private final Group group;

  DrugUse(Group group) {
    this.group = group;
  }

  @Override
  public Definition definition() {
    return new Definition(
        group.id,
        group.title,
        Definition.yesOrNo(),
        "yes when the latest drug list holds one of: "
            + group.drugs().stream().map(Words::of).sorted().collect(Collectors.joining(", ")),
        List.of("findings/host/drugs"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<List<Drug>> drugs =
        scene.subject().latest(finding -> finding.host().flatMap(Host::drugs));
    if (drugs.isEmpty()) {
      return Reading.unknown(
          scene.missingInCase(
              "findings/host/drugs", "Which drugs that matter for bone does the patient take?"));
    }
    List<String> found =
        drugs.get().stream().filter(group.drugs()::contains).map(Words::of).sorted().toList();
    return found.isEmpty()
        ? Reading.word("no", "none on the list")
        : Reading.word("yes", String.join(", ", found));
  }
}
