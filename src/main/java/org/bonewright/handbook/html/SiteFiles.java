package org.bonewright.handbook.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.handbook.model.Page;

/** The files of the site. */
public final class SiteFiles {

  /** The file that every page takes its style from. */
  public static final String STYLE = "handbook.css";

  /** The file that holds the handbook as one document, made elsewhere. */
  public static final String PDF = "bonewright-handbook.pdf";

  private SiteFiles() {}

  /** Return the text of each file by its path. */
  public static Map<String, String> of(Handbook handbook) {
    Map<String, String> files = new TreeMap<>();
    for (Page page : handbook.pages()) {
      files.put(page.path() + ".html", new SitePage(handbook, page.path()).of(page));
    }
    SearchPage search = new SearchPage(handbook);
    files.put(SearchPage.PATH + ".html", search.markup());
    files.put(SearchPage.INDEX, search.index());
    files.put(SearchPage.SCRIPT, resource(SearchPage.SCRIPT));
    files.put(STYLE, resource(STYLE));
    return files;
  }

  private static String resource(String name) {
    try (InputStream in = SiteFiles.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("built without " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
