package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFolder;
import org.bonewright.measures.Subject;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every principle has been seen to fail a whole case, not only a line of its examples. The cases of
 * {@code cases/faults} are there for those that no other case makes unmet.
 */
class UnmetSomewhereTest {

  private static final Path FAULTS = Path.of("cases", "faults");

  /** Where most faults are: the rest need not be judged once every principle was found. */
  private static final List<String> FIRST = List.of("published", "demo", "faults");

  private static final RuleSet RULES = RuleSet.built();
  private static final Judge JUDGE = new Judge(RULES);

  /** A row of the table: the file, what is wrong, the principles that it is there for. */
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| ([a-z]+-[a-z0-9-]+) \\| [^|]+ \\| ([a-z0-9, -]+) \\|$");

  /** The principles that each case makes unmet, and the first subject of each. */
  private static final Map<Path, Map<String, String>> UNMET = new LinkedHashMap<>();

  /** Judges cases, those that are meant to fail first, until every principle has failed one. */
  @TestFactory
  Stream<DynamicTest> principles() {
    Set<String> missing = new TreeSet<>();
    RULES.cards().forEach(card -> missing.add(card.id()));
    Map<String, String> where = new TreeMap<>();
    for (Path file : faultsFirst()) {
      if (missing.isEmpty()) {
        break;
      }
      unmet(file)
          .forEach(
              (principle, subject) -> {
                if (missing.remove(principle)) {
                  where.put(principle, subject + " of " + file);
                }
              });
    }
    return RULES.cards().stream()
        .map(
            card ->
                dynamicTest(
                    card.id() + ": " + where.getOrDefault(card.id(), "never unmet"),
                    () -> assertThat(where).as("unmet in a case").containsKey(card.id())));
  }

  @Test
  void every_faulty_case_shows_what_its_folder_says() throws IOException {
    Map<Path, Set<String>> told = new TreeMap<>();
    Matcher row = ROW.matcher(Files.readString(FAULTS.resolve("README.md")));
    while (row.find()) {
      told.put(
          FAULTS.resolve(row.group(1) + ".json"),
          new TreeSet<>(Arrays.asList(row.group(2).split(", ", -1))));
    }
    assertThat(told.keySet())
        .containsExactlyElementsOf(
            CaseFolder.files().stream().filter(file -> file.startsWith(FAULTS)).toList());
    assertThat(told)
        .allSatisfy((file, shown) -> assertThat(unmet(file).keySet()).containsAll(shown));
  }

  private static List<Path> faultsFirst() {
    return CaseFolder.files().stream()
        .sorted(Comparator.comparing((Path file) -> -FIRST.indexOf(file.getName(1).toString())))
        .toList();
  }

  private static Map<String, String> unmet(Path file) {
    return UNMET.computeIfAbsent(file, UnmetSomewhereTest::judged);
  }

  private static Map<String, String> judged(Path file) {
    Map<String, String> unmet = new TreeMap<>();
    JudgedCase judged = JUDGE.judge(CaseFolder.read(file));
    for (Subject subject : judged.subjects()) {
      judged.of(subject).stream()
          .filter(judgement -> judgement.is(VerdictKind.UNMET))
          .forEach(judgement -> unmet.putIfAbsent(judgement.card().id(), subject.id()));
    }
    return unmet;
  }
}
