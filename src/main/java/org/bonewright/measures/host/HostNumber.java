package org.bonewright.measures.host;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** A laboratory value or dose, the latest that was known. */
final class HostNumber implements Measure {

  /** Which value. */
  enum What {
    VITAMIN_D,
    ALBUMIN,
    HBA1C,
    RADIATION
  }

  private final What what;

  HostNumber(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case VITAMIN_D ->
          of("vitamin-d", "25-hydroxy vitamin D", "ng/mL", "findings/host/vitaminDNgMl");
      case ALBUMIN -> of("albumin", "Albumin", "g/L", "findings/host/albuminGL");
      case HBA1C -> of("hba1c", "Long-term blood sugar (HbA1c)", "%", "findings/host/hba1cPercent");
      case RADIATION -> of("radiation-dose", "Radiation at the site", "Gy", "findings/radiationGy");
    };
  }

  private static Definition of(String id, String title, String unit, String input) {
    return new Definition(
        id,
        title,
        new Definition.Domain.Numbers(unit, unit, 0, Double.POSITIVE_INFINITY, 0),
        "the latest value that was known",
        List.of(input),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact missing = scene.missingInCase(definition().inputs().get(0), question());
    return scene
        .subject()
        .latest(this::value)
        .map(found -> Reading.number(Dimension.stated(found, ""), "as stated", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private Optional<Quantity> value(Finding finding) {
    return switch (what) {
      case VITAMIN_D -> finding.host().flatMap(Host::vitaminDNgMl);
      case ALBUMIN -> finding.host().flatMap(Host::albuminGL);
      case HBA1C -> finding.host().flatMap(Host::hba1cPercent);
      case RADIATION -> finding.radiationGy();
    };
  }

  private String question() {
    return switch (what) {
      case VITAMIN_D -> "What is the 25-hydroxy vitamin D, in ng/mL?";
      case ALBUMIN -> "What is the albumin, in g/L?";
      case HBA1C -> "What is the long-term blood sugar (HbA1c), in percent?";
      case RADIATION -> "Was the site irradiated, and with how many Gy (0 for not)?";
    };
  }
}
