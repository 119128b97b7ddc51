package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The files of the rules belong together and keep to one form. */
class RuleFilesTest {

  private static final RuleFiles FILES = RuleFiles.built();
  private static final Path FOLDER = Path.of("rules");
  private static final Pattern ID = Pattern.compile("(?m)^(?:id|principle): (\\S+)\\s*$");

  @Test
  void every_principle_has_a_card_a_rule_and_examples_of_one_name() throws IOException {
    List<String> files = files();
    List<String> wanted = new ArrayList<>();
    for (String file : files) {
      if (file.indexOf('/') > 0 && !file.startsWith("precedence/")) {
        String name = file.replaceAll("(\\.examples)?\\.yaml$|\\.drl$", "");
        boolean promise = AllCells.RULES.promise(name.substring(name.indexOf('/') + 1)).isPresent();
        wanted.addAll(
            promise
                ? List.of(name + ".yaml")
                : List.of(name + ".yaml", name + ".drl", name + ".examples.yaml"));
      }
    }
    assertThat(wanted).isNotEmpty();
    assertThat(files).containsAll(wanted);
  }

  private static List<String> files() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
          .toList();
    }
  }

  @Test
  void a_card_has_the_id_of_its_file() {
    for (Card card : AllCells.cards()) {
      String path = AllCells.RULES.family(card).id() + "/" + card.id() + ".yaml";
      Matcher id = ID.matcher(FILES.read(path));
      assertThat(id.find()).as(path).isTrue();
      assertThat(id.group(1)).isEqualTo(card.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
    }
  }

  @Test
  void every_rule_is_compiled() {
    int written =
        FILES.paths(".drl").stream()
            .mapToInt(path -> FILES.read(path).split("(?m)^\\s*rule \"", -1).length - 1)
            .sum();
    assertThat(AllCells.RULES.rules().size()).isEqualTo(written);
  }

  /** Whatever is not of the one form would escape every other check. */
  @Test
  void every_rule_of_a_principle_has_the_one_form() {
    for (String path : RuleText.files(FILES)) {
      String text = FILES.read(path);
      List<RuleText> rules = RuleText.of(path, text);
      assertThat(rules).as(path).hasSize(text.split("\\brule\\b(?=\\s*\")", -1).length - 1);
      assertThat(rules)
          .allSatisfy(
              rule -> {
                assertThat(rule.applies() || rule.unmet()).as(rule.name()).isTrue();
                assertThat(rule.principle()).as(rule.name()).isNotEmpty();
              });
    }
  }

  @Test
  void a_file_declares_nothing_but_rules() {
    for (String path : RuleText.files(FILES)) {
      String folder = path.substring(0, path.indexOf('/'));
      String bare = FILES.read(path).replaceAll("(?m)^//.*$", "");
      assertThat(bare.substring(0, bare.indexOf("\nrule ")).strip())
          .as(path)
          .isEqualTo(
              """
              package org.bonewright.rules.%s;

              import org.bonewright.principles.World;
              global org.bonewright.principles.Verdicts verdicts;"""
                  .formatted(folder.replace('-', '_')));
    }
  }

  @Test
  void the_package_is_the_folder() {
    for (String path : FILES.paths(".drl")) {
      assertThat(FILES.read(path))
          .as(path)
          .startsWith(
              "package org.bonewright.rules." + path.replaceAll("/.*", "").replace('-', '_'));
    }
  }

  @Test
  void a_file_names_only_its_own_principle() {
    for (RuleText rule : RuleText.all(FILES)) {
      assertThat(rule.principle()).as(rule.name()).isEqualTo(rule.id());
      assertThat(rule.name()).startsWith(rule.id() + " ");
    }
  }

  @Test
  void no_two_rules_have_one_name() {
    assertThat(RuleText.all(FILES)).extracting(RuleText::name).doesNotHaveDuplicates();
  }

  @Test
  void every_principle_says_when_it_applies_and_when_it_is_unmet() {
    for (Card card : AllCells.cards()) {
      List<RuleText> rules =
          RuleText.all(FILES).stream().filter(rule -> rule.id().equals(card.id())).toList();
      assertThat(rules).as(card.id()).anyMatch(RuleText::applies).anyMatch(RuleText::unmet);
    }
  }
}
