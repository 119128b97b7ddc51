package org.bonewright.measures.host;

import java.util.List;
import org.bonewright.measures.Measure;

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
        new TeamReview());
  }
}
