package org.bonewright.handbook.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.Supplier;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Gives our font for any other that is asked for. Else the fonts of the machine would be searched
 * and a list of them left in the home of the user, though none of them is used.
 */
final class OwnFont implements FontMapper {

  private final TrueTypeFont font;

  OwnFont(Supplier<InputStream> file) {
    try (InputStream in = file.get()) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
    return new CIDFontMapping(null, font, true);
  }
}
