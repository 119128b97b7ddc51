package org.bonewright.measures.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class MechanicsChangedTest {

  private static final CaseText AGAIN = CaseText.plated().redone("no-union-metal-intact");

  /** Graft round the plate that stays. */
  private static final CaseText GRAFT_ONLY =
      AGAIN
          .without("/plans/0/stages/0/reduction")
          .without("/plans/0/stages/0/compression")
          .at(
              "/plans/0/stages/0",
              "{fixation: [], removed: [], biology: [{kind: 'autograft-cancellous'}]}");

  private static String changed(CaseText text) {
    return Taken.of("mechanics-changed", text);
  }

  @Test
  void there_is_nothing_to_change_at_the_first_operation() {
    assertThat(changed(CaseText.plated())).isEqualTo("none: no operation before");
  }

  @Test
  void graft_round_a_plate_that_stays_changes_nothing() {
    assertThat(changed(GRAFT_ONLY)).isEqualTo("no fact");
  }

  @Test
  void a_nail_for_a_plate_changes_it() {
    CaseText text =
        AGAIN.at(
            "/plans/0/stages/0",
            "{fixation: [{id: 'nail-1', kind: 'nail', outerMm: 10, locking: 'static'}]}");
    assertThat(changed(text)).isEqualTo("yes fact");
  }

  @Test
  void a_plate_longer_by_a_tenth_changes_it() {
    assertThat(changed(AGAIN.at("/plans/0/stages/0/fixation/0", "{lengthMm: 180}")))
        .isEqualTo("yes fact");
  }

  @Test
  void a_plate_of_unknown_length_leaves_it_open() {
    assertThat(changed(AGAIN.without("/operations/0/fixation/0/lengthMm")))
        .isEqualTo("no or yes fact, ask plan-a/stage-1/changes");
  }

  @Test
  void graft_on_unchanged_mechanics_is_counted_at_the_next_operation() {
    CaseText twice =
        CaseText.of(GRAFT_ONLY.toString())
            .with(
                "{operations: "
                    + GRAFT_ONLY
                        .at("/plans/0/stages/0", "{id: 'op-2', day: 220}")
                        .tree()
                        .at("/plans/0/stages")
                        .toString()
                        .replaceFirst("^\\[", "[" + GRAFT_ONLY.tree().at("/operations/0") + ",")
                    + "}")
            .at("/operations/1", "{outcome: {result: 'failed', mode: 'no-union-metal-intact'}}");
    assertThat(Taken.of("grafts-without-mechanics-before", twice)).isEqualTo("1 fact");
    assertThat(Taken.of("grafts-without-mechanics-before", GRAFT_ONLY)).isEqualTo("0 fact");
    assertThat(read(twice).working()).isEqualTo("op-2");
    assertThat(read(GRAFT_ONLY).working()).isEqualTo("none");

    CaseText nailed =
        twice.at(
            "/operations/1",
            "{removed: null, fixation: [{id: 'n', kind: 'nail', outerMm: 10, locking: 'static'}]}");
    assertThat(Taken.of("grafts-without-mechanics-before", nailed)).isEqualTo("0 fact");
    assertThat(Taken.of("grafts-before", nailed)).isEqualTo("1 fact");

    CaseText silent = twice.at("/operations/1", "{biology: null}");
    assertThat(Taken.of("grafts-without-mechanics-before", silent))
        .isEqualTo("0–1 fact, ask op-2/biology");
    assertThat(read(silent).missing().get(0).question())
        .isEqualTo("Did op-2 add graft, and change nothing of the fixation?");
  }

  private static Reading read(CaseText text) {
    return Taken.reading("grafts-without-mechanics-before", Taken.subject(text.file(), "plan-a"));
  }
}
