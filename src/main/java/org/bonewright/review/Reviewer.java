package org.bonewright.review;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Plan;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
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

  /** Review a case that was read and found consistent. */
  public Review review(CaseFile caseFile) {
    return review(judge.judge(caseFile));
  }

  /** Review a case that these rules have judged. */
  Review review(JudgedCase judged) {
    CaseFile caseFile = judged.caseFile();
    LineMaker lines = new LineMaker(rules, caseFile);
    ChapterMaker chapters = new ChapterMaker(lines, rules);
    List<Plan> decisive = PlanVerdicts.decisive(caseFile);
    return new Review(
        heading(caseFile),
        new Review.Versions(Engine.VERSION, rules.version(), rules.hash()),
        RedFlags.of(caseFile, judged.subjects()),
        Summary.of(judged, decisive),
        judged.subjects().stream().map(s -> chapters.chapter(judged, s)).toList(),
        new HistoryMaker(judged, rules).history(),
        TableMaker.table(judged, rules),
        new DemandMaker(judged, rules, lines).demands(),
        QuestionMaker.questions(judged),
        Acceptances.lines(judged, rules),
        AssumptionMaker.assumptions(judged, rules),
        Cautions.notChecked(rules),
        Cautions.always(),
        decisive.stream().anyMatch(plan -> new PlanVerdicts(judged, plan).leavesCriticalOpen()));
  }

  private static Review.Heading heading(CaseFile caseFile) {
    return new Review.Heading(
        caseFile.reference(),
        Said.words(caseFile.provenance()),
        caseFile.source(),
        Said.patient(caseFile.patient()),
        Said.injury(caseFile));
  }
}
