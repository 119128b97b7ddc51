package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.openqa.selenium.JavascriptExecutor;

/** Asks axe-core for what keeps people from reading the page that a browser shows. */
final class Axe {

  private static final String SCRIPT = script();

  /** The rule for the size of what is clicked is off in axe-core unless asked for. */
  private static final String RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run(document, {
        runOnly: {type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']},
        rules: {'target-size': {enabled: true}},
        resultTypes: ['violations'],
        preload: false
      }).then(
        found => done(found.violations.flatMap(rule => rule.nodes.map(node =>
          rule.id + ': ' + node.target.join(' ') + ': ' + node.failureSummary))),
        fault => done(['axe-core did not run: ' + fault]));
      """;

  private Axe() {}

  /**
   * Return the findings up to level AA of WCAG 2.2, each with its rule, its place and its reason.
   */
  static List<String> findings(JavascriptExecutor browser) {
    if (!Boolean.TRUE.equals(browser.executeScript("return typeof axe === 'object'"))) {
      browser.executeScript(SCRIPT);
    }
    if (browser.executeAsyncScript(RUN) instanceof List<?> found) {
      return found.stream().map(String::valueOf).toList();
    }
    throw new AssertionError("axe-core gave no list");
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      if (in == null) {
        throw new AssertionError("axe.min.js is not on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
