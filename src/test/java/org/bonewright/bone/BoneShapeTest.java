package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Patient;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;
import org.bonewright.casefile.Side;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BoneShapeTest {

  private static final Set<BoneGrade> GOOD = Set.of(BoneGrade.GOOD);

  private static Section section(double at, Quantity outer, Quantity canal) {
    return new Section(Quantity.of(at), Optional.of(outer), Optional.of(canal));
  }

  private static Section section(double at, double outer, double canal) {
    return section(at, Quantity.of(outer), Quantity.of(canal));
  }

  private static BoneShape humerus(Section... sections) {
    return shape(Optional.of(Patient.Sex.MALE), GOOD, Optional.empty(), List.of(sections));
  }

  private static BoneShape shape(
      Optional<Patient.Sex> sex,
      Set<BoneGrade> grades,
      Optional<Quantity> length,
      List<Section> sections) {
    Bone bone =
        new Bone(
            BoneName.HUMERUS,
            Side.LEFT,
            length,
            Optional.empty(),
            sections,
            Optional.empty(),
            List.of(),
            List.of());
    return new BoneShape(bone, sex, grades);
  }

  private static void spans(Dimension dimension, double min, double max) {
    assertThat(dimension.min()).isCloseTo(min, within(1e-9));
    assertThat(dimension.max()).isCloseTo(max, within(1e-9));
  }

  @Nested
  class BetweenMeasuredSections {

    private final BoneShape bone = humerus(section(100, 20, 10), section(200, 30, 14));

    @Test
    void half_way_is_the_mean() {
      Dimension outer = bone.outerAt(150);
      spans(outer, 25, 25);
      assertThat(outer.assumed()).isFalse();
      assertThat(outer.basis()).isEqualTo("outer diameter between measured sections");
    }

    @Test
    void a_quarter_of_the_way_is_a_quarter_of_the_difference() {
      spans(bone.outerAt(125), 22.5, 22.5);
    }

    @Test
    void at_a_section_it_is_that_section() {
      spans(bone.outerAt(100), 20, 20);
      spans(bone.outerAt(200), 30, 30);
      assertThat(bone.outerAt(100).assumed()).isFalse();
    }

    @Test
    void beyond_the_last_one_it_is_a_tenth_either_way_and_assumed() {
      spans(bone.outerAt(50), 18, 22);
      spans(bone.outerAt(250), 27, 33);
      assertThat(bone.outerAt(50).assumed()).isTrue();
      assertThat(bone.outerAt(250).assumed()).isTrue();
    }

    @Test
    void the_order_in_the_file_does_not_matter() {
      BoneShape turned = humerus(section(200, 30, 14), section(100, 20, 10));
      assertThat(turned.outerAt(125)).isEqualTo(bone.outerAt(125));
    }

    @Test
    void ranges_are_interpolated_bound_by_bound() {
      BoneShape vague =
          humerus(
              section(100, new Quantity(18, 22), Quantity.of(10)),
              section(200, new Quantity(28, 36), Quantity.of(10)));
      spans(vague.outerAt(150), 23, 29);
    }

    @Test
    void a_section_without_the_diameter_is_passed_over() {
      Section canalOnly =
          new Section(Quantity.of(150), Optional.empty(), Optional.of(Quantity.of(8)));
      BoneShape three = humerus(section(100, 20, 10), canalOnly, section(200, 30, 14));
      spans(three.outerAt(150), 25, 25);
    }

    @Test
    void where_the_level_is_unknown_it_may_be_any_of_them_a_tenth_either_way() {
      BoneShape three = humerus(section(100, 20, 10), section(160, 22, 9), section(250, 30, 14));
      spans(three.outerAtShaft(), 18, 33);
      assertThat(three.outerAtShaft().assumed()).isTrue();
    }

    @Test
    void at_a_zone_it_is_that_of_its_middle_and_anything_where_the_level_is_unknown() {
      BoneShape bone = humerus(section(100, 20, 8), section(200, 24, 12));
      FractureZone at150 =
          new FractureZone(Optional.empty(), Optional.of(new Dimension(150, 150, false, "")));
      spans(bone.outerAt(at150), 22, 22);
      spans(bone.canalAt(at150), 10, 10);
      spans(bone.outerAt(FractureZone.UNKNOWN), 18, 26.4);
      spans(bone.canalAt(FractureZone.UNKNOWN), 7.2, 13.2);
      assertThat(bone.canalAt(FractureZone.UNKNOWN).assumed()).isTrue();
    }
  }

  @Nested
  class WithoutASection {

    @Test
    void the_outer_diameter_of_a_man_is_the_table_s_a_tenth_either_way() {
      // T1: 22 x 21 mm; 21 x 0.9 = 18.9, 22 x 1.1 = 24.2
      Dimension outer = humerus().outerAt(150);
      spans(outer, 18.9, 24.2);
      assertThat(outer.assumed()).isTrue();
      assertThat(outer.basis()).isEqualTo("usual outer diameter of an adult humerus");
      assertThat(humerus().outerAtShaft()).isEqualTo(outer);
    }

    @Test
    void without_the_sex_both_rows_of_the_table_count() {
      // women 18 x 0.9 = 16.2
      BoneShape any = shape(Optional.empty(), GOOD, Optional.empty(), List.of());
      spans(any.outerAt(150), 16.2, 24.2);
      assertThat(shape(Optional.of(Patient.Sex.OTHER), GOOD, Optional.empty(), List.of()).length())
          .isEqualTo(any.length());
    }

    @Test
    void the_length_is_the_table_s_unless_stated() {
      spans(humerus().length(), 290, 350);
      assertThat(humerus().length().assumed()).isTrue();
      BoneShape stated = shape(Optional.empty(), GOOD, Optional.of(Quantity.of(312)), List.of());
      spans(stated.length(), 312, 312);
      assertThat(stated.length().assumed()).isFalse();
    }
  }

  @Nested
  class Isthmus {

    @Test
    void is_the_narrowest_canal_measured() {
      Dimension isthmus =
          humerus(section(100, 20, 10), section(160, 22, 9), section(250, 30, 14)).isthmus();
      spans(isthmus, 9, 9);
      assertThat(isthmus.assumed()).isFalse();
    }

    @Test
    void takes_the_narrowest_of_ranges_bound_by_bound() {
      BoneShape bone =
          humerus(
              section(100, Quantity.of(20), new Quantity(8, 14)),
              section(160, Quantity.of(22), Quantity.of(10)));
      spans(bone.isthmus(), 8, 10);
    }

    @Test
    void is_the_table_s_where_none_is_measured() {
      spans(humerus().isthmus(), 10, 12);
      assertThat(humerus().isthmus().assumed()).isTrue();
    }

    @Test
    void may_be_wider_where_the_bone_may_be_poor() {
      // a third of the cortex lost on both sides: 12 + 2 x 0.3 x 6.0 = 15.6
      BoneShape poor =
          shape(
              Optional.of(Patient.Sex.MALE),
              EnumSet.allOf(BoneGrade.class),
              Optional.empty(),
              List.of());
      spans(poor.isthmus(), 10, 15.6);
    }
  }

  /** Two diameters, each a range with one value that it holds. */
  record Ends(Quantity near, Quantity far, double nearValue, double farValue) {}

  @Provide
  Arbitrary<Ends> ends() {
    Arbitrary<Double> diameter = Arbitraries.doubles().between(5, 60);
    Arbitrary<Double> share = Arbitraries.doubles().between(0, 1);
    Arbitrary<Quantity> range =
        Combinators.combine(diameter, diameter)
            .as((a, b) -> new Quantity(Math.min(a, b), Math.max(a, b)));
    return Combinators.combine(range, range, share, share)
        .as((near, far, a, b) -> new Ends(near, far, value(near, a), value(far, b)));
  }

  private static double value(Quantity range, double share) {
    return Math.min(range.max(), range.min() + share * (range.max() - range.min()));
  }

  private static BoneShape between(Quantity near, Quantity far) {
    return humerus(section(100, near, Quantity.of(1)), section(200, far, Quantity.of(1)));
  }

  @Property
  void an_interpolated_diameter_lies_between_its_neighbours(
      @ForAll("ends") Ends ends, @ForAll @DoubleRange(min = 100, max = 200) double level) {
    Dimension there =
        between(Quantity.of(ends.nearValue()), Quantity.of(ends.farValue())).outerAt(level);
    double least = Math.min(ends.nearValue(), ends.farValue());
    double most = Math.max(ends.nearValue(), ends.farValue());
    assertThat(there.min()).isBetween(least - 1e-9, most + 1e-9).isEqualTo(there.max());
  }

  @Property
  void a_range_at_the_sections_gives_a_range_that_holds_what_any_value_in_it_gives(
      @ForAll("ends") Ends ends, @ForAll @DoubleRange(min = 0, max = 300) double level) {
    Dimension wide = between(ends.near(), ends.far()).outerAt(level);
    Dimension narrow =
        between(Quantity.of(ends.nearValue()), Quantity.of(ends.farValue())).outerAt(level);
    assertThat(narrow.min()).isGreaterThanOrEqualTo(wide.min() - 1e-9);
    assertThat(narrow.max()).isLessThanOrEqualTo(wide.max() + 1e-9);
  }

  @Property
  void a_range_of_canals_gives_an_isthmus_that_holds_what_any_value_in_it_gives(
      @ForAll("ends") Ends ends) {
    Dimension wide = canals(ends.near(), ends.far()).isthmus();
    Dimension narrow =
        canals(Quantity.of(ends.nearValue()), Quantity.of(ends.farValue())).isthmus();
    assertThat(narrow.min()).isBetween(wide.min(), wide.max()).isEqualTo(narrow.max());
  }

  private static BoneShape canals(Quantity near, Quantity far) {
    return humerus(section(100, Quantity.of(70), near), section(200, Quantity.of(70), far));
  }
}
