package org.bonewright.casefile.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.OutputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Holds the reader and an independent validator with the generated schema against each other. */
final class Agreement {

  /** How the problems begin that a schema cannot express; see {@link CaseSchema}. */
  private static final List<String> BEYOND_A_SCHEMA =
      List.of("a min above the max", "fields that do not go together");

  private final RecordReader<?> reader;
  private final Schema schema;

  Agreement(Class<?> type) {
    reader = new RecordReader<>(type);
    schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(RecordSchema.of(type));
  }

  /** Check that both accept or both refuse, and that the reader's answer is well formed. */
  void holdsFor(JsonNode file) {
    String text = file.toString();
    RecordReader.Outcome<?> outcome = read(text);
    List<Problem> comparable =
        outcome.problems().stream()
            .filter(problem -> BEYOND_A_SCHEMA.stream().noneMatch(problem.found()::startsWith))
            .toList();
    assertThat(comparable.isEmpty())
        .as(() -> difference(text, outcome))
        .isEqualTo(schema.validate(text, InputFormat.JSON, OutputFormat.BOOLEAN));
  }

  private String difference(String text, RecordReader.Outcome<?> outcome) {
    List<Error> errors = schema.validate(text, InputFormat.JSON);
    return String.format("reader %s%nschema %s%nfile %s", outcome.problems(), errors, text);
  }

  /** Check that a text is answered with a value or with errors, and return the answer. */
  RecordReader.Outcome<?> read(String text) {
    RecordReader.Outcome<?> outcome = reader.read(text.getBytes(UTF_8));
    assertThat(outcome.value().isPresent()).isEqualTo(outcome.problems().isEmpty());
    return outcome;
  }
}
