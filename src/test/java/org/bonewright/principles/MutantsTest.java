package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.bonewright.principles.LimitMutants.Moved;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every way in which a principle could be slightly wrong shows in some cell: a comparison turned or
 * made strict, a word the wrong way round, a grade changed, a limit moved. What is left out shows
 * too: {@link DeadPartsTest}.
 */
class MutantsTest {

  /** So little that no two limits of a card lie as near. */
  private static final double LITTLE = 0.001;

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_mutant_of_a_rule_changes_a_cell(Card card) {
    Mutant right = Mutant.none(card);
    RuleMutants mutants = new RuleMutants(card);
    assertThat(
            Stream.concat(mutants.conditions().stream(), mutants.grades().stream())
                .filter(
                    mutant ->
                        AllCells.of(card).stream()
                            .allMatch(world -> mutant.said(world).equals(right.said(world))))
                .map(Mutant::what))
        .as("mutants that change nothing")
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_limit_that_is_moved_a_little_changes_a_cell(Card card) {
    LimitMutants limits = new LimitMutants(card, LITTLE, LITTLE);
    assertThat(
            limits.all().stream()
                .filter(
                    moved ->
                        limits.cells(moved).stream().noneMatch(cells -> tells(card, moved, cells)))
                .map(moved -> moved.mutant().what()))
        .as("limits that change nothing where they are moved")
        .isEmpty();
  }

  private static boolean tells(Card card, Moved moved, Map<String, Cell> cells) {
    Mutant mutant = moved.mutant();
    return !mutant
        .said(PlainWorld.of(mutant.card(), cells))
        .equals(Mutant.none(card).said(PlainWorld.of(card, cells)));
  }
}
