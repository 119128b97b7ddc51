package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bonewright.casefile.FailureMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Profiles are explicit lists that leave out nothing that may be critical. */
class ProfilesTest {

  private static final RuleSet RULES = RuleSet.built();

  static Collection<Profile> profiles() {
    return RULES.profiles();
  }

  @Test
  void are_default_and_exam() {
    assertThat(profiles()).extracting(Profile::id).containsExactly("default", "exam");
    assertThat(RULES.usual().isDefault()).isTrue();
  }

  @Test
  void every_principle_is_in_default() {
    assertThat(RULES.usual().principles())
        .containsExactlyInAnyOrderElementsOf(RULES.cards().stream().map(Card::id).toList());
  }

  @Test
  void exam_leaves_something_out() {
    Profile exam = RULES.profile("exam").orElseThrow();
    assertThat(RULES.usual().principles()).containsAll(exam.principles());
    assertThat(exam.principles()).hasSizeLessThan(RULES.cards().size());
    assertThat(RULES.shown(exam).cards()).hasSameSizeAs(exam.principles());
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void a_list_names_principles_that_exist_once_and_under_their_family(Profile profile) {
    assertThat(profile.byFamily().values().stream().flatMap(List::stream)).doesNotHaveDuplicates();
    profile
        .byFamily()
        .forEach(
            (family, ids) ->
                assertThat(ids)
                    .as(profile.id() + " " + family)
                    .isNotEmpty()
                    .allSatisfy(
                        id ->
                            assertThat(RULES.card(id).map(RULES::family).map(Family::id))
                                .as(id)
                                .contains(family)));
  }

  /** Else a profile could better the exit code. */
  @ParameterizedTest
  @MethodSource("profiles")
  void shows_what_can_be_critical(Profile profile) {
    assertThat(profile.principles())
        .containsAll(
            RULES.cards().stream()
                .filter(card -> card.highest() == Severity.CRITICAL)
                .map(Card::id)
                .toList());
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void shows_what_the_table_of_failure_modes_names(Profile profile) {
    assertThat(profile.principles())
        .containsAll(
            Stream.of(FailureMode.values())
                .flatMap(mode -> RULES.failures().principlesOf(mode).stream())
                .filter(id -> RULES.card(id).isPresent())
                .toList());
  }

  @Test
  void what_nobody_may_accept_and_every_infection_that_can_be_critical_refuse_a_site() {
    Set<String> infection = Set.of("infection");
    assertThat(RULES.cards())
        .filteredOn(
            card ->
                !card.overridable()
                    || (card.highest() == Severity.CRITICAL
                        && infection.contains(RULES.family(card).id())))
        .isNotEmpty()
        .allSatisfy(card -> assertThat(card.siteMayNotChange()).as(card.id()).isPresent());
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_refusal_is_a_short_sentence(Card card) {
    assertThat(card.siteMayNotChange().stream())
        .allMatch(reason -> reason.endsWith(".") && reason.split("\\s+", -1).length <= 25);
  }
}
