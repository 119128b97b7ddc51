package org.bonewright.cli;

import java.util.stream.Collectors;
import org.bonewright.principles.Profile;
import org.bonewright.principles.RuleSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The options that say by which limits to judge, and which principles to show. */
final class RulesChoice {

  @CommandLine.Mixin private SiteChoice site = new SiteChoice();

  @Option(
      names = "--profile",
      paramLabel = "default|exam",
      description = "Which principles to show and count; all are judged.")
  private @Nullable String profile;

  /**
   * Return the rule set, with the local limits if a site file is named.
   *
   * @throws Unusable if the site file cannot be used; the message lists every problem
   */
  RuleSet rules() throws Unusable {
    return local().rules();
  }

  /**
   * Return rules and shelf, those of a site file if one is named.
   *
   * @throws Unusable if the site file cannot be used; the message lists every problem
   */
  Local local() throws Unusable {
    return site.local();
  }

  /** Return whether a profile is named. */
  boolean namesProfile() {
    return profile != null;
  }

  /**
   * Return the profile that is named, else the usual one.
   *
   * @throws Unusable if there is no such profile
   */
  Profile profile(RuleSet rules) throws Unusable {
    if (profile == null) {
      return rules.usual();
    }
    String named = profile;
    return rules
        .profile(named)
        .orElseThrow(
            () ->
                new Unusable(
                    "There is no profile "
                        + named
                        + "; allowed: "
                        + rules.profiles().stream()
                            .map(Profile::id)
                            .collect(Collectors.joining(", "))
                        + "."));
  }
}
