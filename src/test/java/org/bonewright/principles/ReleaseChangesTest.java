package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.bonewright.principles.RuleChanges.Changed;
import org.bonewright.principles.RuleChanges.Moved;
import org.bonewright.principles.RuleChanges.Turned;
import org.bonewright.principles.RuleChanges.Version;
import org.junit.jupiter.api.Test;

class ReleaseChangesTest {

  private static final String VOLUME = "graft-volume-sufficient";
  private static final Released PRESENT = Released.present();
  private static final ReleaseChanges COMPARED = new ReleaseChanges(RuleSet.built());

  @Test
  void a_limit_that_moves_is_told_with_the_numbers_between_and_both_verdicts() {
    Changed changed = onlyOne(with(principle -> limit(principle, "enough", 70)));

    assertThat(changed.principle()).isEqualTo(VOLUME);
    assertThat(changed.limits())
        .containsExactly(new Moved("share of the defect that the graft fills", "70 %", "80 %"));
    assertThat(changed.given())
        .contains("share of the defect that the graft fills at least 70 % and below 80 %");
    assertThat(changed.cells())
        .containsExactly(new Turned("whatever else is read", "met", "unmet (minor)"));
  }

  @Test
  void a_grade_that_changes_is_told_without_a_limit() {
    Changed changed =
        onlyOne(
            with(
                principle ->
                    rules(
                        principle,
                        principle.rules().stream()
                            .map(rule -> rule.replace("\"minor\"", "\"note\""))
                            .toList())));

    assertThat(changed.limits()).isEmpty();
    assertThat(changed.cells())
        .isNotEmpty()
        .allSatisfy(
            cell -> {
              assertThat(cell.was()).isEqualTo("unmet (note)");
              assertThat(cell.is()).isEqualTo("unmet (minor)");
            });
  }

  @Test
  void what_is_written_otherwise_and_judges_the_same_is_not_told() {
    assertThat(
            changes(
                with(
                    principle ->
                        rules(
                            principle,
                            principle.rules().stream()
                                .map(rule -> rule.replace("rule \"", "rule \"once "))
                                .toList()))))
        .isEmpty();
  }

  @Test
  void a_principle_that_is_new_or_gone_is_named() {
    Map<String, ReleasedPrinciple> fewer = new TreeMap<>(PRESENT.principles());
    ReleasedPrinciple taken = fewer.remove(VOLUME);
    Released before = new Released("0.0.1", fewer);

    assertThat(COMPARED.of(PRESENT, List.of(before)).versions())
        .singleElement()
        .extracting(Version::added)
        .isEqualTo(List.of(VOLUME));
    assertThat(COMPARED.of(before, List.of(PRESENT)).versions())
        .singleElement()
        .extracting(Version::gone)
        .isEqualTo(List.of(taken == null ? "" : taken.title()));
  }

  private static Changed onlyOne(Released before) {
    List<Changed> changes = changes(before);
    assertThat(changes).hasSize(1);
    return changes.get(0);
  }

  private static List<Changed> changes(Released before) {
    return COMPARED.of(PRESENT, List.of(before)).versions().get(0).changed();
  }

  private static Released with(UnaryOperator<ReleasedPrinciple> change) {
    Map<String, ReleasedPrinciple> principles = new HashMap<>(PRESENT.principles());
    principles.computeIfPresent(VOLUME, (id, principle) -> change.apply(principle));
    return new Released("0.0.1", principles);
  }

  private static ReleasedPrinciple rules(ReleasedPrinciple principle, List<String> rules) {
    return new ReleasedPrinciple(
        principle.title(), principle.needs(), principle.words(), principle.limits(), rules);
  }

  private static ReleasedPrinciple limit(ReleasedPrinciple principle, String name, double value) {
    Map<String, Card.Limit> limits = new TreeMap<>(principle.limits());
    limits.computeIfPresent(
        name,
        (n, limit) ->
            new Card.Limit(limit.of(), limit.by(), Map.of(Card.Limit.OTHERWISE, value), ""));
    return new ReleasedPrinciple(
        principle.title(), principle.needs(), principle.words(), limits, principle.rules());
  }
}
