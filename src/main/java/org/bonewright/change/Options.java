package org.bonewright.change;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bonewright.shelf.Shelf;

/** What the moves of cards can draw into a plan: each way of each move once, the smallest first. */
final class Options {

  /** So many ways of a move are tried on a stage at the most. */
  private static final int MOST_WAYS = 40;

  private final Shelf shelf;

  /**
   * Make it.
   *
   * @param shelf where new implants come from
   */
  Options(Shelf shelf) {
    this.shelf = shelf;
  }

  /**
   * Return the ways of a move.
   *
   * @param subject the plan or stage that is to be drawn otherwise
   */
  List<Option> of(PlanInFile file, String move, String subject) {
    Setting setting = new Setting(file.root(), shelf);
    Stream<Option> stages =
        new StageMoves(setting)
            .of(move).stream()
                .flatMap(
                    ways ->
                        file.stages(subject).stream().flatMap(i -> ofStage(file, move, ways, i)));
    Stream<Option> plan =
        new PlanMoves(setting)
            .of(move).stream()
                .flatMap(ways -> ways.edits(file.plan()))
                .map(
                    edit -> new Option(file.planId(), move, edit.words(), file.with(edit.drawn())));
    return Stream.concat(plan, stages).toList();
  }

  private static Stream<Option> ofStage(PlanInFile file, String move, Move ways, int stage) {
    return ways.edits(file.stage(stage))
        .filter(edit -> !edit.drawn().equals(file.stage(stage)))
        .limit(MOST_WAYS)
        .map(
            edit ->
                new Option(
                    file.stageId(stage), move, edit.words(), file.withStage(stage, edit.drawn())));
  }

  /** Return the names of the moves that can be drawn. */
  static Set<String> names() {
    Set<String> names = new TreeSet<>(StageMoves.names());
    names.addAll(PlanMoves.names());
    return names;
  }
}
