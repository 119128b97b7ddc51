package org.bonewright.principles;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The rule files as they were when Bonewright was built: cards, rules and the list of families, by
 * path. Examples, glossary and the list of changes are left out; they decide nothing.
 */
final class RuleFiles {

  private static final String ROOT = "rules/";
  private static final String EXAMPLES = ".examples.yaml";
  private static final String GLOSSARY = "glossary.yaml";
  private static final String CHANGES = "changes.yaml";
  private static final Set<String> TOLD = Set.of(GLOSSARY, CHANGES, "CHANGES.md");

  private final Map<String, String> texts = new TreeMap<>();

  private RuleFiles() {}

  /** Return the files that Bonewright was built with. */
  static RuleFiles built() {
    RuleFiles files = new RuleFiles();
    text("index.txt")
        .lines()
        .map(String::strip)
        .filter(path -> !path.isEmpty() && !path.endsWith(EXAMPLES) && !TOLD.contains(path))
        .forEach(path -> files.texts.put(path, text(path)));
    return files;
  }

  /** Return the text of the examples of a principle, in the folder of its family. */
  static String examples(Family family, String id) {
    return text(family.id() + "/" + id + EXAMPLES);
  }

  /** Return the text of the glossary. */
  static String glossary() {
    return text(GLOSSARY);
  }

  /** Return the text that tells what changed from version to version. */
  static String changes() {
    return text(CHANGES);
  }

  /** Return the paths that end so, sorted. */
  List<String> paths(String ending) {
    return texts.keySet().stream().filter(path -> path.endsWith(ending)).toList();
  }

  /**
   * Return the text of a file.
   *
   * @throws IllegalArgumentException if there is none
   */
  String read(String path) {
    String text = texts.get(path);
    if (text == null) {
      throw new IllegalArgumentException("no rule file " + path);
    }
    return text;
  }

  /** Return the first twelve hexadecimal digits of the SHA-256 over all paths and texts. */
  String hash() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      texts.forEach(
          (path, text) -> {
            digest.update((path + "\n").getBytes(StandardCharsets.UTF_8));
            digest.update(text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
          });
      return HexFormat.of().formatHex(digest.digest()).substring(0, 12);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String text(String path) {
    try (InputStream in = RuleFiles.class.getClassLoader().getResourceAsStream(ROOT + path)) {
      if (in == null) {
        throw new IllegalStateException("built without " + ROOT + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
