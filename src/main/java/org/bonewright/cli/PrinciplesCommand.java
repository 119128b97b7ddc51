package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bonewright.principles.Card;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.CatalogueText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists principles, or shows one. */
@Command(
    name = "principles",
    mixinStandardHelpOptions = true,
    description = "Lists the principles, shows one with its limits and sources, or lists measures.",
    footerHeading = "%n",
    footer = {
      "Examples:",
      "  bonewright principles",
      "  bonewright principles plate-span-ratio",
      "  bonewright principles --profile exam",
      "  bonewright principles plate-span-ratio --site site.json",
      "  bonewright principles --measures"
    })
final class PrinciplesCommand implements Callable<Integer> {

  @Parameters(arity = "0..1", paramLabel = "ID", description = "The principle to show.")
  private @Nullable String id;

  @Option(
      names = "--measures",
      description = "List the measures: what each is, its unit, formula, inputs and source.")
  private boolean measures;

  @CommandLine.Mixin private RulesChoice choice = new RulesChoice();

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    RuleSet rules = choice.rules();
    CatalogueText text = new CatalogueText(rules);
    StringBuilder answer = new StringBuilder();
    Optional<Promise> promise = Optional.ofNullable(id).flatMap(rules::promise);
    if (promise.isPresent()) {
      answer.append(text.promise(promise.get()));
    } else if (id != null) {
      answer.append(text.principle(card(rules, id)));
    } else if (!measures) {
      answer.append(
          choice.namesProfile() ? text.principles(choice.profile(rules)) : text.principles());
    }
    if (measures && promise.isEmpty()) {
      answer.append(id == null ? text.measures() : text.measures(card(rules, id)));
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(answer);
    out.flush();
    return ExitCodes.DONE;
  }

  private static Card card(RuleSet rules, String id) throws Unusable {
    Optional<Card> card =
        rules
            .card(id)
            .or(() -> rules.cards().stream().filter(c -> c.formerIds().contains(id)).findFirst());
    return card.orElseThrow(
        () ->
            new Unusable(
                "There is no principle " + id + ". The list is printed by: bonewright principles"));
  }
}
