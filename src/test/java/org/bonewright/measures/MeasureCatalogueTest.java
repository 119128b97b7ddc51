package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseFolder;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.reading.CaseReader;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MeasureCatalogueTest {

  static Stream<Definition> definitions() {
    return Taken.CATALOGUE.definitions().stream();
  }

  /** Return every file of the folder {@code cases} that is a case without a problem. */
  static List<Path> caseFiles() {
    return CaseFolder.files();
  }

  @Nested
  class EveryDefinition {

    @Test
    void has_an_id_of_its_own() {
      assertThat(definitions()).extracting(Definition::id).doesNotHaveDuplicates().isSorted();
    }

    @ParameterizedTest
    @MethodSource("org.bonewright.measures.MeasureCatalogueTest#definitions")
    void says_what_it_is_and_where_it_comes_from(Definition definition) {
      assertThat(definition.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
      assertThat(definition.title()).isNotBlank().doesNotEndWith(".");
      assertThat(definition.formula()).isNotBlank();
      assertThat(definition.source()).isNotBlank();
      assertThat(definition.inputs()).isNotEmpty().doesNotHaveDuplicates();
      assertThat(Taken.CATALOGUE.definition(definition.id())).contains(definition);
    }

    @ParameterizedTest
    @MethodSource("org.bonewright.measures.MeasureCatalogueTest#definitions")
    void has_words_or_a_unit(Definition definition) {
      if (definition.domain() instanceof Definition.Domain.Words words) {
        assertThat(words.words()).hasSizeGreaterThan(1).doesNotHaveDuplicates();
        assertThat(words.words()).allMatch(word -> word.matches("[a-z]+(-[a-z]+)*"));
      } else if (definition.domain() instanceof Definition.Domain.Numbers numbers) {
        assertThat(numbers.unit())
            .isIn("mm", "1", "%", "d", "wk", "deg", "ng/mL", "g/L", "Gy", "N", "N.m", "N/mm2");
        assertThat(numbers.shownUnit().isEmpty()).isEqualTo(numbers.unit().equals("1"));
        assertThat(numbers.min()).isLessThan(numbers.max());
        assertThat(numbers.step()).isGreaterThanOrEqualTo(0);
      }
    }

    @ParameterizedTest
    @MethodSource("org.bonewright.measures.MeasureCatalogueTest#definitions")
    void names_inputs_that_there_are(Definition definition) {
      assertThat(definition.inputs())
          .allMatch(
              input ->
                  Taken.CATALOGUE.definition(input).isPresent()
                      || isField(CaseFile.class, input.split("/")));
    }

    @ParameterizedTest
    @MethodSource("org.bonewright.measures.MeasureCatalogueTest#definitions")
    void does_not_rest_on_itself(Definition definition) {
      assertThat(definition.inputs()).doesNotContain(definition.id());
    }
  }

  private static boolean isField(Class<?> type, String... path) {
    if (path.length == 0) {
      return true;
    }
    if (type.isSealed()) {
      return Arrays.stream(type.getPermittedSubclasses()).anyMatch(one -> isField(one, path));
    }
    String[] below = Arrays.copyOfRange(path, 1, path.length);
    return type.isRecord()
        && Arrays.stream(type.getRecordComponents())
            .filter(component -> component.getName().equals(path[0]))
            .map(RecordComponent::getGenericType)
            .anyMatch(content -> isField(content(content), below));
  }

  /** Return the type inside lists and optionals. */
  private static Class<?> content(Type type) {
    return type instanceof ParameterizedType parameterized
        ? content(parameterized.getActualTypeArguments()[0])
        : (Class<?>) type;
  }

  @Nested
  class EveryReading {

    @ParameterizedTest
    @MethodSource("org.bonewright.measures.MeasureCatalogueTest#caseFiles")
    void of_a_case_that_comes_with_bonewright_is_sound(Path file) throws IOException {
      new CaseReader().read(Files.readAllBytes(file)).caseFile().ifPresent(Sound::check);
    }

    @Test
    void of_an_almost_empty_case_is_sound() {
      Sound.check(CaseText.bare().file());
    }

    @Test
    void of_an_almost_empty_plan_is_sound() {
      Sound.check(
          CaseText.bare()
              .with(
                  "{plans: [{id: 'plan-a', stages: [{id: 'stage-1'}, {id: 'stage-2'}]},"
                      + " {id: 'plan-b', stages: []}, {id: 'plan-c'}]}")
              .file());
    }

    @Test
    void of_a_case_without_an_operation_is_sound() {
      Sound.check(CaseText.bare().with("{operations: []}").file());
    }

    @Test
    void of_a_plate_and_a_nail_of_which_nothing_is_said_is_sound() {
      for (String kind : List.of("plate", "nail", "external-fixator")) {
        Sound.check(
            CaseText.bare()
                .at("/operations/0", "{fixation: [{id: 'a', kind: '" + kind + "'}]}")
                .redone("deformity")
                .file());
      }
    }
  }
}
