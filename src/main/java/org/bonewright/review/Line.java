package org.bonewright.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.principles.SampleShare;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/**
 * One verdict in words.
 *
 * @param principle id of the principle
 * @param title its title
 * @param subject id of the subject
 * @param verdict the verdict
 * @param severity severity after all steps: of what is unmet, or the worst that may be
 * @param words what was found, with numbers and limits
 * @param remedy what would clear it; empty unless unmet
 * @param labels labels such as "infection comes first"
 * @param steps how the severity came about, one clause for each step
 * @param otherView the other view, where the literature disagrees on what decided
 * @param accepted the reason with which a surgeon accepts it, if one does
 * @param fromMemory whether every source of it is cited from memory
 * @param why the mechanism behind the principle
 * @param sources where it comes from, each marked as read or from memory
 * @param readings what was read, number by number
 * @param limits the limits that hold here, by name
 * @param workings what was read, one clause for each need
 * @param turns what would turn it, one clause each
 * @param local what a site has to do with it, if it has
 * @param share how many samples give the verdict, where a mechanical model has a part in it
 */
public record Line(
    String principle,
    String title,
    String subject,
    VerdictKind verdict,
    Optional<Severity> severity,
    String words,
    String remedy,
    List<String> labels,
    List<String> steps,
    Optional<String> otherView,
    Optional<String> accepted,
    boolean fromMemory,
    String why,
    List<String> sources,
    List<Measured> readings,
    Map<String, String> limits,
    List<String> workings,
    List<String> turns,
    Optional<LocalNote> local,
    Optional<SampleShare> share) {

  /** Return the share of samples as a clause; nothing where the words say it already. */
  public Optional<String> shareBeside() {
    return share.map(SampleShare::inWords).filter(clause -> !words.contains(clause));
  }

  /**
   * One input of a verdict.
   *
   * @param measure id of the measure
   * @param title its title
   * @param shown the value, range or words, without unit
   * @param unit the unit as people write it; empty for words and pure numbers
   * @param kind fact, assumed, record or model; unknown or none
   * @param working how it came about
   * @param sampled the numbers of a model, where it is one
   */
  public record Measured(
      String measure,
      String title,
      String shown,
      String unit,
      String kind,
      String working,
      Optional<Sampled> sampled) {}

  /**
   * A number that a mechanical model computes for many sets of assumptions, rounded.
   *
   * @param nominal the number in the middle of the samples
   * @param low the value that one sample in twenty does not reach
   * @param high the value that one sample in twenty exceeds
   * @param samples how many samples there are
   * @param decides the assumption that moves it most, in a few words
   */
  public record Sampled(double nominal, double low, double high, int samples, String decides) {}
}
