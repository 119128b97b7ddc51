package org.bonewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SvgWriterTest {

  private static String write(String title, Mark... marks) {
    return SvgWriter.write(
        new Picture("x", title, "said", 100, 50, new Scale(3, 0, 0, 30), List.of(marks)));
  }

  private static Mark.Label label(String text) {
    return new Mark.Label(1, 2, text, 10, Mark.Anchor.END, true);
  }

  @Test
  void text_that_looks_like_markup_stays_text() {
    assertThat(write("a<b & \"c\"", label("<script>&")))
        .contains("<title id=\"x-title\">a&lt;b &amp; \"c\"</title>")
        .contains("&lt;script&gt;&amp;</text>")
        .doesNotContain("<script");
  }

  @Test
  void characters_that_xml_forbids_are_left_out() {
    assertThat(write("a\u0007b", label("c\uFFFEd"))).contains(">ab<").contains(">cd<");
  }

  @Test
  void numbers_have_two_decimals_at_most_and_a_point() {
    assertThat(write("t", new Mark.Box(1.0 / 3, -0.001, 10, 2.5, Ink.SOLID)))
        .contains("x=\"0.33\" y=\"0\" width=\"10\" height=\"2.50\"");
  }

  @Test
  void a_hatch_is_defined_once_for_all_that_use_it() {
    String svg =
        write(
            "t",
            new Mark.Disc(5, 5, 1, 1, Ink.ZONE),
            new Mark.Thing("zone", "", "zone", List.of(new Mark.Disc(9, 9, 1, 1, Ink.ZONE))));

    assertThat(svg.split("<pattern ", -1)).hasSize(2);
    assertThat(svg.split("url\\(#x-zone\\)", -1)).hasSize(3);
  }

  @Test
  void nothing_is_fetched_and_nothing_runs() {
    assertThat(write("t", label("l")))
        .doesNotContain("href")
        .doesNotContain("<style")
        .doesNotContain("onload");
  }
}
