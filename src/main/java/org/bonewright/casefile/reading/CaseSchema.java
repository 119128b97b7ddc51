package org.bonewright.casefile.reading;

import org.bonewright.casefile.CaseFile;

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

  private CaseSchema() {}

  /** Return the schema as indented JSON that ends with a line feed; always the same bytes. */
  public static String text() {
    return PublishedSchema.text(CaseFile.class, ID, "Bonewright case file");
  }
}
