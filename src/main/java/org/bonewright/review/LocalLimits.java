package org.bonewright.review;

import java.util.List;

/**
 * What a site has changed in this review.
 *
 * @param site name of the site
 * @param hash content hash of its file
 * @param invented whether the site is made up
 * @param inUse the changes that hold for some verdict here, in the order of the file
 * @param elsewhere verdicts of other principles that differ because these count what those say
 * @param unused how many changes concern nothing here
 * @param differing how many verdicts differ in all, in kind or in severity
 */
public record LocalLimits(
    String site,
    String hash,
    boolean invented,
    List<InUse> inUse,
    List<Differing> elsewhere,
    int unused,
    int differing) {

  /**
   * A change that holds for some verdict.
   *
   * @param change the change
   * @param differing the verdicts of its principle that differ, in order of time
   */
  public record InUse(LocalChange change, List<Differing> differing) {}

  /**
   * A verdict that differs.
   *
   * @param subject id of the subject
   * @param principle id of the principle
   * @param title its title
   * @param here the verdict by what the site has set
   * @param published the verdict by what is published
   */
  public record Differing(
      String subject, String principle, String title, String here, String published) {

    /** Return it in a clause, without the principle. */
    public String inWords() {
      return subject + ": " + here + " here, " + published + " by the published limits";
    }
  }

  /** Return the heading: the site, how much of it is in use and how many verdicts differ. */
  public String inShort() {
    return site
        + (invented ? " (invented site)" : "")
        + ": "
        + counted(inUse.size(), "change")
        + " in use"
        + (unused == 0 ? "" : ", " + unused + " not")
        + "; "
        + (differing == 0 ? "no verdict differs" : counted(differing, "verdict"))
        + (differing == 0 ? "" : differing == 1 ? " differs" : " differ")
        + " from the published";
  }

  private static String counted(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
