package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.PlateSize;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LoadStep;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Whether a revision changes one class of factors against the operation that failed. Every answer
 * is yes, no or unknown. A change of implant kind changes concept, hold, length and nail at once;
 * for the rest a change is one towards the better: more hold, a longer plate, a smaller gap, graft
 * where there was none. (What counts as a change is our convention.)
 */
public final class FactorChange {

  private static final double LONGER = 1.1;

  /** A gap of 1 mm or less counts as closed. */
  private static final double CLOSED = 1;

  private final Scene then;
  private final Scene now;
  private final ThenAndNow readings;

  FactorChange(Scene then, Scene now) {
    this.then = then;
    this.now = now;
    this.readings = new ThenAndNow(then, now);
  }

  /** Return whether the factor certainly changes, certainly does not, or cannot be told (empty). */
  Optional<Boolean> of(Factor factor) {
    Grade grade =
        switch (factor) {
          case CONCEPT -> Grade.or(kindChanged(), conceptChanged(), boltsOut());
          case HOLD -> Grade.or(kindChanged(), moreHold());
          case LENGTH -> Grade.or(kindChanged(), longer());
          case IMPLANT -> Grade.or(kindChanged(), thicker());
          case GAP -> Grade.or(smallerGap(), newlyCompressed());
          case NAIL -> Grade.or(kindChanged(), biggerNail());
          case BIOLOGY -> newlyGrafted();
          case INFECTION -> yes("infection-directed");
          case ALIGNMENT -> straighter();
          case LOAD -> Grade.or(lessLoad(), boltsOut());
        };
    return grade.asAnswer();
  }

  /**
   * Return whether the bone becomes more stable: another kind of implant or concept, more hold, a
   * longer or thicker plate, a thicker nail or more bolts, a line newly compressed.
   */
  Optional<Boolean> stabler() {
    Grade plate =
        Grade.or(moreHold(), longer(), plated() ? thicker() : Grade.NO, newlyCompressed());
    return Grade.or(kindChanged(), conceptChanged(), plate, biggerNail()).asAnswer();
  }

  private Grade biggerNail() {
    return Grade.or(readings.grows("nail-diameter", 1), readings.grows("bolts-fewer-end", 1));
  }

  private boolean plated() {
    return then.possibly("plate-used", "yes") && now.possibly("plate-used", "yes");
  }

  private Grade kindChanged() {
    if (!then.construct().known() || !now.construct().known()) {
      return Grade.UNKNOWN;
    }
    return Grade.of(!kinds(now).isEmpty() && !kinds(then).equals(kinds(now)));
  }

  /** A nail made dynamic by taking bolts out bears load in another way. */
  private Grade boltsOut() {
    return Grade.of(boltsOut(now));
  }

  /** Return whether a subject takes single bolts out of a nail. */
  static boolean boltsOut(Scene scene) {
    return scene.subject().steps().stream()
        .flatMap(step -> step.removed().stream())
        .flatMap(List::stream)
        .anyMatch(removal -> !removal.bolts().isEmpty());
  }

  private static Set<Integer> kinds(Scene scene) {
    List<Class<? extends Implant>> main = List.of(Plate.class, Nail.class, ExternalFixator.class);
    Set<Integer> kinds = new java.util.TreeSet<>();
    for (int i = 0; i < main.size(); i++) {
      if (!scene.construct().of(main.get(i)).isEmpty()) {
        kinds.add(i);
      }
    }
    return kinds;
  }

  /** An inferred concept may be contradicted by the surgeon, so that it proves no change. */
  private Grade conceptChanged() {
    boolean stated = then.fixing().concept().isPresent() && now.fixing().concept().isPresent();
    Grade differs = readings.differs("concept");
    return !stated && differs == Grade.YES ? Grade.UNKNOWN : differs;
  }

  private Grade moreHold() {
    boolean support =
        now.construct().of(Strut.class).size() > then.construct().of(Strut.class).size()
            || now.construct().of(Plate.class).size() > then.construct().of(Plate.class).size();
    Grade more = support ? (then.construct().known() ? Grade.YES : Grade.UNKNOWN) : Grade.NO;
    return Grade.or(
        more,
        readings.grows("cortices-weaker-side", 1),
        readings.grows("locking-screws-weaker-side", 0.5),
        readings.differs("locked-only-side"));
  }

