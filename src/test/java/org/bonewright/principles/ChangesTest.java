package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bonewright.principles.RuleChanges.Version;
import org.junit.jupiter.api.Test;

/**
 * What changed in the rules since they were last released is told to people, and no verdict changes
 * without a new version. After a change that is meant: a new number in {@code rules/version.txt},
 * then {@code -Dbless=true}. When a version is released, {@code -Drelease=true} writes it down.
 */
class ChangesTest {

  private static final Path YAML = Path.of("rules", "changes.yaml");
  private static final Path PAGE = Path.of("rules", "CHANGES.md");

  private static final Released PRESENT = Released.present();

  @Test
  void what_changed_since_each_release_is_told() throws IOException {
    if (Boolean.getBoolean("release")) {
      PRESENT.release();
    }
    RuleChanges changes = new ReleaseChanges(RuleSet.built()).of(PRESENT, Released.all());
    if (Boolean.getBoolean("bless")) {
      Files.writeString(YAML, ChangesText.yaml(changes));
      Files.writeString(PAGE, ChangesText.page(changes));
    }
    assertThat(ChangesText.yaml(changes)).isEqualTo(Files.readString(YAML));
    assertThat(ChangesText.page(changes)).isEqualTo(Files.readString(PAGE));
    assertThat(RuleChanges.read(Files.readString(YAML))).isEqualTo(changes);
  }

  @Test
  void no_verdict_changes_without_a_new_version() {
    RuleChanges changes = new ReleaseChanges(RuleSet.built()).of(PRESENT, Released.all());
    assertThat(changes.versions())
        .filteredOn(version -> version.version().equals(version.before()))
        .flatExtracting(Version::changed)
        .isEmpty();
  }

  @Test
  void what_is_written_down_of_a_release_is_read_as_it_was() {
    List<Released> released = Released.all();
    assertThat(released).isNotEmpty();
    assertThat(released.get(0).principles()).isNotEmpty();
  }
}
