package org.bonewright.casefile.reading;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON Schema of a kind of file, as it is published: named, indented, always the same bytes.
 */
public final class PublishedSchema {

  private static final DefaultPrettyPrinter PRINTER =
      new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectNameValueSpacing(Separators.Spacing.AFTER))
          .withObjectIndenter(new DefaultIndenter("  ", "\n"));

  private PublishedSchema() {}

  /**
   * Return the schema as indented JSON that ends with a line feed.
   *
   * @param file the record of a whole file
   * @param id the name of the schema
   * @param title what the file is, in a few words
   */
  public static String text(Class<?> file, String id, String title) {
    ObjectNode made = RecordSchema.of(file);
    ObjectNode schema = JsonMapper.shared().createObjectNode();
    schema.set("$schema", made.get("$schema"));
    schema.put("$id", id);
    schema.put("title", title);
    schema.setAll(made);
    return JsonMapper.shared().writer().with(PRINTER).writeValueAsString(schema) + "\n";
  }
}
