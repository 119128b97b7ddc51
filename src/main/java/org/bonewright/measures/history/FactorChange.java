package org.bonewright.measures.history;

import java.util.EnumSet;
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

  private enum Grade {
    YES,
    NO,
    UNKNOWN
  }

  private static final double LONGER = 1.1;

  /** A gap of 1 mm or less counts as closed. */
  private static final double CLOSED = 1;

  private final Scene then;
  private final Scene now;

  FactorChange(Scene then, Scene now) {
    this.then = then;
    this.now = now;
  }

  /** Return whether the factor certainly changes, certainly does not, or cannot be told (empty). */
  Optional<Boolean> of(Factor factor) {
    Grade grade =
        switch (factor) {
          case CONCEPT -> or(or(kindChanged(), conceptChanged()), boltsOut());
          case HOLD -> or(kindChanged(), moreHold());
          case LENGTH -> or(kindChanged(), longer());
          case IMPLANT -> or(kindChanged(), thicker());
          case GAP -> or(smallerGap(), newlyCompressed());
          case NAIL ->
              or(kindChanged(), or(grows("nail-diameter", 1), grows("bolts-fewer-end", 1)));
          case BIOLOGY -> newlyGrafted();
          case INFECTION -> yes("infection-directed");
          case ALIGNMENT -> straighter();
          case LOAD -> or(lessLoad(), boltsOut());
        };
    return asAnswer(grade);
  }

  /**
   * Return whether the bone becomes more stable: another kind of implant or concept, more hold, a
   * longer or thicker plate, a thicker nail or more bolts, a line newly compressed.
   */
  Optional<Boolean> stabler() {
    Grade plate =
        or(or(moreHold(), longer()), or(plated() ? thicker() : Grade.NO, newlyCompressed()));
    Grade nail = or(grows("nail-diameter", 1), grows("bolts-fewer-end", 1));
    return asAnswer(or(or(kindChanged(), conceptChanged()), or(plate, nail)));
  }

  private boolean plated() {
    return then.possibly("plate-used", "yes") && now.possibly("plate-used", "yes");
  }

  private static Optional<Boolean> asAnswer(Grade grade) {
    return grade == Grade.UNKNOWN ? Optional.empty() : Optional.of(grade == Grade.YES);
  }

  private Grade kindChanged() {
    if (!then.construct().known() || !now.construct().known()) {
      return Grade.UNKNOWN;
    }
    return answer(!kinds(now).isEmpty() && !kinds(then).equals(kinds(now)));
  }

  /** A nail made dynamic by taking bolts out bears load in another way. */
  private Grade boltsOut() {
    return answer(boltsOut(now));
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
    Grade differs = differs("concept");
    return !stated && differs == Grade.YES ? Grade.UNKNOWN : differs;
  }

  private Grade moreHold() {
    boolean support =
        now.construct().of(Strut.class).size() > then.construct().of(Strut.class).size()
            || now.construct().of(Plate.class).size() > then.construct().of(Plate.class).size();
    Grade more = support ? (then.construct().known() ? Grade.YES : Grade.UNKNOWN) : Grade.NO;
    return or(
        more,
        or(
            or(grows("cortices-weaker-side", 1), grows("locking-screws-weaker-side", 0.5)),
            differs("locked-only-side")));
  }

  private Grade longer() {
    Reading before = then.read("plate-length");
    Reading after = now.read("plate-length");
    if (before instanceof Reading.Amount a && after instanceof Reading.Amount b) {
      double least = b.min() / a.max();
      double most = b.max() / a.min();
      return least >= LONGER ? Grade.YES : most < LONGER ? Grade.NO : Grade.UNKNOWN;
    }
    return either(before, after);
  }

  /** Bending strength goes with the thickness of the plate, which its family gives. */
  private Grade thicker() {
    Optional<Double> before = thickness(then);
    Optional<Double> after = thickness(now);
    return before.isEmpty() || after.isEmpty() ? Grade.UNKNOWN : answer(after.get() > before.get());
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
    return less(worstAngle(then), worstAngle(now));
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

  /** Return whether a quantity became smaller. */
  private static Grade less(Optional<Quantity> before, Optional<Quantity> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return Grade.UNKNOWN;
    }
    if (after.get().max() < before.get().min()) {
      return Grade.YES;
    }
    return after.get().min() >= before.get().max() ? Grade.NO : Grade.UNKNOWN;
  }

  private Grade lessLoad() {
    Optional<Quantity> after = firstLimit(now);
    return after.isEmpty() && now.subject().planned() ? Grade.NO : less(firstLimit(then), after);
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

  private Grade differs(String measure) {
    Reading before = then.read(measure);
    Reading after = now.read(measure);
    if (before instanceof Reading.Word a && after instanceof Reading.Word b) {
      if (a.possible().size() == 1 && b.possible().size() == 1) {
        return answer(!a.possible().equals(b.possible()));
      }
      Set<String> shared = new java.util.TreeSet<>(a.possible());
      shared.retainAll(b.possible());
      return shared.isEmpty() ? Grade.YES : Grade.UNKNOWN;
    }
    return either(before, after);
  }

  private Grade grows(String measure, double atLeast) {
    Reading before = then.read(measure);
    Reading after = now.read(measure);
    if (before instanceof Reading.Amount a && after instanceof Reading.Amount b) {
      if (b.min() - a.max() >= atLeast) {
        return Grade.YES;
      }
      return b.max() - a.min() < atLeast ? Grade.NO : Grade.UNKNOWN;
    }
    return either(before, after);
  }

  private static Grade either(Reading before, Reading after) {
    return before instanceof Reading.None || after instanceof Reading.None
        ? Grade.NO
        : Grade.UNKNOWN;
  }

  private static Grade answer(boolean yes) {
    return yes ? Grade.YES : Grade.NO;
  }

  private static Grade or(Grade a, Grade b) {
    Set<Grade> both = EnumSet.of(a, b);
    return both.contains(Grade.YES)
        ? Grade.YES
        : both.contains(Grade.UNKNOWN) ? Grade.UNKNOWN : Grade.NO;
  }
}
