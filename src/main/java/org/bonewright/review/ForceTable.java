package org.bonewright.review;

import java.util.List;
import java.util.Optional;

/**
 * What the frame model says of each construct, side by side: to compare constructs on one bone.
 *
 * @param columns the operations and plans that were modelled, in order of time
 * @param rows the numbers
 * @param inShort a few words for each column: what a reader in a hurry must know; empty where that
 *     is nothing
 * @param notModelled what was not modelled and why, one clause each
 * @param limits what the model cannot say
 */
public record ForceTable(
    List<String> columns,
    List<Row> rows,
    List<String> inShort,
    List<String> notModelled,
    List<String> limits) {

  public ForceTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    inShort = List.copyOf(inShort);
    notModelled = List.copyOf(notModelled);
    limits = List.copyOf(limits);
  }

  /** Return what a reader in a hurry must know of an operation or a plan, if there is anything. */
  public Optional<String> inShort(String column) {
    int at = columns.indexOf(column);
    return at < 0
        ? Optional.empty()
        : Optional.of(inShort.get(at)).filter(words -> !words.isEmpty());
  }

  /** Return whether anything was modelled. */
  public boolean tells() {
    return !columns.isEmpty();
  }

  /**
   * One number of every construct.
   *
   * @param measure id of the measure
   * @param title its title
   * @param unit the unit as people write it; empty for a pure number
   * @param cells one for each column
   */
  public record Row(String measure, String title, String unit, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * One number of one construct.
   *
   * @param shown the number with its likely range; a dash where there is none
   * @param working how it came about, or why there is none
   */
  public record Cell(String shown, String working) {}
}