  private Grade longer() {
    return readings.growsTimes("plate-length", LONGER);
  }

  /** Bending strength goes with the thickness of the plate, which its family gives. */
  private Grade thicker() {
    Optional<Double> before = thickness(then);
    Optional<Double> after = thickness(now);
    return before.isEmpty() || after.isEmpty()
        ? Grade.UNKNOWN
        : Grade.of(after.get() > before.get());
  }

  private static Optional<Double> thickness(Scene scene) {
    return scene.mainPlate().flatMap(PlacedPlate::size).map(PlateSize::thickness);
  }

  private Grade smallerGap() {
    Reading before = then.read("gap-widest");
    Reading after = now.read("gap-widest");
    boolean closedBefore = before instanceof Reading.Amount a && a.max() <= CLOSED;
    boolean openAfter = after instanceof Reading.Amount a && a.min() > CLOSED;
    if (closedBefore || openAfter) {
      return Grade.NO;
    }
    boolean openBefore = before instanceof Reading.Amount a && a.min() > CLOSED;
    boolean closedAfter = after instanceof Reading.Amount a && a.max() <= CLOSED;
    return openBefore && closedAfter ? Grade.YES : Grade.UNKNOWN;
  }

  /** A line that nothing holds is not compressed. */
  private Grade newlyCompressed() {
    if (now.read("line-handling") instanceof Reading.None) {
      return Grade.NO;
    }
    if (now.certainly("line-handling", "bridged") || !then.possibly("line-handling", "bridged")) {
      return Grade.NO;
    }
    return !now.possibly("line-handling", "bridged") && then.certainly("line-handling", "bridged")
        ? Grade.YES
        : Grade.UNKNOWN;
  }

  private Grade newlyGrafted() {
    Grade before = any(then, operation -> !operation.biology().orElse(List.of()).isEmpty());
    Grade after = any(now, operation -> !operation.biology().orElse(List.of()).isEmpty());
    if (after == Grade.YES) {
      return before == Grade.YES ? Grade.NO : before == Grade.NO ? Grade.YES : Grade.UNKNOWN;
    }
    return after;
  }

  private static Grade any(Scene scene, Predicate<Operation> grafted) {
    List<Operation> steps = scene.subject().steps();
    if (steps.stream().anyMatch(grafted)) {
      return Grade.YES;
    }
    boolean told = steps.stream().allMatch(step -> step.biology().isPresent());
    return told || scene.subject().planned() ? Grade.NO : Grade.UNKNOWN;
  }

  private Grade straighter() {
    return ThenAndNow.less(worstAngle(then), worstAngle(now));
  }

  private static Optional<Quantity> worstAngle(Scene scene) {
    Optional<Reduction> reduction = scene.reduction();
    return reduction
        .flatMap(Reduction::coronalDeg)
        .map(FactorChange::magnitude)
        .flatMap(
            coronal ->
                reduction
                    .flatMap(Reduction::sagittalDeg)
                    .map(FactorChange::magnitude)
                    .map(
                        sagittal ->
                            new Quantity(
                                Math.max(coronal.min(), sagittal.min()),
                                Math.max(coronal.max(), sagittal.max()))));
  }

  private static Quantity magnitude(Quantity angle) {
    double largest = Math.max(Math.abs(angle.min()), Math.abs(angle.max()));
    double least = Math.max(0, Math.max(angle.min(), -angle.max()));
    return new Quantity(least, largest);
  }

  private Grade lessLoad() {
    Optional<Quantity> after = firstLimit(now);
    return after.isEmpty() && now.subject().planned()
        ? Grade.NO
        : ThenAndNow.less(firstLimit(then), after);
  }

  private static Optional<Quantity> firstLimit(Scene scene) {
    return scene
        .operation()
        .aftercare()
        .flatMap(Aftercare::load)
        .filter(steps -> !steps.isEmpty())
        .map(steps -> steps.get(0))
        .map(LoadStep::limitKg);
  }

  private Grade yes(String measure) {
    if (now.certainly(measure, "yes")) {
      return Grade.YES;
    }
    return now.possibly(measure, "yes") ? Grade.UNKNOWN : Grade.NO;
  }
}
