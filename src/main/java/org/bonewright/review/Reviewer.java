package org.bonewright.review;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Words;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Profile;
import org.bonewright.principles.RuleSet;

/** Reviews cases. Make one and keep it: the rules are loaded once. It may be shared by threads. */
public final class Reviewer {

  private final RuleSet rules;
  private final Judge judge;

  /** Make a reviewer with these rules. */
  public Reviewer(RuleSet rules) {
    this.rules = rules;
    this.judge = new Judge(rules);
  }

  /** Review a case that was read and found consistent, and show every principle. */
  public Review review(CaseFile caseFile) {
    return review(caseFile, rules.usual());
  }

  /**
   * Review a case that was read and found consistent.
   *
   * @param profile which principles to show and count; all are judged
   */
  public Review review(CaseFile caseFile, Profile profile) {
    return review(judge.judge(caseFile), profile);
  }

  /** Review a case that these rules have judged. */
  Review review(JudgedCase judged) {
    return review(judged, rules.usual());
  }

  /**
   * What tells of the whole case is made from every verdict: what the site changes, what a surgeon
   * accepts, whether a failure stays unexplained, and whether something critical stays open.
   */
  private Review review(JudgedCase judged, Profile profile) {
    CaseFile caseFile = judged.caseFile();
    RuleSet shown = rules.shown(profile);
    JudgedCase seen = profile.shown(judged);
    LocalMaker local = new LocalMaker(rules, judged);
    LineMaker lines = new LineMaker(rules, caseFile, local);
    ChapterMaker chapters = new ChapterMaker(lines, rules, judged);
    List<Plan> decisive = PlanVerdicts.decisive(caseFile);
    return new Review(
        heading(caseFile),
        versions(rules, profile),
        RedFlags.of(caseFile, judged.subjects()),
        Summary.of(seen, decisive),
        judged.subjects().stream().map(s -> chapters.chapter(seen, s)).toList(),
        new HistoryMaker(seen, shown).history(),
        TableMaker.table(seen, shown, local),
        new ForceMaker(seen, rules).table(),
        new DemandMaker(seen, shown, lines).demands(),
        QuestionMaker.questions(seen),
        Acceptances.lines(judged, rules),
        AssumptionMaker.assumptions(seen, rules),
        Cautions.notChecked(rules, profile),
        Cautions.always(),
        local.section(),
        decisive.stream().anyMatch(plan -> new PlanVerdicts(judged, plan).leavesCriticalOpen()));
  }

  /** Return what judges: engine, rule set, site, profile. */
  public static Review.Versions versions(RuleSet rules, Profile profile) {
    return new Review.Versions(
        Engine.VERSION,
        rules.version(),
        rules.hash(),
        rules.site().map(site -> new Review.SiteVersion(site.name(), site.hash())),
        profile.isDefault() ? Optional.empty() : Optional.of(profile.id()));
  }

  private static Review.Heading heading(CaseFile caseFile) {
    return new Review.Heading(
        caseFile.reference(),
        Words.of(caseFile.provenance()),
        caseFile.source(),
        Said.patient(caseFile.patient()),
        Said.injury(caseFile));
  }
}
