package org.bonewright.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The option that says by whose limits to judge. */
final class SiteChoice {

  @Option(
      names = "--site",
      paramLabel = "FILE",
      description = "Judge by the local limits and severities of this site file.")
  private @Nullable String site;

  /**
   * Return rules and shelf, those of a site file if one is named.
   *
   * @throws Unusable if the site file cannot be used; the message lists every problem
   */
  Local local() throws Unusable {
    return Local.of(site);
  }
}
