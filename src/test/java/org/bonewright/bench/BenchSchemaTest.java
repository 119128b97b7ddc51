package org.bonewright.bench;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BenchSchemaTest {

  private static final Path COMMITTED = Path.of("src/main/resources" + BenchSchema.RESOURCE);

  private final Schema schema =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(BenchSchema.text(), InputFormat.JSON);

  static Stream<Path> files() throws IOException {
    return BenchReaderTest.files();
  }

  @Test
  void the_committed_schema_is_the_generated_one() throws IOException {
    if (Boolean.getBoolean("bless")) {
      Files.createDirectories(COMMITTED.getParent());
      Files.writeString(COMMITTED, BenchSchema.text(), UTF_8);
    }
    assertThat(COMMITTED)
        .as("out of date; write it again with: mvn test -Dtest=BenchSchemaTest -Dbless=true")
        .exists()
        .content(UTF_8)
        .isEqualTo(BenchSchema.text());
  }

  @ParameterizedTest
  @MethodSource("files")
  void it_takes_every_shipped_file(Path file) throws IOException {
    assertThat(schema.validate(Files.readString(file), InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"$schema\":\"bench.schema.json\",\"kind\":\"emptyHole\",\"ratios\":[0.2]}",
        "{\"kind\":\"holdout\",\"screws\":[0,20],\"capacity\":1500,\"loadAt\":-5}",
        "{\"kind\":\"plateBend\",\"E\":193000,\"nu\":0.3,\"width\":12.5,\"thickness\":4.2,"
            + "\"holeDiameter\":5,\"length\":60,\"load\":{\"My\":2000}}"
      })
  void it_takes_what_the_reader_takes(String file) {
    assertThat(schema.validate(file, InputFormat.JSON)).isEmpty();
    assertThat(new BenchReader().answer(file.getBytes(UTF_8)).problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"kind\":\"emptyHole\",\"ratio\":[0.2]}",
        "{\"kind\":\"holdout\",\"screws\":[0,20],\"capacity\":\"all\",\"loadAt\":-5}",
        "{\"kind\":\"plateBend\",\"young\":193000,\"nu\":0.3,\"width\":12.5,\"thickness\":4.2,"
            + "\"holeDiameter\":5,\"length\":60,\"load\":{\"My\":2000}}",
        "{\"kind\":\"construkt\"}"
      })
  void it_refuses_what_the_reader_refuses(String file) {
    assertThat(schema.validate(file, InputFormat.JSON)).isNotEmpty();
    assertThat(new BenchReader().answer(file.getBytes(UTF_8)).problems()).isNotEmpty();
  }
}
