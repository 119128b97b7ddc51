package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.principles.LimitMutants.Moved;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * An example stands on every cell that a slip in a principle would change: where a limit lies
 * elsewhere by a quarter, or by one where it counts or is 0; where a rule compares, words or grades
 * otherwise. What changes no kind or grade of verdict in any cell needs none.
 */
class MutantExamplesTest {

  private static final double QUARTER = 0.25;

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void an_example_notices_every_mutant(Card card) {
    List<Examples.Line> lines = Examples.of(AllCells.RULES, card).lines();
    assertThat(
            telling(card).stream()
                .filter(mutant -> lines.stream().allMatch(line -> isRight(mutant, line)))
                .map(Mutant::what))
        .as("mutants that no example notices")
        .isEmpty();
  }

  private static boolean isRight(Mutant mutant, Examples.Line line) {
    return Shorthand.of(mutant.verdict(line.readings())).equals(line.expect());
  }

  /** Return the mutants that change the kind or the grade of a verdict in some cell. */
  private static List<Mutant> telling(Card card) {
    Mutant right = Mutant.none(card);
    RuleMutants rules = new RuleMutants(card);
    List<Mutant> telling = new ArrayList<>(rules.grades());
    telling.addAll(rules.conditions());
    telling.removeIf(
        mutant ->
            AllCells.of(card).stream()
                .allMatch(world -> mutant.said(world).isAsGrave(right.said(world))));
    LimitMutants limits = new LimitMutants(card, QUARTER, 1);
    limits.all().stream()
        .filter(moved -> tells(limits, moved, right))
        .map(Moved::mutant)
        .forEach(telling::add);
    return telling;
  }

  private static boolean tells(LimitMutants limits, Moved moved, Mutant right) {
    Card other = moved.mutant().card();
    return limits.cells(moved).stream()
        .anyMatch(
            cells ->
                !moved
                    .mutant()
                    .said(PlainWorld.of(other, cells))
                    .isAsGrave(right.said(PlainWorld.of(right.card(), cells))));
  }
}
