package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.casefile.Resection;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * How much shorter the bone is in all, old shortening and new.
 *
 * <p>A stated shortening is that at the end of its operation. What is cut out and closed comes on
 * top of what was there before. Where a statement is smaller than that sum, it may tell the new
 * part alone, and the total may be either. Without a statement the bone is at least as short as the
 * sum.
 */
final class Shortening implements Measure {

  private static final Dimension NOTHING = new Dimension(0, 0, false, "");
  private static final Dimension ANY = new Dimension(0, Double.POSITIVE_INFINITY, false, "");

  @Override
  public Definition definition() {
    return new Definition(
        "shortening-total",
        "Shortening in all",
        Definition.signedMillimetres(),
        "shortening stated at the end, old and new together; not stated: at least the shortening"
            + " before plus the bone cut out minus the gap left",
        List.of("operations/reduction/shorteningMm", "operations/resection", "gap-widest"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    Dimension added = closed(cut(steps), gapLeft(scene.read("gap-widest")));
    Dimension sum = before(scene.subject().before()).plus(added).because("");
    Optional<Quantity> stated =
        stated(steps).or(() -> added.max() > 0 ? Optional.empty() : old(scene));
    MissingFact asked =
        scene.missing(
            "reduction/shorteningMm",
            "How much shorter than the other side is the bone at the end, old and new together?");
    if (stated.isEmpty()) {
      return new Reading.Amount(
          sum.min(),
          Double.POSITIVE_INFINITY,
          Kind.FACT,
          "at least " + Dimension.number(sum.min()) + " mm cut out and closed",
          List.of(asked));
    }
    Dimension told = Dimension.stated(stated.get(), "");
    return Reading.number(told, "as stated", asked);
  }

  /** What the last operation that tells of it left, and what was cut out and closed since. */
  private static Dimension before(List<Operation> operations) {
    Dimension sum = NOTHING;
    for (Operation operation : operations) {
      Optional<Quantity> stated = operation.reduction().flatMap(Reduction::shorteningMm);
      Dimension closed = closed(cut(List.of(operation)), gapLeft(operation));
      sum = stated.map(Shortening::notBelowZero).orElse(sum.plus(closed).because(""));
    }
    return sum;
  }

  private static Dimension notBelowZero(Quantity stated) {
    return new Dimension(Math.max(0, stated.min()), Math.max(0, stated.max()), false, "");
  }

  private static Dimension closed(Dimension cut, Dimension left) {
    return new Dimension(
        Math.max(0, cut.min() - left.max()), Math.max(0, cut.max() - left.min()), false, "");
  }

  private static Dimension gapLeft(Operation operation) {
    return operation
        .reduction()
        .flatMap(Reduction::widestGap)
        .map(gap -> Dimension.stated(gap, ""))
        .orElse(ANY);
  }

  private static Optional<Quantity> stated(List<Operation> steps) {
    return steps.stream()
        .flatMap(step -> step.reduction().flatMap(Reduction::shorteningMm).stream())
        .reduce((first, second) -> second);
  }

  /** Where a subject neither cuts nor tells, the bone stays as the last operation left it. */
  private static Optional<Quantity> old(Scene scene) {
    boolean untouched =
        scene.subject().steps().stream()
            .allMatch(
                step ->
                    step.resection().map(List::isEmpty).orElse(false)
                        && step.reduction().isEmpty()
                        && !step.carriesMainImplant().orElse(true));
    return untouched ? stated(scene.subject().before()) : Optional.empty();
  }

  /** Return the length of bone that these operations cut out, in mm. */
  static Dimension cut(List<Operation> steps) {
    Dimension sum = NOTHING;
    for (Operation step : steps) {
      for (Resection piece : step.resection().orElse(List.of())) {
        sum =
            sum.plus(
                    new Dimension(
                        Math.max(0, piece.toMm().min() - piece.fromMm().max()),
                        Math.max(0, piece.toMm().max() - piece.fromMm().min()),
                        false,
                        ""))
                .because("");
      }
    }
    return sum;
  }

  /** Return the gap left at the end, from nothing to anything where it is not told. */
  static Dimension gapLeft(Reading gap) {
    return gap instanceof Reading.Amount amount
        ? new Dimension(amount.min(), amount.max(), false, "")
        : ANY;
  }
}
