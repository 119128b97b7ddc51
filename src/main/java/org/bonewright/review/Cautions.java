package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.principles.Card;
import org.bonewright.principles.Family;
import org.bonewright.principles.Profile;
import org.bonewright.principles.RuleSet;

/** What every output says of its own limits. */
public final class Cautions {

  private static final List<String> ALWAYS =
      List.of(
          "Decision support, not a decision, and not a medical device: it does not replace clinical"
              + " judgement, imaging, local protocols or licensed practice. It knows only what the"
              + " case file says; unknown is never counted as met. No surgeon has yet reviewed its"
              + " limits.");

  private Cautions() {}

  /** Return the cautions. */
  public static List<String> always() {
    return ALWAYS;
  }

  /** Return what the rule set does not look at, and what a profile does not show. */
  static List<String> notChecked(RuleSet rules, Profile profile) {
    List<String> lines = new ArrayList<>();
    int left = rules.cards().size() - profile.principles().size();
    if (left > 0) {
      lines.add(
          "The profile "
              + profile.id()
              + " leaves out "
              + left
              + " of "
              + rules.cards().size()
              + " principles: they are judged, and neither shown nor counted.");
    }
    List<String> used = rules.cards().stream().map(Card::id).toList();
    List<String> empty =
        rules.families().stream()
            .filter(family -> rules.cards().stream().noneMatch(c -> rules.family(c).equals(family)))
            .map(Family::title)
            .map(
                title ->
                    title.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + title.substring(1))
            .toList();
    if (!empty.isEmpty()) {
      lines.add(
          "This rule set has "
              + used.size()
              + " principles, none on: "
              + String.join("; ", empty)
              + ".");
    }
    return List.copyOf(lines);
  }
}
