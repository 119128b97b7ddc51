package org.bonewright.mechanics.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Vectors, groups of six and axes, worked out by hand. */
class VectorsByHandTest {

  private static final Vector A = new Vector(1, 2, 3);
  private static final Vector B = new Vector(4, -5, 6);

  @Test
  void vectors_add_and_multiply_part_by_part() {
    assertThat(A.plus(B)).isEqualTo(new Vector(5, -3, 9));
    assertThat(A.minus(B)).isEqualTo(new Vector(-3, 7, -3));
    assertThat(A.times(2)).isEqualTo(new Vector(2, 4, 6));
    // 4 - 10 + 18
    assertThat(A.dot(B)).isEqualTo(12);
    // 2 6 - 3 (-5), 3 4 - 1 6, 1 (-5) - 2 4
    assertThat(A.cross(B)).isEqualTo(new Vector(27, 6, -13));
    assertThat(new Vector(2, 3, 6).length()).isEqualTo(7);
  }

  @Test
  void a_vector_without_length_has_no_direction() {
    assertThat(new Vector(0, 3, 4).unit()).isEqualTo(new Vector(0, 3 * (1 / 5.0), 4 * (1 / 5.0)));
    assertThatThrownBy(() -> new Vector(0, 0, 0).unit()).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> new Vector(Double.NaN, 0, 0).unit())
        .isInstanceOf(ArithmeticException.class);
  }

  @Test
  void six_numbers_add_and_multiply_one_by_one() {
    Six one = Six.of(1, 2, 3, 4, 5, 6);
    Six two = Six.of(6, 5, 4, 3, 2, 1);
    assertThat(one.plus(two)).isEqualTo(Six.of(7, 7, 7, 7, 7, 7));
    assertThat(one.minus(two)).isEqualTo(Six.of(-5, -3, -1, 1, 3, 5));
    assertThat(one.times(3)).isEqualTo(Six.of(3, 6, 9, 12, 15, 18));
    // 6 + 10 + 12 + 12 + 10 + 6
    assertThat(one.dot(two)).isEqualTo(56);
    for (int i = 0; i < 6; i++) {
      assertThat(one.get(i)).isEqualTo(i + 1);
      assertThat(Six.unit(i).dot(one)).isEqualTo(i + 1);
      assertThat(one.values()[i]).isEqualTo(i + 1);
    }
    assertThatThrownBy(() -> one.get(6)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  @Test
  void axes_stand_square_to_each_other_with_the_second_as_near_as_it_can_be() {
    // along z; what leans by (3, 4, 9) leaves 3 and 4 across it
    Axes axes = Axes.of(new Vector(0, 0, 2), new Vector(3, 4, 9));
    assertThat(axes.along()).isEqualTo(new Vector(0, 0, 1));
    assertThat(axes.away().minus(new Vector(0.6, 0.8, 0)).length()).isCloseTo(0, within(1e-12));
    assertThat(axes.across().minus(new Vector(-0.8, 0.6, 0)).length()).isCloseTo(0, within(1e-12));
    // 2 along, 5 away, 10 across
    assertThat(axes.combine(2, 5, 10).minus(new Vector(-5, 10, 2)).length())
        .isCloseTo(0, within(1e-12));
  }

  @Test
  void a_frame_refuses_a_link_between_nodes_that_are_no_pair() {
    Frame frame = new Frame();
    int only = frame.node(new Vector(0, 0, 0));
    frame.node(new Vector(0, 0, 1));
    Six springs = Six.of(1, 1, 1, 1, 1, 1);
    Vector at = new Vector(0, 0, 0);
    for (int[] pair : new int[][] {{only, only}, {-1, 1}, {0, 2}}) {
      Link link = Link.springs(pair[0], pair[1], at, Axes.SPACE, springs);
      assertThatThrownBy(() -> frame.link(link)).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
