package org.bonewright.casefile.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CaseSchemaTest {

  private static final Path COMMITTED = Path.of("src/main/resources" + CaseSchema.RESOURCE);

  @Test
  void the_committed_schema_is_the_generated_one() throws IOException {
    if (Boolean.getBoolean("bless")) {
      Files.createDirectories(COMMITTED.getParent());
      Files.writeString(COMMITTED, CaseSchema.text(), UTF_8);
    }
    assertThat(COMMITTED)
        .as("out of date; write it again with: mvn test -Dtest=CaseSchemaTest -Dbless=true")
        .exists()
        .content(UTF_8)
        .isEqualTo(CaseSchema.text());
  }

  @Test
  void is_the_same_text_every_time_and_ends_with_a_line_feed() {
    assertThat(CaseSchema.text()).isEqualTo(CaseSchema.text()).endsWith("}\n").doesNotContain("\r");
  }

  @Test
  void names_itself_and_its_draft_first() {
    JsonNode schema = JsonMapper.shared().readTree(CaseSchema.text());
    assertThat(schema.propertyNames()).startsWith("$schema", "$id", "title");
    assertThat(schema.get("$schema").stringValue())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    assertThat(schema.get("$id").stringValue()).isEqualTo(CaseSchema.ID);
  }

  @Test
  void tells_what_a_field_means_and_which_numbers_it_takes() {
    JsonNode pins = RecordSchema.of(Cabinet.class).at("/properties/depthMm");
    assertThat(pins.get("description").stringValue()).isEqualTo("Depth inside, in mm.");
    assertThat(pins.at("/anyOf/0/maximum").intValue()).isEqualTo(600);
    assertThat(pins.at("/anyOf/1/required").toString()).isEqualTo("[\"min\",\"max\"]");
  }

  @Test
  void tells_alternatives_apart_by_kind() {
    JsonNode schema = RecordSchema.of(Cabinet.class);
    assertThat(schema.at("/$defs/Tool/oneOf")).hasSize(3);
    assertThat(schema.at("/$defs/Drill/properties/kind/const").stringValue())
        .isEqualTo("power-drill");
    assertThat(schema.at("/$defs/Drill/required").toString()).isEqualTo("[\"kind\"]");
  }
}
