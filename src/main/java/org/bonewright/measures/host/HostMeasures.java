package org.bonewright.measures.host;

import java.util.List;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.PlanTold;

/** The measures of the host. */
public final class HostMeasures {

  private HostMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new ComplexityFactors(),
        new DrugsListed(),
        new DrugUse(DrugUse.Group.ANTIRESORPTIVE),
        new DrugUse(DrugUse.Group.SLOWING),
        new EndocrineCheck(),
        new HostNumber(HostNumber.What.ALBUMIN),
        new HostNumber(HostNumber.What.HBA1C),
        new HostNumber(HostNumber.What.RADIATION),
        new HostNumber(HostNumber.What.VITAMIN_D),
        new HostWord(HostWord.What.DIABETES),
        new HostWord(HostWord.What.SMOKING),
        new HostWord(HostWord.What.TUMOUR),
        new MalnutritionRisk(),
        new SmokeFreeDays(),
        teamReview());
  }

  private static Measure teamReview() {
    return new PlanTold(
        new Definition(
            "team-review",
            "Plan discussed by a team",
            Definition.yesOrNo(),
            "yes when the plan says where and when it was discussed, else no; none in the past",
            List.of("plans/discussion"),
            "bookkeeping"),
        Plan::discussion,
        "a discussion is on file",
        "no discussion on file");
  }
}
