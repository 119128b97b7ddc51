package org.bonewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LabelPlacerTest {

  private static final TextBox AREA = new TextBox(0, 0, 400, 200);

  private static List<TextBox> boxes(LabelPlacer placer) {
    return placer.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(mark -> TextBox.of((Mark.Label) mark))
        .toList();
  }

  @Test
  void a_text_stands_above_its_mark_where_there_is_room() {
    LabelPlacer placer = new LabelPlacer(AREA);
    placer.put(200, 100, 6, "7", 10, false);

    TextBox box = boxes(placer).get(0);
    assertThat(box.bottom()).isLessThan(100 - 6);
    assertThat((box.left() + box.right()) / 2)
        .isCloseTo(200, org.assertj.core.api.Assertions.within(0.01));
  }

  @Test
  void texts_of_marks_in_one_place_do_not_overlap() {
    LabelPlacer placer = new LabelPlacer(AREA);
    for (int i = 0; i < 12; i++) {
      placer.put(200, 100, 6, "12: 45–60 %", 10, true);
    }

    List<TextBox> boxes = boxes(placer);
    assertThat(boxes).hasSize(12);
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j))).isFalse();
      }
    }
  }

  @Test
  void a_text_stays_within_its_area() {
    LabelPlacer placer = new LabelPlacer(AREA);
    placer.put(1, 1, 6, "op-1", 10, false);

    assertThat(boxes(placer)).allMatch(box -> box.within(0, 0, 400, 200));
  }
}
