package org.bonewright.measures;

import java.util.List;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Operation;

/**
 * Which operation set a fracture as it now stands: the last one that put in a plate, nail or
 * fixator or tells of a reduction. Screws taken out, or graft alone, leave reduction and
 * compression as they were.
 */
final class Fixing {

  private Fixing() {}

  /**
   * Return that operation; the last of all where none set anything. Where one after another does
   * not say what it put in, either may have set it: then nothing but its name is returned.
   *
   * @param operations in order of time, one at least
   */
  static Operation in(List<Operation> operations) {
    for (int i = operations.size() - 1; i >= 0; i--) {
      Operation operation = operations.get(i);
      Answer sets = sets(operation);
      if (sets == Answer.UNKNOWN
          && operations.subList(0, i).stream().anyMatch(before -> sets(before) != Answer.NO)) {
        return Operation.named(operation.id(), operation.day());
      }
      if (sets != Answer.NO) {
        return operation;
      }
    }
    return operations.get(operations.size() - 1);
  }

  /** Return whether an operation set the fracture, as far as it says. */
  private static Answer sets(Operation operation) {
    if (operation.reduction().isPresent()) {
      return Answer.YES;
    }
    return operation
        .carriesMainImplant()
        .map(main -> main ? Answer.YES : Answer.NO)
        .orElse(Answer.UNKNOWN);
  }
}
