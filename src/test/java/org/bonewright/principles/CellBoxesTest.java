package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.bonewright.principles.CellBoxes.Box;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class CellBoxesTest {

  private final CellBoxes table = new CellBoxes(3, 2, 4);

  @Test
  void a_whole_table_is_one_box() {
    BitSet all = new BitSet();
    all.set(0, 24);
    assertThat(table.of(all)).singleElement().extracting(Box::size).isEqualTo(24L);
  }

  @Test
  void a_cross_is_two_boxes_that_share_its_middle() {
    BitSet cross = new BitSet();
    for (int cell = 0; cell < 24; cell++) {
      int[] values = table.values(cell);
      cross.set(cell, values[0] == 1 || values[2] == 2);
    }
    assertThat(table.of(cross)).extracting(Box::size).containsExactlyInAnyOrder(8L, 6L);
  }

  @RepeatedTest(100)
  void boxes_hold_every_cell_and_no_other(RepetitionInfo round) {
    Random random = new Random(round.getCurrentRepetition());
    BitSet cells = new BitSet();
    for (int cell = 0; cell < 24; cell++) {
      cells.set(cell, random.nextInt(3) > 0);
    }
    List<Box> boxes = table.of(cells);
    BitSet held = new BitSet();
    for (int cell = 0; cell < 24; cell++) {
      int[] values = table.values(cell);
      held.set(cell, boxes.stream().anyMatch(box -> holds(box, values)));
    }
    assertThat(held).isEqualTo(cells);
  }

  private static boolean holds(Box box, int... values) {
    for (int axis = 0; axis < values.length; axis++) {
      if (!box.allowed().get(axis).get(values[axis])) {
        return false;
      }
    }
    return true;
  }
}
