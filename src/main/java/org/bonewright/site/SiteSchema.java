package org.bonewright.site;

import org.bonewright.casefile.reading.PublishedSchema;

/**
 * The published JSON Schema of the site file, made from its records. What the cards allow, a schema
 * cannot express; {@link SiteReader} refuses it.
 */
public final class SiteSchema {

  /** The name of the schema; it is not fetched from there by anything in this program. */
  public static final String ID = "https://bonewright.org/schema/site/1";

  /** Where the committed copy is found on the class path. */
  public static final String RESOURCE = "/org/bonewright/site/site.schema.json";

  private SiteSchema() {}

  /** Return the schema as indented JSON that ends with a line feed; always the same bytes. */
  public static String text() {
    return PublishedSchema.text(Site.class, ID, "Bonewright site file");
  }
}
