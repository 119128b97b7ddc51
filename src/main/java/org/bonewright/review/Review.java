package org.bonewright.review;

import java.util.List;
import java.util.Optional;

/**
 * The review of a case.
 *
 * @param heading what is reviewed
 * @param versions what reviewed it
 * @param redFlags what must go to a human at once; may be empty
 * @param summary the upshot in one or two sentences
 * @param chapters one for each operation, then one for each stage and plan, in order of time
 * @param history what the operations so far teach together
 * @param table the principles against the operations
 * @param forces what was computed of the forces in each construct
 * @param demands what each plan must achieve and whether it does
 * @param questions what to find out first, most decisive first
 * @param acceptances what a surgeon accepts, each with what stands of it; one line each
 * @param assumptions what was assumed because the file does not say
 * @param notChecked what this rule set does not look at
 * @param cautions what every reader must know
 * @param local what a site has changed, where the review is by a site's limits
 * @param leavesCriticalOpen whether the plan leaves a critical principle unmet, accepted or not, or
 *     unknown
 */
public record Review(
    Heading heading,
    Versions versions,
    List<RedFlag> redFlags,
    String summary,
    List<Chapter> chapters,
    History history,
    PrincipleTable table,
    ForceTable forces,
    List<PlanDemands> demands,
    List<Question> questions,
    List<String> acceptances,
    List<Assumption> assumptions,
    List<String> notChecked,
    List<String> cautions,
    Optional<LocalLimits> local,
    boolean leavesCriticalOpen) {

  /**
   * What is reviewed.
   *
   * @param reference the hospital's own reference
   * @param provenance where the case comes from, as a word
   * @param source the published text that it follows, if any
   * @param patient the patient in a few words
   * @param injury bone and injury in a few words
   */
  public record Heading(
      String reference,
      String provenance,
      Optional<String> source,
      String patient,
      String injury) {}

  /**
   * What reviewed it.
   *
   * @param engine version of Bonewright
   * @param ruleSet version of the rule set
   * @param hash content hash of the rule set
   * @param site the site whose limits were used, if it is one
   * @param profile the profile that was shown, unless it is the usual one
   */
  public record Versions(
      String engine,
      String ruleSet,
      String hash,
      Optional<SiteVersion> site,
      Optional<String> profile) {

    /** Return them as a sentence. */
    public String inWords() {
      return "Bonewright "
          + engine
          + ", rule set "
          + ruleSet
          + ", content "
          + hash
          + site.map(s -> ", site " + s.name() + ", content " + s.hash()).orElse("")
          + profile.map(p -> ", profile " + p).orElse("")
          + ".";
    }
  }

  /**
   * The site file that was used.
   *
   * @param name name of the site
   * @param hash content hash of the file
   */
  public record SiteVersion(String name, String hash) {}
}
