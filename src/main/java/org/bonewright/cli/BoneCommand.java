package org.bonewright.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Operation;
import org.bonewright.drawing.words.BoneJson;
import org.bonewright.drawing.words.BoneText;
import org.bonewright.drawing.words.FreeBone;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says what is in the bone. */
@Command(
    name = "bone",
    mixinStandardHelpOptions = true,
    description =
        "Says what an operation finds in the bone: metal, every old track with its level and"
            + " surface, and where a plate's screws would meet fresh bone.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 told, 2 the input cannot be used, 3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright bone case.json                  as it is now, after the last operation",
      "  bonewright bone case.json --before op-3    as op-3 found it",
      "  bonewright bone case.json --format json --output bone.json"
    })
final class BoneCommand implements Callable<Integer> {

  @CommandLine.Mixin private CaseChoice cases = new CaseChoice();

  @Option(
      names = "--before",
      paramLabel = "ID",
      description = "As this operation, plan or stage finds it. Else after the last operation.")
  private @Nullable String before;

  @CommandLine.Mixin private FormatChoice format = new FormatChoice();

  @CommandLine.Mixin private OutputChoice output = new OutputChoice();

  @Override
  public Integer call() throws Unusable {
    CaseInput input = cases.read();
    CaseFile caseFile = input.caseFile();
    Optional<Subject> named =
        before == null ? Optional.empty() : Optional.of(new SubjectChoice(caseFile).named(before));
    Subject moment = named.map(Subject::justBefore).orElseGet(() -> Subject.now(caseFile));
    List<Operation> coming = named.map(Subject::steps).orElse(List.of());
    cases.warn(input);
    Standing standing = new Standing(new Scene(moment, EveryMeasure.catalogue()));
    FreeBone free = FreeBone.of(standing, coming);
    output.write(
        format.show(() -> BoneText.render(standing, free), () -> BoneJson.render(standing, free)));
    return ExitCodes.DONE;
  }
}
