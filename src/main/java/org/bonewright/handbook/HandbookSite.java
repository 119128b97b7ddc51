package org.bonewright.handbook;

import java.util.Map;
import org.bonewright.handbook.content.HandbookMaker;
import org.bonewright.handbook.html.SiteFiles;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.handbook.pdf.PdfWriter;
import org.bonewright.principles.Glossary;
import org.bonewright.principles.RuleSet;

/** The handbook of a rule set. The same rule set gives the same bytes. */
public final class HandbookSite {

  /** The file that holds the handbook as one document. */
  public static final String PDF = SiteFiles.PDF;

  private final Handbook handbook;

  private HandbookSite(Handbook handbook) {
    this.handbook = handbook;
  }

  /** Make the handbook; of a rule set with local limits it shows what is published. */
  public static HandbookSite of(RuleSet rules) {
    return new HandbookSite(new HandbookMaker(rules, Glossary.built()).make());
  }

  /** Return what the pages say. */
  public Handbook handbook() {
    return handbook;
  }

  /** Return the text of each file of the site by its path, the document to print left out. */
  public Map<String, String> files() {
    return SiteFiles.of(handbook);
  }

  /** Return the bytes of the document to print; this takes some seconds. */
  public byte[] pdf() {
    return PdfWriter.write(handbook);
  }
}
