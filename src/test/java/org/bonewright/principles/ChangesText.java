package org.bonewright.principles;

import java.util.List;
import java.util.stream.Collectors;
import org.bonewright.principles.RuleChanges.Changed;
import org.bonewright.principles.RuleChanges.Moved;
import org.bonewright.principles.RuleChanges.Turned;
import org.bonewright.principles.RuleChanges.Version;
import tools.jackson.databind.json.JsonMapper;

/** Changes of the rules as files: for the program, and as a page to read. */
final class ChangesText {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final String MADE =
      "Made by ChangesTest (-Dtest=ChangesTest -Dbless=true); not changed by hand.";

  private ChangesText() {}

  /** Return them as the program reads them. */
  static String yaml(RuleChanges changes) {
    StringBuilder text = new StringBuilder("# " + MADE + "\n");
    text.append(changes.versions().isEmpty() ? "versions: []\n" : "versions:\n");
    for (Version version : changes.versions()) {
      text.append("  - version: ").append(version.version()).append('\n');
      text.append("    before: ").append(version.before()).append('\n');
      text.append("    added: ").append(quoted(version.added())).append('\n');
      text.append("    gone: ").append(quoted(version.gone())).append('\n');
      text.append(version.changed().isEmpty() ? "    changed: []\n" : "    changed:\n");
      for (Changed changed : version.changed()) {
        text.append("      - principle: ").append(changed.principle()).append('\n');
        text.append("        title: ").append(quoted(changed.title())).append('\n');
        text.append("        reads: ").append(quoted(changed.reads())).append('\n');
        text.append(changed.limits().isEmpty() ? "        limits: []\n" : "        limits:\n");
        changed
            .limits()
            .forEach(limit -> text.append("          - ").append(quoted(limit)).append('\n'));
        text.append("        given: ").append(quoted(changed.given())).append('\n');
        text.append("        cells:\n");
        changed
            .cells()
            .forEach(cell -> text.append("          - ").append(quoted(cell)).append('\n'));
      }
    }
    return text.toString();
  }

  private static String quoted(Object value) {
    return MAPPER.writeValueAsString(value);
  }

  /** Return them as a page. */
  static String page(RuleChanges changes) {
    StringBuilder text = new StringBuilder("# What changed in the rules\n\n");
    text.append("<!-- ").append(MADE).append(" -->\n\n");
    text.append(
        """
        Told by what it does to verdicts: every way in which the readings of a principle can fall
        was judged by both versions. Readings that are not named make no difference.
        """);
    if (changes.versions().isEmpty()) {
      text.append("\nNothing judges otherwise than in the first version that was written down.\n");
    }
    changes.versions().forEach(version -> text.append(section(version)));
    return text.toString();
  }

  private static String section(Version version) {
    StringBuilder text = new StringBuilder();
    text.append("\n## Version ").append(version.version());
    text.append(", against ").append(version.before()).append("\n");
    if (version.isEmpty()) {
      text.append("\nNo verdict is another one.\n");
    }
    if (!version.added().isEmpty()) {
      text.append("\nNew: ").append(String.join(", ", version.added())).append(".\n");
    }
    if (!version.gone().isEmpty()) {
      text.append("\nNo longer there: ").append(String.join(", ", version.gone())).append(".\n");
    }
    version.changed().forEach(changed -> text.append(part(changed)));
    return text.toString();
  }

  private static String part(Changed changed) {
    StringBuilder text = new StringBuilder();
    text.append("\n### ").append(changed.title());
    text.append(" (`").append(changed.principle()).append("`)\n");
    if (!changed.reads().isEmpty()) {
      text.append("\nIt ").append(String.join("; it ", changed.reads())).append(".\n");
    }
    if (!changed.limits().isEmpty()) {
      text.append("\n| limit of | was | is |\n|---|---|---|\n");
      text.append(changed.limits().stream().map(ChangesText::row).collect(Collectors.joining()));
    }
    if (!changed.given().isEmpty()) {
      text.append("\nIn all of these: ").append(String.join("; ", changed.given())).append(".\n");
    }
    text.append("\n| with | was | is |\n|---|---|---|\n");
    text.append(changed.cells().stream().map(ChangesText::row).collect(Collectors.joining()));
    return text.toString();
  }

  private static String row(Moved moved) {
    return row(List.of(moved.what(), moved.was(), moved.is()));
  }

  private static String row(Turned turned) {
    return row(List.of(turned.where(), turned.was(), turned.is()));
  }

  private static String row(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }
}
