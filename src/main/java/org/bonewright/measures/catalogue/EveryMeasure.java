package org.bonewright.measures.catalogue;

import java.util.List;
import java.util.stream.Stream;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.alignment.AlignmentMeasures;
import org.bonewright.measures.care.CareMeasures;
import org.bonewright.measures.compression.CompressionMeasures;
import org.bonewright.measures.force.ForceMeasures;
import org.bonewright.measures.graft.GraftMeasures;
import org.bonewright.measures.healing.HealingMeasures;
import org.bonewright.measures.history.HistoryMeasures;
import org.bonewright.measures.hold.HoldMeasures;
import org.bonewright.measures.host.HostMeasures;
import org.bonewright.measures.infection.InfectionMeasures;
import org.bonewright.measures.lag.LagMeasures;
import org.bonewright.measures.limb.LimbMeasures;
import org.bonewright.measures.line.LineMeasures;
import org.bonewright.measures.load.LoadMeasures;
import org.bonewright.measures.load.UsualLoads;
import org.bonewright.measures.nail.NailMeasures;
import org.bonewright.measures.nailchange.NailChangeMeasures;
import org.bonewright.measures.plate.PlateMeasures;
import org.bonewright.measures.reuse.ReuseMeasures;
import org.bonewright.measures.setting.SettingMeasures;

/** Every measure of Bonewright. */
public final class EveryMeasure {

  private EveryMeasure() {}

  /** Return the catalogue of all measures, by the published table of loads. */
  public static MeasureCatalogue catalogue() {
    return catalogue(UsualLoads.published());
  }

  /**
   * Return the catalogue of all measures.
   *
   * @param usual the table of loads that is in force
   */
  public static MeasureCatalogue catalogue(UsualLoads usual) {
    List<Measure> all =
        Stream.of(
                AlignmentMeasures.all(),
                CareMeasures.all(),
                CompressionMeasures.all(),
                ForceMeasures.all(usual),
                GraftMeasures.all(),
                HealingMeasures.all(),
                HistoryMeasures.all(),
                HoldMeasures.all(),
                HostMeasures.all(),
                InfectionMeasures.all(),
                LagMeasures.all(),
                LimbMeasures.all(),
                LineMeasures.all(),
                LoadMeasures.all(usual),
                NailMeasures.all(),
                NailChangeMeasures.all(),
                PlateMeasures.all(),
                ReuseMeasures.all(),
                SettingMeasures.all())
            .flatMap(List::stream)
            .toList();
    return MeasureCatalogue.of(all);
  }
}
