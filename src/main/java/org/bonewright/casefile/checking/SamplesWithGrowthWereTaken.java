package org.bonewright.casefile.checking;

import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.SampleResult;

/** No more samples grew the same organism than were taken. */
final class SamplesWithGrowthWereTaken implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Located.each(contents.file().findings(), At.FILE.field("findings"))
        .forEach(
            finding ->
                finding
                    .value()
                    .infection()
                    .flatMap(InfectionSigns::samples)
                    .ifPresent(
                        samples ->
                            look(
                                samples,
                                finding.at().field("infection").field("samples"),
                                objections)));
  }

  private static void look(SampleResult samples, At at, Objections objections) {
    samples
        .sameOrganism()
        .filter(same -> Certainly.below(samples.taken(), same))
        .ifPresent(
            same ->
                objections.refuse(
                    at.field("sameOrganism"),
                    "growth in "
                        + Wording.number(same)
                        + " of "
                        + Wording.number(samples.taken())
                        + " samples",
                    "at most the number of samples taken"));
  }
}
