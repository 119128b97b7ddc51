package org.bonewright.casefile.reading;

import org.bonewright.casefile.CaseFile;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The published JSON Schema of the case file, made from the records.
 *
 * <p>It accepts and refuses what {@link CaseReader} accepts and refuses, with these exceptions,
 * which a schema cannot express; in each of them the reader refuses:
 *
 * <ul>
 *   <li>a range whose {@code min} is above its {@code max};
 *   <li>fields that the constructor of a record finds at odds with each other;
 *   <li>faults of the text itself: not UTF-8, over 4 MB, nested over 64 deep, a name given twice, a
 *       number too large or written with over 100 characters, half a surrogate pair.
 * </ul>
 *
 * <p>Numbers are compared as IEEE doubles by the reader; a validator that keeps more digits can
 * differ from it within the last digit of a limit.
 */
public final class CaseSchema {

  /** The name of the schema; it is not fetched from there by anything in this program. */
  public static final String ID = "https://bonewright.org/schema/case/1";

  /** Where the committed copy is found on the class path. */
  public static final String RESOURCE = "/org/bonewright/casefile/case.schema.json";

  private static final DefaultPrettyPrinter PRINTER =
      new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectNameValueSpacing(Separators.Spacing.AFTER))
          .withObjectIndenter(new DefaultIndenter("  ", "\n"));

  private CaseSchema() {}

  /** Return the schema as indented JSON that ends with a line feed; always the same bytes. */
  public static String text() {
    ObjectNode made = RecordSchema.of(CaseFile.class);
    ObjectNode schema = JsonMapper.shared().createObjectNode();
    schema.set("$schema", made.get("$schema"));
    schema.put("$id", ID);
    schema.put("title", "Bonewright case file");
    schema.setAll(made);
    return JsonMapper.shared().writer().with(PRINTER).writeValueAsString(schema) + "\n";
  }
}
