package org.bonewright.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The handbook as one document, read back by the library that wrote it. */
class HandbookPdfTest {

  private static final RuleSet RULES = RuleSet.built();
  private static byte[] bytes;
  private static PDDocument pdf;
  private static List<String> pages;

  @BeforeAll
  static void make() throws IOException {
    bytes = HandbookSite.of(RULES).pdf();
    pdf = Loader.loadPDF(bytes);
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setPageEnd("\f");
    pages = List.of(stripper.getText(pdf).split("\f", -1));
  }

  @AfterAll
  static void close() throws IOException {
    pdf.close();
  }

  @Test
  void is_tagged_names_its_language_and_shows_its_title() {
    assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
    assertThat(pdf.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
    assertThat(pdf.getDocumentCatalog().getLanguage()).startsWith("en");
    assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Bonewright handbook");
    assertThat(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
    assertThat(pdf.getDocumentCatalog().getDocumentOutline().children()).isNotEmpty();
  }

  @Test
  void holds_the_fonts_that_it_uses() throws IOException {
    Set<String> fonts = new TreeSet<>();
    for (PDPage page : pdf.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        PDFont font = page.getResources().getFont(name);
        assertThat(font.isEmbedded()).as(font.getName()).isTrue();
        fonts.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
      }
    }
    assertThat(fonts).allMatch(font -> font.startsWith("LiberationSans")).hasSizeGreaterThan(1);
  }

  @Test
  void has_each_principle_in_its_contents_with_the_page_where_it_stands() {
    String contents = String.join("\n", pages.subList(1, 6));
    List<String> wrong = new ArrayList<>();
    for (Card card : RULES.cards()) {
      String page =
          contents
              .lines()
              .filter(line -> line.startsWith(card.title()))
              .map(line -> line.replaceAll("^.*\\D(\\d+)\\s*$", "$1"))
              .findFirst()
              .orElse("0");
      int at = page.matches("\\d+") ? Integer.parseInt(page) : 0;
      if (at == 0 || !pages.get(at - 1).replaceAll("\\s+", " ").contains(card.title())) {
        wrong.add(card.title() + ": " + page);
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void shows_the_examples_at_the_limits_of_a_principle_in_one_row_for_each_number() {
    String all = String.join(" ", pages).replaceAll("\\s+", " ");
    assertThat(all)
        .contains(
            "Deep samples 0: unmet, major by “five”; 4: unmet, major by “five”; 5: met; 6: met")
        .doesNotContain("Starts from");
  }

  @Test
  void shows_situations_where_no_number_decides() {
    assertThat(String.join(" ", pages).replaceAll("\\s+", " "))
        .contains("Situation Given Verdict", "Situation Verdicts along one number");
  }

  @Test
  void has_the_cautions_and_the_version_on_its_cover() {
    assertThat(pages.get(0).replaceAll("\\s+", " "))
        .contains("Decision support, not a decision")
        .contains("No surgeon has yet reviewed these principles.")
        .contains("Rule set " + RULES.version() + ", content " + RULES.hash());
  }

  @Test
  void leads_to_places_of_its_own_alone() throws IOException {
    for (PDPage page : pdf.getPages()) {
      for (PDAnnotation annotation : page.getAnnotations()) {
        assertThat(annotation).isInstanceOf(PDAnnotationLink.class);
        assertThat(annotation.getCOSObject().toString()).doesNotContain("COSName{URI}");
      }
    }
  }

  @Test
  void is_the_same_byte_for_byte_when_made_again() {
    assertThat(HandbookSite.of(RuleSet.built()).pdf()).isEqualTo(bytes);
  }
}
