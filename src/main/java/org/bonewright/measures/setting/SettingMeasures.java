package org.bonewright.measures.setting;

import java.util.List;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Measure;

/** The measures of the setting. */
public final class SettingMeasures {

  private SettingMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new BoneNameMeasure(),
        new ImplantUsed("fixator-used", "fixator", ExternalFixator.class),
        new ImplantUsed("nail-used", "nail", Nail.class),
        new ImplantUsed("plate-used", "plate", Plate.class),
        new MainImplantUsed(),
        new MeantToUnite(),
        new OtherImplantThere(),
        new Planned(),
        new Setting(),
        new StillBroken());
  }
}
