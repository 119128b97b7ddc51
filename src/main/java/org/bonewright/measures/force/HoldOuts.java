package org.bonewright.measures.force;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How constructs let go, each under a handful of the sets of assumptions: raising a load until
 * screws are pulled out one by one is slow. The sets are those in which the margin of the most
 * loaded screw stands at 5, 50 and 95 in a hundred of all sets.
 */
final class HoldOuts {

  private static final double[] PLACES = {0.05, 0.5, 0.95};

  private final Remembered<Task, Optional<List<LetGo>>> found =
      new Remembered<>(
          task -> {
            LettingGo construct = new LettingGo(task.sketch(), task.loads());
            List<Optional<LetGo>> all =
                task.draws().parallelStream().map(construct::under).toList();
            return all.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : Optional.of(all.stream().flatMap(Optional::stream).toList());
          });

  private record Task(Sketch sketch, List<Loading> loads, List<Draw> draws) {}

  /** Return how many sets are taken. */
  static int sets() {
    return PLACES.length;
  }

  /** Return how a construct lets go in each of the sets; empty where the model has no answer. */
  Optional<List<LetGo>> of(Forces.Known known, List<Loading> loads) {
    return found.of(new Task(known.sketch().bare(), loads, draws(known.answers())));
  }

  private static List<Draw> draws(Solutions.Answers<Solved> answers) {
    List<Integer> byMargin =
        IntStream.range(0, answers.samples().size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> answers.samples().get(i).margin()))
            .toList();
    return IntStream.range(0, PLACES.length)
        .map(i -> (int) Math.rint(PLACES[i] * (byMargin.size() - 1)))
        .mapToObj(place -> answers.draws().get(byMargin.get(place)))
        .toList();
  }

  /** Return the words of all modes that occur. */
  static Stream<String> words(List<LetGo> all) {
    return all.stream().map(LetGo::mode).distinct().map(LetGo.Mode::word);
  }
}
