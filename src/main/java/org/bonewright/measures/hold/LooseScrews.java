package org.bonewright.measures.hold;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Film;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Subject;

/**
 * Which screws of a plate of an earlier operation were seen loose: recorded as loose or backed out,
 * or with a lucent rim on a film.
 */
final class LooseScrews {

  private static final Set<ScrewRow.State> LOST =
      EnumSet.of(ScrewRow.State.LOOSE, ScrewRow.State.BACKED_OUT);

  private final Subject now;
  private final String operation;
  private final Plate plate;
  private final List<Integer> filled;

  /**
   * Look at one plate.
   *
   * @param now the subject whose knowledge counts
   * @param operation id of the operation that put the plate in
   * @param plate the plate
   */
  LooseScrews(Subject now, String operation, Plate plate) {
    this.now = now;
    this.operation = operation;
    this.plate = plate;
    this.filled = rows().stream().flatMap(row -> row.at().stream()).sorted().toList();
  }

  private List<ScrewRow> rows() {
    return plate.screws().orElse(List.of());
  }

  /** Return whether every screw was loose, three at least. */
  boolean all() {
    return filled.size() >= 3 && filled.stream().allMatch(this::isLoose);
  }

  /** Return whether two conventional screws that follow each other were loose from one end on. */
  boolean inTurn() {
    int last = filled.size() - 1;
    return filled.size() >= 2
        && (pair(filled.get(0), filled.get(1)) || pair(filled.get(last), filled.get(last - 1)));
  }

  private boolean pair(int end, int next) {
    return conventional(end) && conventional(next) && isLoose(end) && isLoose(next);
  }

  private boolean conventional(int hole) {
    return rows().stream()
        .filter(row -> row.at().contains(hole))
        .noneMatch(row -> row.type() == ScrewRow.Type.LOCKING);
  }

  private boolean isLoose(int hole) {
    return lucent(hole)
        || rows().stream()
            .filter(row -> row.at().contains(hole))
            .filter(row -> row.state().map(LOST::contains).orElse(false))
            .anyMatch(row -> now.knowsState(row.stateDay()));
  }

  /** Films name a screw as {@code op-1/plate-1 hole 4}. */
  private boolean lucent(int hole) {
    String name = operation + "/" + plate.id() + " hole " + hole;
    return now.findings().stream()
        .map(Finding::films)
        .flatMap(List::stream)
        .map(Film::lucentScrews)
        .anyMatch(screws -> screws.contains(name));
  }
}
