package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * The browser that the tests of the page look through. Where none is installed, it is installed
 * from Debian or Ubuntu if that is allowed; else it is said what to install. The paths of browser
 * and driver are always given, so that nothing looks for them on the network.
 */
final class Chromium {

  /** Environment variables that name the two programs where they lie elsewhere. */
  private static final String BROWSER = "BONEWRIGHT_CHROMIUM";

  private static final String DRIVER = "BONEWRIGHT_CHROMEDRIVER";

  private static final List<String> BROWSERS =
      List.of(
          "/usr/bin/chromium",
          "/usr/bin/chromium-browser",
          "/usr/bin/google-chrome",
          "/usr/bin/google-chrome-stable");
  private static final List<String> DRIVERS =
      List.of("/usr/bin/chromedriver", "/usr/lib/chromium-browser/chromedriver");
  private static final List<String> FLAGS =
      List.of(
          "--headless",
          "--disable-gpu",
          "--disable-quic",
          "--disable-dev-shm-usage",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  /** Warns of development tools that no test uses; held here, or the level is forgotten. */
  private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

  private Chromium() {}

  /**
   * Start a browser that shows nothing on the screen.
   *
   * @param profile an empty folder for what it writes down
   */
  static ChromeDriver start(Path profile) {
    if (browser().isEmpty() || driver().isEmpty()) {
      install();
    }
    SELENIUM.setLevel(Level.SEVERE);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser().orElseThrow(Chromium::missing).toFile());
    options.addArguments(FLAGS);
    options.addArguments("--user-data-dir=" + profile);
    if (isRoot()) {
      options.addArguments("--no-sandbox");
    }
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(driver().orElseThrow(Chromium::missing).toFile())
            .usingAnyFreePort()
            .build();
    return new ChromeDriver(service, options);
  }

  private static Optional<Path> browser() {
    return find(BROWSER, BROWSERS);
  }

  private static Optional<Path> driver() {
    return find(DRIVER, DRIVERS);
  }

  private static Optional<Path> find(String variable, List<String> places) {
    return Stream.concat(Optional.ofNullable(System.getenv(variable)).stream(), places.stream())
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static AssertionError missing() {
    return new AssertionError(
        "The page is looked at in Chromium, which is not here. Install the packages chromium and"
            + " chromium-driver, or name the programs in "
            + BROWSER
            + " and "
            + DRIVER
            + ". Looked at: "
            + BROWSERS
            + ", "
            + DRIVERS);
  }

  private static void install() {
    boolean root = isRoot();
    if (!Files.isExecutable(Path.of("/usr/bin/apt-get")) || !(root || sudoWithoutPassword())) {
      throw missing();
    }
    System.err.println("No Chromium here: installing chromium and chromium-driver with apt-get.");
    List<String> apt = new ArrayList<>(root ? List.of() : List.of("sudo", "-n"));
    apt.addAll(
        List.of(
            "env",
            "DEBIAN_FRONTEND=noninteractive",
            "apt-get",
            "-q",
            "-y",
            "-o",
            "DPkg::Lock::Timeout=300"));
    run(with(apt, "update"));
    int code = run(with(apt, "install", "--no-install-recommends", "chromium", "chromium-driver"));
    if (code != 0) {
      AssertionError fault = missing();
      fault.addSuppressed(new IllegalStateException("apt-get install left with " + code));
      throw fault;
    }
  }

  private static List<String> with(List<String> command, String... more) {
    List<String> whole = new ArrayList<>(command);
    whole.addAll(List.of(more));
    return whole;
  }

  private static boolean isRoot() {
    return "root".equals(System.getProperty("user.name"));
  }

  private static boolean sudoWithoutPassword() {
    return Files.isExecutable(Path.of("/usr/bin/sudo")) && run(List.of("sudo", "-n", "true")) == 0;
  }

  /** Run a command to its end; what it says goes to standard error. */
  private static int run(List<String> command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getOutputStream().close();
      try (InputStream said = process.getInputStream()) {
        System.err.println(new String(said.readAllBytes(), StandardCharsets.UTF_8));
      }
      return process.waitFor();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
