package org.bonewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ReviewPageTest {

  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());

  static Stream<Path> demos() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases", "demo"))) {
      return folders.map(folder -> folder.resolve("case.json")).sorted().toList().stream();
    }
  }

  private static CaseFile read(String text) {
    return new Intake().read(text.getBytes(StandardCharsets.UTF_8)).caseFile().orElseThrow();
  }

  private static String page(String text) {
    CaseFile caseFile = read(text);
    return ReviewPage.render(caseFile, REVIEWER.review(caseFile));
  }

  private static Document parsed(String page) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    String document = page.substring("<!DOCTYPE html>".length());
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(document.strip().getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> all(Document document) {
    NodeList nodes = document.getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  @ParameterizedTest
  @MethodSource("demos")
  void is_well_formed_and_no_two_parts_share_a_name(Path demo) throws Exception {
    List<Element> elements = all(parsed(page(Files.readString(demo))));
    Set<String> names = new HashSet<>();
    for (Element element : elements) {
      if (element.hasAttribute("id")) {
        assertThat(names.add(element.getAttribute("id"))).as(element.getAttribute("id")).isTrue();
      }
    }
    for (Element element : elements) {
      for (String name : element.getAttribute("aria-labelledby").split(" ", -1)) {
        assertThat(name.isEmpty() || names.contains(name)).as(name).isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void needs_no_script_and_loads_nothing(Path demo) throws Exception {
    List<Element> elements = all(parsed(page(Files.readString(demo))));
    assertThat(elements)
        .extracting(Element::getLocalName)
        .doesNotContain("script", "link", "img", "iframe", "object");
    assertThat(elements).noneMatch(e -> e.hasAttribute("src") || e.hasAttribute("onclick"));
    assertThat(page(Files.readString(demo))).doesNotContain("@import");
  }

  @ParameterizedTest
  @MethodSource("demos")
  void tells_everything_that_the_plan_leaves_unmet_and_the_cautions(Path demo) throws Exception {
    String text = Files.readString(demo);
    Review review = REVIEWER.review(read(text));
    String words = parsed(page(text)).getDocumentElement().getTextContent();
    review
        .demands()
        .forEach(
            demands ->
                demands
                    .demands()
                    .forEach(demand -> assertThat(words).contains(demand.answer().title())));
    assertThat(words).contains(review.cautions()).contains(review.versions().hash());
    assertThat(words).contains("invented case");
  }

  @ParameterizedTest
  @MethodSource("demos")
  void has_headings_in_order_and_a_language(Path demo) throws Exception {
    Document page = parsed(page(Files.readString(demo)));
    assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    int last = 0;
    for (Element element : all(page)) {
      String name = element.getLocalName();
      if (name.matches("h[1-6]")) {
        int level = name.charAt(1) - '0';
        assertThat(level).as(element.getTextContent()).isLessThanOrEqualTo(last + 1);
        last = level;
      }
    }
  }

  @Test
  void takes_no_text_of_a_case_as_markup() throws Exception {
    String text =
        Files.readString(demos().findFirst().orElseThrow())
            .replaceFirst("\"title\": \"", "\"title\": \"<script>alert(1)</script> ");
    assertThat(page(text)).doesNotContain("<script").contains("&lt;script&gt;");
  }

  @Test
  void is_the_same_every_time() throws Exception {
    String text = Files.readString(demos().findFirst().orElseThrow());
    assertThat(page(text)).isEqualTo(page(text));
  }
}
