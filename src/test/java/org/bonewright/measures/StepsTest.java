package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.ledger.Step;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/** Two operations and a plan: which of them finds the zone described anew, and how. */
class StepsTest {

  private static final CaseText TEXT =
      CaseText.bare()
          .with(
              """
              {injury: {pattern: 'spiral', zone: {fromMm: 150, toMm: 200}},
               operations: [{id: 'op-1', day: 10}, {id: 'op-2', day: 100}],
               plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]}
              """);

  private static List<Optional<Double>> lengths(CaseText text) {
    return new Steps(Taken.subject(text.file(), "plan-a"))
        .all().stream().map(StepsTest::length).toList();
  }

  private static Optional<Double> length(Step step) {
    return step.stated().flatMap(FractureZone::length).map(Dimension::max);
  }

  @Test
  void the_first_operation_finds_the_zone_of_the_injury_and_later_ones_what_it_left() {
    assertThat(lengths(TEXT))
        .containsExactly(Optional.of(50.0), Optional.empty(), Optional.empty());
    assertThat(new Steps(Taken.subject(TEXT.file(), "plan-a")).all())
        .extracting(step -> step.stated().isPresent())
        .containsExactly(true, false, false);
  }

  @Test
  void a_finding_that_describes_the_zone_counts_from_the_next_operation_on() {
    CaseText found =
        TEXT.with(
            "{findings: [{day: 50, zone: {fromMm: 160, toMm: 190}}, {day: 60, pain: 2},"
                + " {day: 150, zone: {fromMm: 170, toMm: 180}}]}");
    assertThat(lengths(found))
        .containsExactly(Optional.of(50.0), Optional.of(30.0), Optional.of(10.0));
    CaseText once = TEXT.with("{findings: [{day: 50, zone: {fromMm: 160, toMm: 190}}]}");
    assertThat(lengths(once))
        .containsExactly(Optional.of(50.0), Optional.of(30.0), Optional.empty());
  }

  @Test
  void a_finding_of_a_day_after_the_operation_was_not_known_to_it() {
    CaseText later = TEXT.with("{findings: [{day: 101, zone: {fromMm: 160, toMm: 190}}]}");
    assertThat(lengths(later))
        .containsExactly(Optional.of(50.0), Optional.empty(), Optional.of(30.0));
  }

  @Test
  void a_transverse_line_that_nobody_measured_is_a_few_millimetres_long() {
    CaseText unmeasured = TEXT.at("/injury", "{zone: null}");
    assertThat(lengths(unmeasured.at("/injury", "{pattern: 'transverse'}")))
        .startsWith(Optional.of(6.0));
    assertThat(lengths(unmeasured)).startsWith(Optional.empty());
    assertThat(lengths(TEXT.at("/injury", "{pattern: 'transverse'}")))
        .startsWith(Optional.of(50.0));
    // what was found before the operation goes before the injury
    CaseText found =
        unmeasured
            .at("/injury", "{pattern: 'transverse'}")
            .with("{findings: [{day: 5, pattern: 'wedge'}]}");
    assertThat(lengths(found)).startsWith(Optional.empty());
  }
}
