package org.bonewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bonewright.handbook.HandbookSite;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** Looks at pages of the handbook in a real browser, from a folder and without a server. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandbookInBrowserTest {

  private static final int DESK = 1280;
  private static final int PHONE = 390;

  /** One page of each layout: all that a narrow screen can bring to light stands on these. */
  private static final Set<String> LAYOUTS =
      Set.of("index", "principles/plate-span-ratio", "glossary", "search");

  private Path site;
  private ChromeDriver browser;

  @BeforeAll
  void start(@TempDir Path folder) throws IOException {
    site = folder.resolve("site");
    for (Map.Entry<String, String> file : HandbookSite.of(RuleSet.built()).files().entrySet()) {
      Path target = site.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.writeString(target, file.getValue(), StandardCharsets.UTF_8);
    }
    browser = Chromium.start(Files.createDirectory(folder.resolve("profile")));
    // A machine busy with other tests needs long for the longest page.
    browser.manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
  }

  @AfterAll
  void stop() {
    browser.quit();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "index",
        "principles/plate-span-ratio",
        "principles/strain-in-band",
        "principles/infection-confirmatory-sign-stops-plan",
        "promises/unknown-is-not-met",
        "measures",
        "failures",
        "remedies",
        "bibliography",
        "glossary",
        "history",
        "search"
      })
  void keeps_nobody_from_reading_it_on_a_desk_or_a_phone(String page) {
    List<String> found = new ArrayList<>();
    for (int width : List.of(DESK, PHONE)) {
      wide(width);
      show(page + ".html");
      if (width == DESK || LAYOUTS.contains(page)) {
        Axe.findings(browser).forEach(finding -> found.add(width + " px: " + finding));
      }
      found.addAll(overflow(width));
    }
    assertThat(found).isEmpty();
  }

  @Test
  void finds_a_principle_by_the_keyboard_alone() {
    wide(DESK);
    show("index.html");
    browser.executeScript("document.getElementById('q').focus()");
    browser.switchTo().activeElement().sendKeys("span zone", Keys.ENTER);
    assertThat(browser.getCurrentUrl()).contains("search.html?q=");
    assertThat(browser.findElement(By.id("count")).getText()).matches("\\d+ found");
    assertThat(browser.findElement(By.id("everything")).isDisplayed()).isFalse();

    WebElement box = browser.findElement(By.id("q"));
    box.sendKeys(Keys.ARROW_DOWN);
    WebElement first = browser.switchTo().activeElement();
    assertThat(first.getText()).isEqualTo("Plate long enough for the zone");
    assertThat(Axe.findings(browser)).isEmpty();
    first.sendKeys(Keys.ENTER);
    assertThat(browser.getTitle()).startsWith("Plate long enough for the zone");
  }

  @Test
  void tells_that_nothing_is_found_and_shows_all_again() {
    wide(DESK);
    show("search.html");
    WebElement box = browser.findElement(By.id("q"));
    box.sendKeys("zzzz");
    assertThat(browser.findElement(By.id("count")).getText()).startsWith("Nothing found");
    box.sendKeys(Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE);
    assertThat(browser.findElement(By.id("everything")).isDisplayed()).isTrue();
  }

  @Test
  void leads_past_the_bar_with_the_first_key() {
    wide(DESK);
    show("principles/plate-span-ratio.html");
    WebElement body = browser.findElement(By.tagName("body"));
    body.sendKeys(Keys.TAB);
    WebElement first = browser.switchTo().activeElement();
    assertThat(first.getText()).isEqualTo("Skip to the content");
    first.sendKeys(Keys.ENTER);
    assertThat(browser.switchTo().activeElement().getDomAttribute("id")).isEqualTo("content");
  }

  @Test
  void finds_faults_that_were_planted() {
    wide(PHONE);
    show("index.html");
    browser.executeScript(
        """
        document.querySelector('main').insertAdjacentHTML('afterbegin',
          '<p style="color: #ccc; width: 900px">Too pale, and too wide.</p><img src="x.png">');
        """);
    assertThat(Axe.findings(browser))
        .anyMatch(finding -> finding.startsWith("color-contrast"))
        .anyMatch(finding -> finding.startsWith("image-alt"));
    assertThat(overflow(PHONE)).isNotEmpty();
  }

  private void show(String page) {
    browser.get(site.resolve(page).toUri().toString());
    assertThat(browser.getTitle()).endsWith("Bonewright handbook");
  }

  private void wide(int width) {
    browser.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 844, "deviceScaleFactor", 1, "mobile", width == PHONE));
  }

  private List<String> overflow(int width) {
    Object actual =
        browser.executeScript(
            "return Math.max(document.documentElement.scrollWidth, document.body.scrollWidth)");
    return actual instanceof Long wide && wide <= width
        ? List.of()
        : List.of("at " + width + " px the page is " + actual + " px wide");
  }
}
