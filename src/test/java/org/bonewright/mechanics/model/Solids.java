package org.bonewright.mechanics.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** What was read from solids of fixed bones: src/test/resources/fe/solids.csv. */
final class Solids {

  private record Row(String construct, double mesh, String load, String quantity, double value) {}

  private final List<Row> rows;

  private Solids(List<Row> rows) {
    this.rows = rows;
  }

  static Solids read() {
    try (InputStream file =
        Objects.requireNonNull(Solids.class.getResourceAsStream("/fe/solids.csv"))) {
      String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      return new Solids(
          text.lines()
              .filter(line -> !line.startsWith("#"))
              .skip(1)
              .map(line -> List.of(line.split(",", -1)))
              .map(Solids::row)
              .toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(List<String> cells) {
    return new Row(
        cells.get(0),
        Double.parseDouble(cells.get(1)),
        cells.get(2),
        cells.get(3),
        Double.parseDouble(cells.get(4)));
  }

  private List<Row> finestFirst(String construct, String load, String quantity) {
    return rows.stream()
        .filter(row -> row.construct().equals(construct))
        .filter(row -> row.load().equals(load) && row.quantity().equals(quantity))
        .sorted(Comparator.comparingDouble(Row::mesh))
        .toList();
  }

  /** Return what the finest mesh gave. */
  double finest(String construct, String load, String quantity) {
    return finestFirst(construct, load, quantity).get(0).value();
  }

  /** Return the value of the coarsest mesh as a share of the finest. */
  double refinement(String construct, String load, String quantity) {
    List<Row> found = finestFirst(construct, load, quantity);
    if (found.size() < 2) {
      throw new IllegalStateException("one mesh only for " + construct);
    }
    return found.get(found.size() - 1).value() / found.get(0).value();
  }
}
