package org.bonewright.handbook.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.bonewright.handbook.model.Handbook;

/** Makes the PDF of a handbook: tagged, with its fonts within, the same bytes each time. */
public final class PdfWriter {

  private static final String FONTS = "/liberation/LiberationSans-";
  private static final int BOLD = 700;
  private static final int NORMAL = 400;

  private PdfWriter() {}

  /** Return the bytes of the document. */
  public static byte[] write(Handbook handbook) {
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new OwnFont(() -> open(FONTS + "Regular.ttf")));
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePdfUaAccessibility(true);
      builder.withProducer("Bonewright");
      builder.usePDDocument(document);
      font(builder, document, "Regular", NORMAL, FontStyle.NORMAL);
      font(builder, document, "Bold", BOLD, FontStyle.NORMAL);
      font(builder, document, "Italic", NORMAL, FontStyle.ITALIC);
      font(builder, document, "BoldItalic", BOLD, FontStyle.ITALIC);
      builder.withHtmlContent(new PrintDocument(handbook).markup(), "");
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
        fix(document, handbook);
        document.save(out);
      }
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Without joined letters: looking for them took four fifths of the time. */
  private static void font(
      PdfRendererBuilder builder, PDDocument document, String file, int weight, FontStyle style)
      throws IOException {
    try (InputStream in = open(FONTS + file + ".ttf")) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      font.setEnableGsub(false);
      PDFontSupplier supplier = new PDFontSupplier(PDType0Font.load(document, font, true));
      builder.useFont(supplier, "Handbook", weight, style, true);
    }
  }

  private static InputStream open(String resource) {
    InputStream in = PdfWriter.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("built without the font " + resource);
    }
    return in;
  }

  /** A document carries a day and a name of its own; here both follow from what it says. */
  private static void fix(PDDocument document, Handbook handbook) {
    Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"), java.util.Locale.ROOT);
    day.setTimeInMillis(0);
    PDDocumentInformation about = document.getDocumentInformation();
    about.setCreationDate(day);
    about.setModificationDate(day);
    COSArray name = new COSArray();
    name.add(new COSString(handbook.hash()));
    name.add(new COSString(handbook.hash()));
    document.getDocument().getTrailer().setItem(COSName.ID, name);
  }
}
