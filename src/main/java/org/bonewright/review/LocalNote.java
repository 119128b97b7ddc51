package org.bonewright.review;

import java.util.List;
import java.util.Optional;

/**
 * What stands beside a verdict where a site has changed something.
 *
 * @param changes what of the site holds for it
 * @param byPublished what the verdict would be by the published limits and severities, where it
 *     would be another
 */
public record LocalNote(List<LocalChange> changes, Optional<String> byPublished) {

  /** Return it in one clause, such as may stand in brackets. */
  public String inWords() {
    String here = String.join("; ", changes.stream().map(LocalChange::inWords).toList());
    String there = byPublished.map(v -> "by the published limits: " + v).orElse("");
    return here + (here.isEmpty() || there.isEmpty() ? "" : "; ") + there;
  }
}
