package org.bonewright.bench;

import org.bonewright.casefile.reading.PublishedSchema;

/**
 * The published JSON Schema of bench files, made from the records. What does not fit together, such
 * as a screw in the gap, only {@link BenchReader} tells.
 */
public final class BenchSchema {

  /** The name of the schema; it is not fetched from there by anything in this program. */
  public static final String ID = "https://bonewright.org/schema/bench/1";

  /** Where the committed copy is found on the class path. */
  public static final String RESOURCE = "/org/bonewright/bench/bench.schema.json";

  private BenchSchema() {}

  /** Return the schema as indented JSON that ends with a line feed; always the same bytes. */
  public static String text() {
    return PublishedSchema.text(BenchFile.class, ID, "Bonewright bench file");
  }
}
