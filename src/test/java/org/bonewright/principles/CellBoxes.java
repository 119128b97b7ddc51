package org.bonewright.principles;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Joins cells of a table to as few boxes as a greedy search finds: a box allows some values of each
 * axis, and all its cells are among those to be joined. Boxes may overlap.
 */
final class CellBoxes {

  private final int[] sizes;
  private final int[] weights;

  /**
   * Prepare a table.
   *
   * @param sizes how many values each axis has
   */
  CellBoxes(int... sizes) {
    this.sizes = sizes.clone();
    this.weights = new int[sizes.length];
    int weight = 1;
    for (int i = sizes.length - 1; i >= 0; i--) {
      weights[i] = weight;
      weight = Math.multiplyExact(weight, sizes[i]);
    }
  }

  /** Return the values of a cell by its number. */
  int[] values(int cell) {
    int[] values = new int[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      values[i] = cell / weights[i] % sizes[i];
    }
    return values;
  }

  /**
   * Some cells.
   *
   * @param allowed the values that are allowed, by axis
   */
  record Box(List<BitSet> allowed) {

    /** Return how many cells there are. */
    long size() {
      return allowed.stream().mapToLong(BitSet::cardinality).reduce(1, (a, b) -> a * b);
    }
  }

  /** Return boxes that together hold these cells and no others, the largest first. */
  List<Box> of(BitSet cells) {
    List<Box> boxes = new ArrayList<>();
    BitSet open = (BitSet) cells.clone();
    while (!open.isEmpty()) {
      Box box = grown(open.nextSetBit(0), cells);
      boxes.add(box);
      numbers(box).forEach(open::clear);
    }
    boxes.sort(Comparator.comparing(Box::size).reversed());
    return needed(boxes);
  }

  private Box grown(int start, BitSet cells) {
    int[] values = values(start);
    List<BitSet> allowed = new ArrayList<>();
    for (int value : values) {
      BitSet one = new BitSet();
      one.set(value);
      allowed.add(one);
    }
    for (int axis = 0; axis < sizes.length; axis++) {
      for (int value = 0; value < sizes[axis]; value++) {
        if (!allowed.get(axis).get(value)) {
          List<BitSet> slice = new ArrayList<>(allowed);
          BitSet one = new BitSet();
          one.set(value);
          slice.set(axis, one);
          if (numbers(new Box(slice)).stream().allMatch(cells::get)) {
            allowed.get(axis).set(value);
          }
        }
      }
    }
    return new Box(List.copyOf(allowed));
  }

  /** Leave out boxes whose cells all lie in others. */
  private List<Box> needed(List<Box> boxes) {
    List<Box> needed = new ArrayList<>(boxes);
    for (int i = boxes.size() - 1; i >= 0; i--) {
      Box box = boxes.get(i);
      List<Box> others = new ArrayList<>(needed);
      others.remove(box);
      BitSet rest = new BitSet();
      others.forEach(other -> numbers(other).forEach(rest::set));
      if (numbers(box).stream().allMatch(rest::get)) {
        needed.remove(box);
      }
    }
    return needed;
  }

  private List<Integer> numbers(Box box) {
    List<Integer> numbers = List.of(0);
    for (int axis = 0; axis < sizes.length; axis++) {
      List<Integer> longer = new ArrayList<>();
      int weight = weights[axis];
      for (int number : numbers) {
        box.allowed().get(axis).stream().forEach(value -> longer.add(number + value * weight));
      }
      numbers = longer;
    }
    return numbers;
  }
}
