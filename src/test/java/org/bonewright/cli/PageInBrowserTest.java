package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Looks at the page of each demonstration in a real browser, as wide as on a desk and as narrow as
 * on a phone. All tests of a browser stand here, so that it is installed and started once.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PageInBrowserTest {

  private static final int DESK = 1280;
  private static final int PHONE = 390;

  private Path folder;
  private ChromeDriver browser;

  @BeforeAll
  void start(@TempDir Path folder) throws IOException {
    this.folder = folder;
    browser = Chromium.start(Files.createDirectory(folder.resolve("profile")));
    // A machine busy with other tests needs long for the widest table.
    browser.manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
  }

  @AfterAll
  void stop() {
    browser.quit();
  }

  static Stream<Path> demos() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases", "demo"))) {
      return folders.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void keeps_nobody_from_reading_it_on_a_desk_or_a_phone(Path demo) throws IOException {
    show(demo);
    List<String> found = new ArrayList<>();
    for (int width : List.of(DESK, PHONE)) {
      wide(width);
      for (boolean open : List.of(false, true)) {
        unfold(open);
        String where = width + " px, " + (open ? "unfolded: " : "folded: ");
        Axe.findings(browser).forEach(finding -> found.add(where + finding));
        found.addAll(overflow(width, where));
      }
    }
    String light = colours();
    prefer("dark");
    if (!colours().equals(light)) {
      Axe.findings(browser).forEach(finding -> found.add("dark: " + finding));
    }
    prefer("light");
    assertThat(found).isEmpty();
  }

  @Test
  void finds_faults_that_were_planted() throws IOException {
    show(demos().findFirst().orElseThrow());
    wide(PHONE);
    browser.executeScript(
        """
        document.querySelector('main').insertAdjacentHTML('afterbegin',
          '<p style="color: #ccc; width: 900px">Too pale, and too wide.</p>'
          + '<p><button style="all: unset; font-size: 6px">a</button>'
          + '<button style="all: unset; font-size: 6px">b</button></p>');
        document.documentElement.removeAttribute('lang');
        """);
    assertThat(Axe.findings(browser))
        .anyMatch(finding -> finding.startsWith("color-contrast"))
        .anyMatch(finding -> finding.startsWith("target-size"))
        .anyMatch(finding -> finding.startsWith("html-has-lang"));
    assertThat(overflow(PHONE, "")).isNotEmpty();
  }

  private void show(Path demo) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String[] command = {"review", demo.resolve("case.json").toString(), "--format", "html"};
    Main.run(command, new PrintStream(out, true, StandardCharsets.UTF_8), System.err);
    Path page = Files.write(folder.resolve("page.html"), out.toByteArray());
    browser.get(page.toUri().toString());
    assertThat(browser.getTitle()).startsWith("Review of demo-");
    wide(DESK);
  }

  private void wide(int width) {
    browser.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 844, "deviceScaleFactor", 1, "mobile", width == PHONE));
  }

  private void prefer(String scheme) {
    browser.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  private void unfold(boolean open) {
    browser.executeScript(
        "document.querySelectorAll('details').forEach(d => { d.open = arguments[0]; })", open);
  }

  /** What the page would have to be scrolled sideways for. */
  private List<String> overflow(int width, String where) {
    Object actual =
        browser.executeScript(
            "return Math.max(document.documentElement.scrollWidth, document.body.scrollWidth)");
    return actual instanceof Long wide && wide <= width
        ? List.of()
        : List.of(where + "the page is " + actual + " px wide");
  }

  /** The colours of everything that holds a text. */
  private String colours() {
    return String.valueOf(
        browser.executeScript(
            """
            return [...document.querySelectorAll('html, body, main *')].map(part => {
              const style = getComputedStyle(part);
              return style.color + style.backgroundColor;
            }).filter((colour, at, all) => all.indexOf(colour) === at).join('; ');
            """));
  }
}
