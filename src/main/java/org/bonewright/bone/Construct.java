package org.bonewright.bone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.PieceDecision;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Removal;

/**
 * What holds the bone at the end of an operation: what that operation put in, and what earlier ones
 * left in place. Metal stays until an operation removes it by its id.
 *
 * <p>Two conventions keep metal from being counted that does not hold. An operation that puts in a
 * plate, nail or fixator and does not say what it removed is taken to have removed the earlier
 * ones; one that left them states an empty list, or names under {@code pieces} what stays. An
 * implant of the kind that broke or pulled out holds nothing afterwards; a nail beside a broken
 * plate still does. After an operation that says neither what it put in nor what it removed, what
 * holds the bone is not known.
 *
 * @param implants the implants, earlier ones first
 * @param known whether every operation up to here says what it put in; else there may be more
 */
public record Construct(List<Held> implants, boolean known) {

  /**
   * An implant in the bone.
   *
   * @param operation id of the operation that put it in
   * @param implant the implant; a plate is without the screws that were taken out since
   * @param retained whether an earlier operation put it in
   */
  public record Held(String operation, Implant implant, boolean retained) {
    /** Return the implant's name in the whole history, such as {@code op-1/plate-1}. */
    public String path() {
      return operation + "/" + implant.id();
    }
  }

  /** Return the construct at the end of the last of these operations, in order of time. */
  public static Construct after(List<Operation> operations) {
    return after(operations, true);
  }

  /**
   * Return all that lies in the bone at the end of the last of these operations, whether or not it
   * still holds.
   */
  public static Construct inside(List<Operation> operations) {
    return after(operations, false);
  }

  private static Construct after(List<Operation> operations, boolean holding) {
    List<Held> held = new ArrayList<>();
    List<Removal> soFar = new ArrayList<>();
    boolean known = true;
    for (int i = 0; i < operations.size(); i++) {
      Operation operation = operations.get(i);
      boolean keepsAll = operation.removed().map(List::isEmpty).orElse(false);
      known =
          operation.fixation().isPresent()
              && (known || (operation.carriesMainImplant().orElse(false) && !keepsAll));
      Set<String> stays = decided(operation, PieceDecision.Decision.STAYS);
      Set<String> taken = decided(operation, PieceDecision.Decision.REMOVED);
      if (operation.removed().isPresent()) {
        operation
            .removed()
            .get()
            .forEach(removal -> takeOut(held, removal, soFar, new Put(operations)));
      } else if (operation.fixation().isEmpty() || operation.carriesMainImplant().orElse(false)) {
        held.removeIf(h -> h.implant().isMain() && !stays.contains(h.path()));
      }
      held.removeIf(h -> taken.contains(h.path()));
      held.replaceAll(h -> new Held(h.operation(), h.implant(), true));
      operation
          .fixation()
          .ifPresent(
              put -> put.forEach(implant -> held.add(new Held(operation.id(), implant, false))));
      if (holding && i < operations.size() - 1) {
        operation
            .outcome()
            .flatMap(Outcome::mode)
            .flatMap(Construct::failedMetal)
            .ifPresent(type -> held.removeIf(h -> type.isInstance(h.implant())));
      }
    }
    return new Construct(List.copyOf(held), known);
  }

  private static Set<String> decided(Operation operation, PieceDecision.Decision decision) {
    return operation.pieces().stream()
        .flatMap(List::stream)
        .filter(piece -> piece.decision() == decision)
        .map(PieceDecision::of)
        .collect(Collectors.toSet());
  }

  /**
   * Take an implant out, or single screws, bolts or pins of it. These are numbered as they were put
   * in, so all that came out of it so far is left out of the implant as it was put in.
   */
  private static void takeOut(List<Held> held, Removal removal, List<Removal> soFar, Put put) {
    soFar.add(removal);
    for (int i = 0; i < held.size(); i++) {
      Held h = held.get(i);
      if (h.path().equals(removal.of())) {
        if (removal.isWhole()) {
          held.remove(i);
        } else {
          held.set(i, new Held(h.operation(), without(put.as(h), soFar, h.path()), h.retained()));
        }
        return;
      }
    }
  }

  /** What is left of an implant once single screws, bolts or pins are out. */
  private static Implant without(Implant implant, List<Removal> removals, String path) {
    List<Removal> ofIt = removals.stream().filter(removal -> removal.of().equals(path)).toList();
    if (implant instanceof Plate plate) {
      return plate.withoutScrews(ofIt.stream().flatMap(r -> r.holes().stream()).toList());
    }
    if (implant instanceof Nail nail) {
      return nail.withoutBolts(ofIt.stream().flatMap(r -> r.bolts().stream()).toList());
    }
    return implant instanceof ExternalFixator fixator
        ? fixator.withoutPins(ofIt.stream().flatMap(r -> r.pins().stream()).toList())
        : implant;
  }

  /**
   * Implants as they were put in.
   *
   * @param operations the operations that put them in
   */
  private record Put(List<Operation> operations) {
    Implant as(Held held) {
      return operations.stream()
          .filter(operation -> operation.id().equals(held.operation()))
          .flatMap(operation -> operation.fixation().stream().flatMap(List::stream))
          .filter(implant -> implant.id().equals(held.implant().id()))
          .findFirst()
          .orElse(held.implant());
    }
  }

  /** Return the kind of implant that holds nothing any more after such a failure. */
  private static Optional<Class<? extends Implant>> failedMetal(FailureMode mode) {
    return switch (mode) {
      case SCREWS_PULLED_OUT,
          SCREWS_PULLED_OUT_IN_SEQUENCE,
          PLATE_PULLED_OFF_AS_BLOCK,
          PLATE_BROKEN,
          PLATE_BROKEN_AT_EMPTY_HOLE,
          PLATE_BROKEN_AT_FILLED_HOLE ->
          Optional.of(Plate.class);
      case NAIL_BROKEN, NAIL_BROKEN_AT_BOLT_HOLE, NAIL_BROKEN_MID_SHAFT -> Optional.of(Nail.class);
      case PINS_LOOSE -> Optional.of(ExternalFixator.class);
      default -> Optional.empty();
    };
  }

  /** Return the implants of one type, in order. */
  public <T extends Implant> List<T> of(Class<T> type) {
    return implants.stream().map(Held::implant).filter(type::isInstance).map(type::cast).toList();
  }
}
