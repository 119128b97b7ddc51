package org.bonewright.casefile.checking;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.reading.Problem;

/**
 * A JSON pointer taken apart, so that pointers can be put in order: step by step, steps that are
 * numbers as numbers.
 *
 * @param problem what the pointer belongs to
 * @param steps the steps of the pointer
 */
record PointerSteps(Problem problem, List<Step> steps) implements Comparable<PointerSteps> {

  /** One step: the position in a list, or −1 and the name of a field. */
  private record Step(int position, String name) implements Comparable<Step> {

    private static final int LONGEST_NUMBER = 9;

    private static final Comparator<Step> ORDER =
        Comparator.comparingInt(Step::position).thenComparing(Step::name);

    static Step of(String written) {
      boolean number =
          !written.isEmpty()
              && written.length() <= LONGEST_NUMBER
              && written.chars().allMatch(c -> c >= '0' && c <= '9');
      return number ? new Step(Integer.parseInt(written), "") : new Step(-1, written);
    }

    @Override
    public int compareTo(Step other) {
      return ORDER.compare(this, other);
    }
  }

  /** Return the steps of a problem's pointer. */
  static PointerSteps of(Problem problem) {
    return new PointerSteps(
        problem, Stream.of(problem.pointer().split("/", -1)).map(Step::of).toList());
  }

  @Override
  public int compareTo(PointerSteps other) {
    for (int i = 0; i < Math.min(steps.size(), other.steps.size()); i++) {
      int order = steps.get(i).compareTo(other.steps.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(steps.size(), other.steps.size());
  }
}
