package org.bonewright.handbook.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;

/**
 * The examples of a principle as a printed book has room for them: one row for each number that is
 * walked along, with the verdict below, on and above its limits. Where no number decides, the
 * situations stand in their place. Whole cases are left to the pages to browse.
 */
final class CompactExamples {

  /** The section of a page that holds all its examples. */
  static final String ANCHOR = "examples";

  private static final String SCALES = "examples-scales";
  private static final String SITUATIONS = "examples-table";
  private static final String USUALLY = "Where a line says nothing else";

  private CompactExamples() {}

  /** Return what is printed of a section of examples; nothing where it holds whole cases alone. */
  static Optional<Section> of(Section examples) {
    return scales(examples)
        .or(() -> part(examples, SITUATIONS).flatMap(part -> part.blocks().stream().findFirst()))
        .map(shown -> with(examples, shown));
  }

  private static Section with(Section examples, Block shown) {
    List<Block> blocks = new ArrayList<>();
    examples.blocks().stream()
        .filter(CompactExamples::saysWhatIsUsual)
        .findFirst()
        .ifPresent(blocks::add);
    blocks.add(shown);
    return new Section(examples.anchor(), examples.title(), blocks, List.of());
  }

  private static boolean saysWhatIsUsual(Block block) {
    return block instanceof Block.Paragraph says && says.text().words().startsWith(USUALLY);
  }

  private static Optional<Block> scales(Section examples) {
    List<Block.Row> rows =
        part(examples, SCALES).stream()
            .flatMap(part -> part.blocks().stream())
            .filter(Block.Tables.class::isInstance)
            .map(Block.Tables.class::cast)
            .flatMap(tables -> tables.tables().stream())
            .map(CompactExamples::row)
            .toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Table(
                "Examples at the limits", List.of("Situation", "Verdicts along one number"), rows));
  }

  private static Optional<Section> part(Section examples, String anchor) {
    return examples.parts().stream().filter(part -> part.anchor().equals(anchor)).findFirst();
  }

  private static Block.Row row(Block.Table scale) {
    return Block.Row.of(
        Text.of(scale.caption()),
        Text.strong(scale.heads().get(0))
            .and(" ")
            .and(Text.joined(scale.rows().stream().map(CompactExamples::step).toList(), "; ")));
  }

  private static Text step(Block.Row step) {
    String verdict = step.cells().get(1).words();
    return Text.of(
        step.cells().get(0).words()
            + ": "
            + verdict.substring(0, 1).toLowerCase(Locale.ROOT)
            + verdict.substring(1));
  }
}
