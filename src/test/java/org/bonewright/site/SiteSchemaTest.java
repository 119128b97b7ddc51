package org.bonewright.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SiteSchemaTest {

  private static final Path COMMITTED = Path.of("src/main/resources" + SiteSchema.RESOURCE);

  @Test
  void the_committed_schema_is_the_generated_one() throws IOException {
    if (Boolean.getBoolean("bless")) {
      Files.createDirectories(COMMITTED.getParent());
      Files.writeString(COMMITTED, SiteSchema.text(), UTF_8);
    }
    assertThat(COMMITTED)
        .as("out of date; write it again with: mvn test -Dtest=SiteSchemaTest -Dbless=true")
        .exists()
        .content(UTF_8)
        .isEqualTo(SiteSchema.text());
  }

  @Test
  void names_itself_and_says_that_grounds_are_needed() {
    JsonNode schema = JsonMapper.shared().readTree(SiteSchema.text());
    assertThat(schema.get("$id").stringValue()).isEqualTo(SiteSchema.ID);
    assertThat(schema.at("/$defs/LimitChange/required").toString())
        .contains("reason", "by", "on", "unit")
        .doesNotContain("where");
  }
}
