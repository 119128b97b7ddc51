package org.bonewright.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;

/** Every measure there is, by id. */
public final class MeasureCatalogue {

  private final Map<String, Measure> measures;

  private MeasureCatalogue(List<Measure> all) {
    this.measures =
        all.stream()
            .collect(
                Collectors.toMap(
                    measure -> measure.definition().id(),
                    Function.identity(),
                    (one, two) -> {
                      throw new IllegalStateException("two measures " + one.definition().id());
                    },
                    TreeMap::new));
  }

  /** Return the catalogue with every measure of Bonewright. */
  public static MeasureCatalogue all() {
    return new MeasureCatalogue(
        List.of(
            new AxiallyUnstable(),
            new BoltNumber(BoltNumber.What.DIAMETER),
            new BoltNumber(BoltNumber.What.FEWER_END),
            new BoltNumber(BoltNumber.What.TO_FRACTURE),
            new BoneGradeMeasure(),
            new BoneNameMeasure(),
            new BrokeAtEmptyHole(),
            new ConceptMeasure(),
            new ConfirmatorySigns(),
            new EndsResected(),
            new FailedBefore(),
            new FailedFactorsChanged(),
            new FarDefect(),
            new GapWidest(),
            new HoldDemand(),
            HoldOnWeakerSide.cortices(),
            HoldOnWeakerSide.lockingScrews(),
            new HolesOverLine(HolesOverLine.Count.OPEN),
            new HolesOverLine(HolesOverLine.Count.SCREW_IN_ZONE),
            new HolesOverLine(HolesOverLine.Count.SCREW_FREE),
            new ImplantUsed("nail-used", "nail", Nail.class),
            new ImplantUsed("plate-used", "plate", Plate.class),
            new LineAtIsthmus(),
            new LineHandling(),
            new NailLocked(),
            new NailNumber(NailNumber.What.DIAMETER),
            new NailNumber(NailNumber.What.FILL),
            new NailNumber(NailNumber.What.REAMED_OVER),
            new OpenHoleClearance(),
            new PatternClass(),
            new PlannedAction(PlannedAction.Action.CULTURE_DAYS),
            new PlannedAction(PlannedAction.Action.DEEP_SAMPLES),
            new PlannedAction(PlannedAction.Action.HISTOLOGY),
            new PlannedAction(PlannedAction.Action.INFECTION_DIRECTED),
            new Planned(),
            new PlateLength(),
            new PlateSpanRatio(),
            new Setting(),
            SideHeldBy.conventional(),
            SideHeldBy.lockedOnly(),
            new SiteAtRisk(),
            StatedQuantity.contact(),
            StatedQuantity.step(),
            new ZoneLength()));
  }

  /** Return every definition, in order of id. */
  public List<Definition> definitions() {
    return measures.values().stream().map(Measure::definition).toList();
  }

  /** Return the definition of a measure, if there is one of that id. */
  public Optional<Definition> definition(String id) {
    return Optional.ofNullable(measures.get(id)).map(Measure::definition);
  }

  /**
   * Return a measure.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  Measure measure(String id) {
    Measure measure = measures.get(id);
    if (measure == null) {
      throw new IllegalArgumentException("no measure " + id);
    }
    return measure;
  }
}
