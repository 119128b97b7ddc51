package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseFolder;
import org.bonewright.measures.Subject;
import org.bonewright.review.RedFlag.Kind;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A red flag that no case raises is one that nobody has seen at work. */
class RedFlagsTest {

  @TestFactory
  Stream<DynamicTest> every_kind_is_raised_by_a_case() {
    Map<Kind, String> raised = new EnumMap<>(Kind.class);
    for (Path file : CaseFolder.files()) {
      CaseFile caseFile = CaseFolder.read(file);
      for (RedFlag flag : RedFlags.of(caseFile, Subject.of(caseFile))) {
        raised.putIfAbsent(flag.kind(), file + ": " + flag.what() + ", " + flag.since());
      }
    }
    return Arrays.stream(Kind.values())
        .map(
            kind ->
                dynamicTest(
                    kind + " " + raised.getOrDefault(kind, "in no case"),
                    () -> assertThat(Optional.ofNullable(raised.get(kind))).isPresent()));
  }
}
