package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain.Numbers;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class NumberLineTest {

  private static final double INFINITY = Double.POSITIVE_INFINITY;
  private static final Numbers LENGTH = (Numbers) Definition.millimetres();
  private static final Numbers SIGNED = (Numbers) Definition.signedMillimetres();
  private static final Numbers PERCENT = (Numbers) Definition.percent();
  private static final Numbers COUNT = (Numbers) Definition.count(1);
  private static final Numbers HALVES = (Numbers) Definition.count(0.5);

  private static List<String> shown(List<Cell> cells) {
    return cells.stream().map(Cell::shown).toList();
  }

  private static NumberLine line(Numbers domain, Double... limits) {
    return new NumberLine(domain, List.of(limits));
  }

  @Nested
  class Cuts {

    @Test
    void a_length_at_each_limit_and_between() {
      assertThat(shown(line(LENGTH, 5.0, 2.0).all()))
          .containsExactly("between 0 and 2", "2", "between 2 and 5", "5", "above 5");
    }

    @Test
    void nothing_where_there_is_no_limit() {
      assertThat(shown(line(LENGTH).all())).containsExactly("above 0");
    }

    @Test
    void a_number_without_ends_once() {
      assertThat(shown(line(SIGNED, 0.0).all())).containsExactly("below 0", "0", "above 0");
    }

    @Test
    void only_once_where_two_limits_are_equal() {
      assertThat(shown(line(LENGTH, 2.0, 2.0).all()))
          .containsExactly("between 0 and 2", "2", "above 2");
    }

    @Test
    void nothing_at_limits_that_do_not_hold_here_or_lie_outside() {
      assertThat(shown(line(PERCENT, Double.NaN, -1.0, 101.0, 75.0).all()))
          .containsExactly("between 0 and 75", "75", "between 75 and 100");
    }

    @Test
    void a_limit_at_either_end_into_a_cell_of_its_own() {
      assertThat(shown(line(PERCENT, 0.0, 100.0).all()))
          .containsExactly("0", "between 0 and 100", "100");
    }

    @Test
    void a_count_without_empty_cells() {
      assertThat(shown(line(COUNT, 1.0, 2.0).all())).containsExactly("0", "1", "2", "above 2");
      assertThat(line(COUNT, 1.0, 2.0).all()).extracting(Cell::number).startsWith(0.0, 1.0, 2.0);
    }

    @Test
    void a_count_by_a_limit_that_no_count_can_be() {
      assertThat(shown(line(COUNT, 1.5).all())).containsExactly("between 0 and 1.5", "above 1.5");
    }

    @Test
    void halves_between_whole_limits() {
      assertThat(line(HALVES, 2.0, 3.0).touched(2, 3))
          .extracting(Cell::number)
          .containsExactly(2.0, 2.5, 3.0);
    }
  }

  @Nested
  class Touches {

    private final NumberLine line = line(LENGTH, 2.0, 5.0);

    @Test
    void one_cell_with_a_known_number() {
      assertThat(shown(line.touched(1, 1))).containsExactly("between 0 and 2");
      assertThat(shown(line.touched(2, 2))).containsExactly("2");
      assertThat(shown(line.touched(7, 7))).containsExactly("above 5");
    }

    @Test
    void a_cut_only_if_the_range_reaches_it() {
      assertThat(shown(line.touched(1, 2))).containsExactly("between 0 and 2", "2");
      assertThat(shown(line.touched(1, Math.nextDown(2.0)))).containsExactly("between 0 and 2");
      assertThat(shown(line.touched(Math.nextUp(2.0), 3))).containsExactly("between 2 and 5");
    }

    @Test
    void everything_with_an_open_range() {
      assertThat(line.touched(0, INFINITY)).isEqualTo(line.all());
    }

    @Test
    void no_cell_of_a_count_between_two_counts() {
      assertThat(shown(line(COUNT, 1.0, 4.0).touched(1, 1.5))).containsExactly("1");
      assertThat(shown(line(COUNT, 1.0, 4.0).touched(3.5, 4))).containsExactly("4");
    }

    @Test
    void the_first_cell_with_zero_of_either_sign() {
      assertThat(shown(line.touched(-0.0, 0.0))).containsExactly("between 0 and 2");
      assertThat(shown(line(LENGTH, 0.0).touched(-0.0, -0.0))).containsExactly("0");
    }
  }

  /** A domain, limits, and values that it can have: at limits, next to them, and anywhere. */
  record Cut(Numbers domain, List<Double> limits, List<Double> values) {

    NumberLine line() {
      return new NumberLine(domain, limits);
    }
  }

  @Provide
  Arbitrary<Cut> cuts() {
    Arbitrary<Numbers> domains =
        Arbitraries.of(LENGTH, SIGNED, PERCENT, COUNT, HALVES, new Numbers("1", "", 0, 5, 1));
    Arbitrary<Double> limit =
        Arbitraries.integers().between(-8, 480).map(quarters -> quarters / 4.0);
    Arbitrary<Double> offset =
        Arbitraries.of(0.0, 0.0, 0.25, -0.25, 1.0, -1.0, Double.MIN_VALUE, -Double.MIN_VALUE);
    return Combinators.combine(domains, limit.list().ofMaxSize(4), limit.list().ofSize(6), offset)
        .as(
            (domain, limits, anywhere, by) -> {
              Set<Double> values = new LinkedHashSet<>(anywhere);
              limits.forEach(
                  at -> values.addAll(List.of(at, Math.nextUp(at), Math.nextDown(at), at + by)));
              return new Cut(
                  domain, limits, values.stream().filter(v -> Draws.allows(domain, v)).toList());
            });
  }

  private static boolean holds(Cell cell, double value, List<Cell> all) {
    Cell.Span span = (Cell.Span) cell;
    if (span.low() == span.high()) {
      return value == span.low();
    }
    boolean inside = span.low() < value && value < span.high();
    boolean atEnd = value == span.low() || value == span.high();
    boolean endIsCut =
        all.stream()
            .anyMatch(c -> c instanceof Cell.Span s && s.low() == value && s.high() == value);
    return inside || (atEnd && !endIsCut); // an end that is no limit is an end of the domain
  }

  @Property(tries = 2000, seed = "20260101")
  void every_possible_value_lies_in_one_cell(@ForAll("cuts") Cut cut) {
    List<Cell> all = cut.line().all();
    for (double value : cut.values()) {
      assertThat(all.stream().filter(cell -> holds(cell, value, all))).as("%s", value).hasSize(1);
    }
  }

  @Property(tries = 2000, seed = "20260101")
  void a_known_value_touches_the_cell_that_holds_it(@ForAll("cuts") Cut cut) {
    List<Cell> all = cut.line().all();
    for (double value : cut.values()) {
      assertThat(cut.line().touched(value, value))
          .singleElement()
          .matches(cell -> holds(cell, value, all));
    }
  }

  @Property(tries = 2000, seed = "20260101")
  void a_range_touches_the_cells_of_the_values_inside(@ForAll("cuts") Cut cut) {
    List<Double> values = cut.values().stream().sorted().toList();
    if (!values.isEmpty()) {
      double min = values.get(0);
      double max = values.get(values.size() - 1);
      List<Cell> touched = cut.line().touched(min, max);
      Set<Cell> ofValues = new LinkedHashSet<>();
      values.forEach(value -> ofValues.addAll(cut.line().touched(value, value)));
      assertThat(touched).containsAll(ofValues).isSubsetOf(cut.line().all());
      assertThat(touched.get(0)).isEqualTo(new ArrayList<>(ofValues).get(0));
    }
  }

  @Property(tries = 2000, seed = "20260101")
  void every_cell_stands_for_itself_with_a_value_that_is_possible(@ForAll("cuts") Cut cut) {
    List<Cell> all = cut.line().all();
    assertThat(all).isNotEmpty().doesNotHaveDuplicates();
    for (Cell cell : all) {
      assertThat(Draws.allows(cut.domain(), cell.number())).as("%s", cell).isTrue();
      assertThat(holds(cell, cell.number(), all)).as("%s", cell).isTrue();
      assertThat(cut.line().touched(cell.number(), cell.number())).containsExactly(cell);
    }
  }

  @Property(tries = 2000, seed = "20260101")
  void no_value_lies_on_another_side_of_a_limit_than_the_value_that_stands_for_it(
      @ForAll("cuts") Cut cut) {
    for (double value : cut.values()) {
      double standing = cut.line().touched(value, value).get(0).number();
      for (double limit : cut.limits()) {
        assertThat(Double.compare(standing + 0.0, limit + 0.0))
            .isEqualTo(Double.compare(value + 0.0, limit + 0.0));
      }
    }
  }
}
