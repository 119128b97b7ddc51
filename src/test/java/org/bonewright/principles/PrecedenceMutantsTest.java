package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.principles.PrecedenceExamples.Example;
import org.bonewright.principles.PrecedenceMutants.Mutant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the rules of precedence to their examples, and the examples to every way in which a rule
 * could be slightly wrong: a condition or a fact left out, a comparison turned, a word dropped,
 * added or the wrong way round, another label, step or severity. What no example can notice is
 * redundant.
 */
class PrecedenceMutantsTest {

  static final Path EXAMPLES = Path.of("rules", "precedence", "precedence.examples.yaml");

  static Stream<Arguments> examples() throws IOException {
    return PrecedenceExamples.read(Files.readString(EXAMPLES)).stream()
        .map(example -> argumentSet(example.say(), example));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void an_example_comes_out_as_it_says(Example example) {
    Decisions decisions = AllCells.RULES.rules().decide(example.facts());
    assertThat(example.findings())
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.outcome(decisions)).as("%s", f).isEqualTo(f.expect()));
  }

  @Test
  void an_example_notices_every_mutant() throws IOException {
    List<PrecedenceRule> rules = PrecedenceRule.all(RuleFiles.built());
    List<Mutant> mutants = new PrecedenceMutants(rules, AllCells.RULES.families()).all();
    List<Example> examples = PrecedenceExamples.read(Files.readString(EXAMPLES));
    PrecedenceInMemory compiled = compiled(rules, mutants);
    Set<String> right = rules.stream().map(PrecedenceRule::name).collect(Collectors.toSet());
    assertThat(examples).allMatch(example -> isRight(example, compiled, right));
    List<String> unnoticed = new ArrayList<>();
    for (int i = 0; i < mutants.size(); i++) {
      Set<String> names = new TreeSet<>(right);
      names.remove(mutants.get(i).rule().name());
      names.add(name(i));
      if (examples.stream().allMatch(example -> isRight(example, compiled, names))) {
        unnoticed.add(mutants.get(i).shown());
      }
    }
    assertThat(unnoticed).as("mutants that no example notices").isEmpty();
  }

  private static PrecedenceInMemory compiled(List<PrecedenceRule> rules, List<Mutant> mutants) {
    List<String> texts = new ArrayList<>();
    rules.forEach(rule -> texts.add(rule.text(rule.name())));
    for (int i = 0; i < mutants.size(); i++) {
      String name = name(i);
      mutants.get(i).wrong().ifPresent(wrong -> texts.add(wrong.text(name)));
    }
    return new PrecedenceInMemory(texts);
  }

  private static String name(int mutant) {
    return "mutant " + mutant;
  }

  private static boolean isRight(Example example, PrecedenceInMemory rules, Set<String> names) {
    return example.otherwise(rules.decide(example.facts(), names)).isEmpty();
  }
}
