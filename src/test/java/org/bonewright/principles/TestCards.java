package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.principles.Card.Limit;

/** Small cards for tests of the engine; the words that people read are left empty. */
final class TestCards {

  private TestCards() {}

  static Card card(String id, Map<String, String> needs, Map<String, Limit> limits) {
    return new Card(
        id,
        1,
        Card.SubjectKind.OPERATION,
        "",
        "",
        "",
        needs,
        limits,
        List.of(),
        Severity.CRITICAL,
        List.of(),
        true,
        "",
        new Card.Say("", Map.of(), ""),
        List.of(),
        "",
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        "",
        "",
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** Return a limit with a single value. */
  static Limit limit(String of, double value) {
    return new Limit(of, List.of(), Map.of("otherwise", value), "");
  }
}
