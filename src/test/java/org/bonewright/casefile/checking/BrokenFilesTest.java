package org.bonewright.casefile.checking;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.reading.CaseReader;
import org.bonewright.casefile.reading.CaseSchema;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Reading;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.core.JacksonException;

/** Every file in the folder of broken files is answered exactly as the table beside them says. */
class BrokenFilesTest {

  private static final CaseReader READER = new CaseReader();
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(CaseSchema.text());

  private final BrokenFiles files = BrokenFiles.read();

  @TestFactory
  Stream<DynamicTest> names_exactly_what_is_wrong() {
    return files.all().stream()
        .map(file -> DynamicTest.dynamicTest(file.name(), () -> namesWhatIsWrong(file)));
  }

  private static void namesWhatIsWrong(BrokenFiles.BrokenFile file) {
    List<Problem> problems = problems(file);
    assertThat(problems)
        .extracting(BrokenFiles.Said::placeOf)
        .containsExactlyElementsOf(file.says().stream().map(BrokenFiles.Said::place).toList());
    for (int i = 0; i < problems.size(); i++) {
      assertThat(problems.get(i).found()).contains(file.says().get(i).found());
      assertThat(problems.get(i).allowed()).contains(file.says().get(i).allowed());
      assertThat(problems.get(i).hint().orElse("")).contains(file.says().get(i).hint());
    }
    assertThat(READER.read(file.bytes()).caseFile().isPresent())
        .as("can be read")
        .isEqualTo(file.refused().isBehindReading());
    assertThat(problems.stream().anyMatch(Problem::isError))
        .as("is refused")
        .isNotEqualTo(file.refused() == BrokenFiles.Refused.NOTHING);
  }

  @TestFactory
  Stream<DynamicTest> speaks_to_the_person_who_wrote_the_file() {
    return files.all().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.name(), () -> problems(file).forEach(FriendlyWords::assertFriendly)));
  }

  private static List<Problem> problems(BrokenFiles.BrokenFile file) {
    Reading reading = READER.read(file.bytes());
    return reading.caseFile().map(new Consistency()::check).orElse(reading.problems());
  }

  @TestFactory
  Stream<DynamicTest> is_backed_by_an_independent_validator() {
    return files.all().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.name(),
                    () ->
                        assertThat(validatorAccepts(file.bytes()))
                            .isEqualTo(
                                file.refused().isBehindReading() || file.schemaCannotTell())));
  }

  private static boolean validatorAccepts(byte[] bytes) {
    try {
      CharBuffer text = UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return SCHEMA.validate(text.toString(), InputFormat.JSON).isEmpty();
    } catch (CharacterCodingException | JacksonException notJson) {
      return false;
    }
  }

  @Test
  void answers_five_megabytes_of_nesting_with_one_sentence() {
    assertThat(problems("[".repeat(5_000_000)))
        .singleElement()
        .satisfies(FriendlyWords::assertFriendly)
        .extracting(Problem::isError)
        .isEqualTo(true);
  }

  @Test
  void answers_a_deep_nest_within_the_size_with_one_sentence() {
    String deep = "{\"bone\":".repeat(200_000) + "1" + "}".repeat(200_000);
    assertThat(problems(deep)).singleElement().satisfies(FriendlyWords::assertFriendly);
  }

  @Test
  void answers_ten_megabytes_of_text_with_one_sentence() {
    String story = "It was a dark and stormy night. ".repeat(10_000_000 / 32);
    String file = Altered.minimal().with("/operations/0/title", "\"" + story + "\"").text();
    assertThat(problems(file)).singleElement().satisfies(FriendlyWords::assertFriendly);
  }

  @Test
  void answers_three_megabytes_of_text_in_one_field_with_one_sentence() {
    String file =
        Altered.minimal().with("/operations/0/title", "\"" + "x".repeat(3_000_000) + "\"").text();
    assertThat(problems(file))
        .singleElement()
        .satisfies(FriendlyWords::assertFriendly)
        .extracting(problem -> problem.pointer())
        .isEqualTo("/operations/0/title");
  }

  private static List<Problem> problems(String text) {
    return READER.read(text.getBytes(UTF_8)).problems();
  }

  @Test
  void has_a_row_for_every_file_and_a_file_for_every_row() throws IOException {
    try (Stream<Path> folder = Files.list(BrokenFiles.FOLDER)) {
      assertThat(folder.map(path -> path.getFileName().toString()))
          .filteredOn(name -> !name.equals(BrokenFiles.TABLE))
          .containsExactlyInAnyOrderElementsOf(
              files.all().stream().map(BrokenFiles.BrokenFile::name).toList());
    }
  }
}
